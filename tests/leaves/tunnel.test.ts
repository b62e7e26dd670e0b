import { expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import type { TunnelBlockDocument } from "../../shared/jobs/tunnel/tunnelBlockDocument";
import "../../src/app/components/tunnel-correlations/tunnel-correlations";
import "../../src/app/components/tunnel-fields/tunnel-fields";
import "../../src/app/components/tunnel-plan/tunnel-plan";
import "../../src/app/components/tunnel-results/tunnel-results";
import "../../src/app/components/tunnel-setup/tunnel-setup";
import "../../src/app/components/tunnel-similarity/tunnel-similarity";
import "../../src/app/components/tunnel-surveys/tunnel-surveys";
import "../../src/app/components/tunnel-table/tunnel-table";
import "../../src/app/components/tunnel-uncertainty/tunnel-uncertainty";
import { fullScaleFields } from "../../src/app/tunnel/tunnelFields";
import { startTunnel, type TunnelInputs } from "../../src/app/tunnel/tunnelInputs";
import type { TunnelTask } from "../../src/app/tunnel/tunnelTask";
import { initialTask } from "../../src/app/view/taskState";
import { tunnelWork } from "../../workers/tunnelWork";
import { drawn, heard, inside, mount, words } from "./mount";

const circle: TunnelBlockDocument = {
  ...startTunnel.block,
  model: { section: { family: "circle", diameterMetres: 0.05 }, spanMetres: 0.4, sandGrainRoughnessMetres: 0 },
  fullScale: { ...startTunnel.block.fullScale, speedsMetresPerSecond: [2] },
};
const inputs: TunnelInputs = { title: "Cylinder", block: circle };
const answer = await tunnelWork().solveTunnel(circle, async () => {});
if (!answer.ok) throw new Error(answer.problems[0].message);
const solving: TunnelTask = { ...initialTask, status: "complete", inputs, last: { inputs, result: answer.value } };

test("ww-tunnel-setup sends title, demo and model, and says what a section has lost", async () => {
  const setup = await mount("ww-tunnel-setup", { inputs, leftOut: "Its trips are left out.", problem: "No demo." });
  await expect.element(page.getByRole("status")).toHaveTextContent("Its trips are left out.");
  await expect.element(page.getByRole("alert")).toHaveTextContent("No demo.");
  const [titles, demos, models] = [
    heard(setup, "tunnel-title"),
    heard(setup, "tunnel-demo"),
    heard(setup, "tunnel-model"),
  ];
  await userEvent.fill(page.getByRole("textbox", { name: "Title" }), " Rod ");
  await userEvent.click(page.getByRole("button", { name: "Take the puck view's candidate" }));
  await userEvent.click(page.getByRole("button", { name: "Take the section view's design" }));
  await userEvent.click(page.getByRole("button", { name: "Demo: a puck in air" }));
  expect([titles, models, demos]).toEqual([["Rod"], ["candidate", "design"], ["harbour-tunnel.json"]]);
});

test("ww-tunnel-fields sends the block with what is typed; what is not allowed stays with the reason", async () => {
  const fields = await mount("ww-tunnel-fields", { fields: fullScaleFields, block: circle });
  const blocks = heard(fields, "tunnel-block");
  const speeds = page.getByRole("textbox", { name: "Speeds at full size" });
  await userEvent.fill(speeds, "2; 3,5");
  await userEvent.tab();
  expect(blocks[0].fullScale.speedsMetresPerSecond).toEqual([2, 3.5]);
  await userEvent.fill(speeds, "fast");
  await userEvent.tab();
  await expect.element(page.getByRole("alert")).toHaveTextContent('is "fast"');
  await expect.element(speeds).toHaveValue("fast");
  expect(blocks).toHaveLength(1);
});

test("ww-tunnel-similarity gives the tunnel's speed of equal Reynolds number, and what is wrong", async () => {
  const similarity = await mount("ww-tunnel-similarity", { solving });
  // Fresh water of 27 degrees has 0.854e-6 m2/s, air of 20 degrees 15.1e-6 m2/s (handbook values): about 17.7 times the speed.
  const ratio = Number(/Tunnel speed = ([\d.]+) x/.exec(words(similarity))?.[1]);
  expect(ratio).toBeGreaterThan(17);
  expect(ratio).toBeLessThan(18.5);
  similarity.solving = {
    ...solving,
    status: "error",
    problems: [{ code: "range", message: "the tunnel is too slow" }],
  };
  await drawn(similarity);
  await expect.element(page.getByRole("alert")).toHaveTextContent("the tunnel is too slow");
  similarity.solving = { ...solving, status: "pending", step: { done: 0, total: 2, label: "the plan" } };
  await drawn(similarity);
  await expect.element(page.getByRole("status")).toHaveTextContent("Working: the plan ...");
});

test("ww-tunnel-plan lists speeds, and asks twice before data are replaced", async () => {
  const withRuns = { ...circle, runs: { data: { columns: ["speedMetresPerSecond"], rows: [[30]] } } };
  const plan = await mount("ww-tunnel-plan", { inputs: { ...inputs, block: withRuns }, solving });
  expect(inside(plan, "#plan-table tbody tr").length).toBeGreaterThan(3);
  const [sheets, keys] = [heard(plan, "tunnel-fill-in"), heard(plan, "tunnel-keys")];
  await userEvent.click(page.getByRole("button", { name: "Fill it in under Data" }));
  expect(sheets).toEqual([]);
  await expect.element(page.getByRole("alert")).toHaveTextContent("There are data already");
  await userEvent.click(page.getByRole("button", { name: "Replace the data by the empty sheet" }));
  expect(sheets).toEqual([answer.value.plan]);
  await userEvent.selectOptions(page.getByRole("combobox", { name: "Order" }), "randomised");
  expect(keys).toMatchObject([{ plan: { order: "randomised" } }]);
});

test("ww-tunnel-table sends what is typed, shows every fault beside its cell, and asks for columns once it was taken", async () => {
  const table = await mount("ww-tunnel-table", { of: "runs", block: circle });
  const [texts, changes] = [heard(table, "tunnel-table-text"), heard(table, "tunnel-table-change")];
  const box = page.getByRole("textbox", { name: /Or type the rows/ });
  await userEvent.fill(box, "U [m/s],F [N]\n30,1\n");
  await userEvent.tab();
  expect(texts).toEqual([{ of: "runs", text: "U [m/s],F [N]\n30,1\n" }]);
  table.block = {
    ...circle,
    runs: {
      data: { columns: ["U [m/s]", "F [N]"], rows: [["30", "fast"]] },
      columns: { speedMetresPerSecond: { column: "U [m/s]" }, forceNewtons: { column: "F [N]" } },
    },
  };
  await drawn(table);
  expect(inside(table, "td.is-wrong")).toHaveLength(1);
  const column = page.getByRole("combobox", { name: "Decimal mark" });
  await expect.element(column).toBeVisible();
  await userEvent.selectOptions(column, "comma");
  expect(changes).toEqual([{ of: "runs", change: { decimalMark: "comma" } }]);
  table.drafts = { runs: { text: "a,a", message: "the column name stands twice" } };
  await drawn(table);
  await expect.element(page.getByRole("alert")).toHaveTextContent("the column name stands twice");
  await expect.element(box).toHaveValue("a,a");
});

test("ww-tunnel-uncertainty sends statements; one that is not allowed stays beside its field", async () => {
  const part = await mount("ww-tunnel-uncertainty", { block: circle });
  const [blocks, keys] = [heard(part, "tunnel-block"), heard(part, "tunnel-keys")];
  await userEvent.selectOptions(page.getByRole("combobox", { name: "Scatter of repeats" }), "pooled");
  expect(keys).toMatchObject([{ uncertainty: { repeatability: "pooled" } }]);
  await userEvent.click(page.getByText("Stated uncertainties: plus-minus, its kind, degrees of freedom"));
  const [first] = inside<HTMLInputElement>(part, "input[id^=stated-]");
  await userEvent.fill(first, "-1");
  await userEvent.tab();
  await expect.element(page.getByRole("alert")).toBeVisible();
  expect(blocks).toEqual([]);
  await userEvent.fill(first, "0,5");
  await userEvent.tab();
  expect(Object.values(blocks[0].uncertainty?.stated ?? {})).toMatchObject([{ plusMinus: 0.5, kind: "rectangular" }]);
});

test("ww-tunnel-correlations adds a correlation and refuses a coefficient beyond 1", async () => {
  const correlations = await mount("ww-tunnel-correlations", { block: circle });
  const blocks = heard(correlations, "tunnel-block");
  await userEvent.click(page.getByRole("button", { name: "Add a correlation" }));
  correlations.block = blocks[0];
  await drawn(correlations);
  await expect.element(page.getByRole("group", { name: "Correlation 1" })).toBeVisible();
  await expect.element(page.getByRole("combobox", { name: "Part" })).toHaveFocus();
  const coefficient = page.getByRole("textbox", { name: "Coefficient, -1 to 1" });
  await userEvent.fill(coefficient, "1.5");
  await userEvent.tab();
  await expect.element(page.getByRole("alert").first()).toBeVisible();
  await expect.element(coefficient).toHaveValue("1.5");
  expect(blocks).toHaveLength(1);
  await userEvent.click(page.getByRole("button", { name: "Remove correlation 1" }));
  expect(blocks[1].uncertainty?.correlations ?? []).toEqual([]);
});

test("ww-tunnel-results shows the prediction without runs, and says so when it is of older inputs", async () => {
  const results = await mount("ww-tunnel-results", { inputs, solving });
  await expect.element(page.getByText("No runs to reduce yet: the prediction alone is shown.")).toBeVisible();
  await expect.element(page.getByRole("figure").first()).toBeVisible();
  results.inputs = { ...inputs, block: { ...circle } };
  await drawn(results);
  await expect.element(page.getByText("These are the results of the inputs before the last change.")).toBeVisible();
});

test("ww-tunnel-surveys offers surveys of a section, none of a puck", async () => {
  const surveys = await mount("ww-tunnel-surveys", { block: startTunnel.block });
  expect(inside(surveys, "ww-tunnel-table")).toEqual([]);
  surveys.block = circle;
  await drawn(surveys);
  expect(inside(surveys, "ww-tunnel-table").map((table) => table.getAttribute("of"))).toEqual([
    "wakeSurvey",
    "pressureTaps",
  ]);
});
