import { expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import "../../src/app/components/dialog/dialog";
import "../../src/app/components/info-mark/info-mark";
import "../../src/app/components/puck-list-field/puck-list-field";
import "../../src/app/components/quantity-field/quantity-field";
import { closures } from "../../src/app/reference/closures";
import { drawn, heard, mount, words } from "./mount";

test("ww-quantity-field shows its value in the chosen unit and sends what is typed in SI", async () => {
  const field = await mount("ww-quantity-field", {
    label: "Length",
    kind: "length",
    value: 0.0254,
    units: { length: "in" },
  });
  const box = page.getByRole("textbox", { name: "Length" });
  await expect.element(box).toHaveValue("1");
  const sent = heard(field, "quantity-change");
  await userEvent.fill(box, "2");
  // 1 inch is 25.4 mm by definition.
  expect(sent.at(-1)?.value).toBeCloseTo(0.0508, 12);
});

test("ww-quantity-field refuses what is out of range beside the field, sends nothing, and keeps the text", async () => {
  const field = await mount("ww-quantity-field", {
    label: "Speed",
    kind: "speed",
    value: 3,
    lowest: 0,
    highest: 10,
    aboveLowest: true,
  });
  const sent = heard(field, "quantity-change");
  const box = page.getByRole("textbox", { name: "Speed" });
  await userEvent.fill(box, "0");
  await expect.element(page.getByRole("alert")).toHaveTextContent("above 0 m/s to 10 m/s");
  await expect.element(box).toHaveAttribute("aria-invalid", "true");
  expect(sent).toEqual([]);
  await expect.element(box).toHaveValue("0");
});

test("ww-quantity-field shows a problem from elsewhere, and a value set by code sends nothing", async () => {
  const field = await mount("ww-quantity-field", { label: "Gap", value: 1, problem: "the gap is too small" });
  const sent = heard(field, "quantity-change");
  await expect.element(page.getByRole("alert")).toHaveTextContent("the gap is too small");
  field.value = 2;
  await drawn(field);
  await expect.element(page.getByRole("textbox", { name: "Gap" })).toHaveValue("2");
  expect(sent).toEqual([]);
});

test("ww-quantity-field steps by the arrow keys and asks for another unit", async () => {
  const field = await mount("ww-quantity-field", { label: "Width", kind: "length", value: 0.05 });
  const [sent, units] = [heard(field, "quantity-change"), heard(field, "unit-change")];
  await userEvent.click(page.getByRole("textbox", { name: "Width" }));
  await userEvent.keyboard("{ArrowUp}");
  expect(sent.at(-1)?.value).toBeGreaterThan(0.05);
  await userEvent.selectOptions(page.getByRole("combobox", { name: "Unit of Width" }), "cm");
  expect(units).toEqual([{ kind: "length", unit: "cm" }]);
});

test("ww-puck-list-field sends numbers in rising order, each once, and names the one that is not allowed", async () => {
  const field = await mount("ww-puck-list-field", {
    label: "Speeds",
    kind: "speed",
    values: [1, 2],
    highest: 10,
    lowest: 0,
  });
  const sent = heard(field, "list-change");
  const box = page.getByRole("textbox", { name: "Speeds" });
  await userEvent.fill(box, "4; 1,5 4");
  await userEvent.tab();
  expect(sent).toEqual([{ values: [1.5, 4] }]);
  await userEvent.fill(box, "3 11");
  await userEvent.tab();
  await expect.element(page.getByRole("alert")).toHaveTextContent('"11"');
  expect(sent).toHaveLength(1);
});

test("ww-info-mark names its topic and opens meaning and source", async () => {
  const mark = await mount("ww-info-mark", { topic: "transition" });
  await userEvent.click(page.getByRole("button", { name: `About: ${closures.transition.name}` }));
  expect(mark.shadowRoot?.querySelector("[popover]")?.matches(":popover-open")).toBe(true);
  expect(words(mark)).toContain(closures.transition.source);
});

test("ww-dialog has its heading as its name, and says so when a person closes it, not when code does", async () => {
  const dialog = await mount("ww-dialog", { heading: "Cases" });
  let closed = 0;
  dialog.addEventListener("close", () => closed++);
  dialog.open = true;
  await drawn(dialog);
  await expect.element(page.getByRole("dialog", { name: "Cases" })).toBeVisible();
  await userEvent.click(page.getByRole("button", { name: "Close" }));
  expect(closed).toBe(1);
  dialog.open = false;
  await drawn(dialog);
  expect(closed).toBe(1);
});
