import { expect, test, vi } from "vitest";
import { page, userEvent } from "vitest/browser";
import { importOutline } from "../../shared/outlines/importOutline";
import "../../src/app/components/case-panel/case-panel";
import "../../src/app/components/cases-dialog/cases-dialog";
import "../../src/app/components/glossary/glossary";
import "../../src/app/components/guide/guide";
import "../../src/app/components/import-dialog/import-dialog";
import "../../src/app/components/masthead/masthead";
import "../../src/app/components/notice-area/notice-area";
import "../../src/app/components/outline-preview/outline-preview";
import { demoCases } from "../../src/app/files/demoCases";
import { glossary } from "../../src/app/reference/glossary";
import { noCase } from "../../src/app/section/caseRun";
import { initialTask } from "../../src/app/view/taskState";
import { drawn, heard, mount, one, words } from "./mount";

const stored = { fileName: "pool.json", title: "Pool", text: "{}", at: 0 };

test("ww-masthead shows title and view, and asks for views, steps, dialogs, theme and the report", async () => {
  const bar = await mount("ww-masthead", {
    look: { title: "Edge study", canUndo: true, canRedo: false },
    view: "puck",
    theme: "dark",
  });
  await expect.element(page.getByRole("button", { name: "Puck" })).toHaveAttribute("aria-current", "page");
  await expect.element(page.getByText("Edge study")).toBeVisible();
  await expect.element(page.getByRole("button", { name: "Redo" })).toBeDisabled();
  const [views, steps, dialogs] = [heard(bar, "view-choose"), heard(bar, "view-step"), heard(bar, "open-dialog")];
  const [reports, themes] = [heard(bar, "print-report"), heard(bar, "theme-choose")];
  await userEvent.click(page.getByRole("button", { name: "Players" }));
  await userEvent.click(page.getByRole("button", { name: "Undo" }));
  await userEvent.click(page.getByRole("button", { name: "Glossary" }));
  await userEvent.click(page.getByRole("button", { name: "Print report" }));
  await userEvent.selectOptions(page.getByRole("combobox", { name: "Theme" }), "light");
  expect([views, steps, dialogs, reports.length, themes]).toEqual([["trial"], ["undo"], ["glossary"], 1, ["light"]]);
});

test("ww-masthead offers no report and no steps before its view is loaded", async () => {
  await mount("ww-masthead", { look: null, view: "tunnel" });
  for (const name of ["Undo", "Redo", "Print report"]) {
    await expect.element(page.getByRole("button", { name })).toBeDisabled();
  }
});

test("ww-notice-area reads notices out politely and sends which one was dismissed", async () => {
  const area = await mount("ww-notice-area", {
    notices: [
      { id: 3, kind: "news", text: "Your design is back." },
      { id: 7, kind: "warning", text: "The solver stopped." },
    ],
  });
  await expect.element(page.getByRole("status")).toHaveAttribute("aria-live", "polite");
  const dismissed = heard(area, "notice-dismiss");
  await userEvent.click(page.getByRole("button", { name: "Dismiss" }).nth(1));
  expect(dismissed).toEqual([7]);
});

test("ww-cases-dialog shows what was saved, keeps the shown view in the case, and sends every wish", async () => {
  const dialog = await mount("ww-cases-dialog", {
    caseTitle: "Edge study",
    shown: "section",
    offered: ["section", "puck"],
    chosen: ["section"],
    saved: [stored],
    problems: [{ code: "load", message: "pool.json is damaged" }],
  });
  await expect.element(page.getByRole("alert")).toHaveTextContent("pool.json is damaged");
  await expect.element(page.getByRole("checkbox", { name: "Section" })).toBeDisabled();
  const [renamed, chosen, saved] = [
    heard(dialog, "cases-rename"),
    heard(dialog, "cases-choose"),
    heard(dialog, "cases-save"),
  ];
  const [opened, gone] = [heard(dialog, "cases-reopen"), heard(dialog, "cases-forget")];
  await userEvent.fill(page.getByRole("textbox", { name: "Title" }), " Rim study ");
  await userEvent.click(page.getByRole("checkbox", { name: "Puck" }));
  await userEvent.click(page.getByRole("button", { name: "Save in this browser" }));
  await userEvent.click(page.getByRole("button", { name: "Make a link" }));
  await userEvent.click(page.getByRole("button", { name: "Open Pool" }));
  await userEvent.click(page.getByRole("button", { name: "Remove Pool" }));
  expect([renamed, chosen, saved, opened, gone]).toEqual([
    ["Rim study"],
    [{ view: "puck", isChosen: true }],
    ["browser", "link"],
    [stored],
    [stored],
  ]);
  dialog.link = "https://wakewright.example/#screen=abc";
  await drawn(dialog);
  await expect.element(page.getByRole("textbox", { name: "Link to this screen" })).toHaveValue(dialog.link);
});

test("ww-case-panel hands on a demo and a file, and tells how far a run is", async () => {
  const panel = await mount("ww-case-panel", {
    run: { ...noCase, status: "running", title: "Pool", text: "{}", done: 2, total: 8, label: "solved Re 1e5" },
    problems: [{ code: "load", message: "the file is no case" }],
  });
  await expect.element(page.getByRole("status")).toHaveTextContent("Step 2 of 8: solved Re 1e5");
  expect(words(panel)).toContain("the file is no case");
  const [files, wishes, refused] = [
    heard(panel, "case-file"),
    heard(panel, "section-case"),
    heard(panel, "case-refused"),
  ];
  await userEvent.click(page.getByRole("button", { name: "Cancel" }));
  await userEvent.selectOptions(page.getByRole("combobox", { name: "Demo case" }), demoCases[0].fileName);
  await userEvent.upload(one<HTMLInputElement>(panel, "input[type=file]"), new File(["{}"], "own.json"));
  expect(wishes).toEqual(["cancel"]);
  expect(files.map(({ fileName }) => fileName)).toEqual([demoCases[0].fileName, "own.json"]);
  expect(await files[1].text).toBe("{}");
  expect(refused).toEqual([]);
});

test("ww-guide asks for each of its steps", async () => {
  const guide = await mount("ww-guide");
  const [steps, pins, closed] = [heard(guide, "guide-step"), heard(guide, "section-pin"), heard(guide, "close-dialog")];
  await userEvent.click(page.getByRole("button", { name: "Open the demo" }));
  await userEvent.click(page.getByRole("button", { name: "Pin this design" }));
  await userEvent.click(page.getByRole("button", { name: "Or try a fully round edge" }));
  await userEvent.click(page.getByRole("button", { name: "To the workbench" }));
  expect([steps, pins.length, closed.length]).toEqual([["demo", "round"], 1, 1]);
});

test("ww-glossary explains every symbol with its unit", async () => {
  const list = await mount("ww-glossary");
  for (const { symbol, name } of glossary) expect(words(list)).toContain(`${symbol} ${name}`);
});

test("ww-import-dialog asks for what its fields say, shows the answer, and sends it as the section with panels that suit it", async () => {
  const dialog = await mount("ww-import-dialog");
  const [asked, changes, closed] = [
    heard(dialog, "outline-ask"),
    heard(dialog, "section-change"),
    heard(dialog, "close-dialog"),
  ];
  const answer = async () => {
    await vi.waitFor(() => expect(asked.length).toBeGreaterThan(0));
    const inputs = asked[asked.length - 1];
    const result = importOutline(inputs);
    const { reading } = dialog;
    const call = reading.call + 1;
    dialog.reading = result.ok
      ? { status: "complete", call, inputs, step: null, last: { inputs, result: result.value }, problems: [] }
      : { ...reading, status: "error", call, inputs, step: null, problems: [result.problem] };
    await drawn(dialog);
    asked.length = 0;
  };
  const text = page.getByRole("textbox", { name: "Outline as text" });
  await userEvent.fill(text, "one\ntwo");
  await answer();
  await expect.element(page.getByRole("alert").first()).toBeVisible();
  await expect.element(page.getByRole("button", { name: "Use this contour" })).toBeDisabled();
  await userEvent.fill(text, "-40,10\n-40,-10\n-35,-15\n35,-15\n40,-10\n40,10\n35,15\n-35,15");
  await answer();
  await expect.element(page.getByRole("img", { name: "Preview of the contour" })).toBeVisible();
  const preview = words(one(dialog, "ww-outline-preview"));
  expect(preview).toContain("80 mm along the stream (from the left), 30 mm across it");
  // An arc of 0.3 mm between sides that turn by 45 degrees lies 0.3 (1 / cos 22.5 - 1) mm from their corner.
  expect(preview).toContain("leaves the outline by 0.0247 mm at most");
  expect(preview).toContain("8 corners get a radius of 0.3 mm, the smallest that the solver takes");
  expect(preview).toContain("names no unit");
  await userEvent.selectOptions(page.getByRole("combobox", { name: "Unit in the file" }), "cm");
  await answer();
  await userEvent.click(page.getByRole("button", { name: "Use this contour" }));
  expect(changes[0]?.section).toMatchObject({ family: "outline", sides: { length: 8 } });
  expect(changes[0]?.panelCount).toBeGreaterThan(160);
  expect(closed).toHaveLength(1);
});

test("ww-outline-preview draws the contour that is solved over the outline and says what a smaller detail became", async () => {
  const question = { fileName: "part.csv", format: null, unit: null, scale: 1, quarterTurns: 0, name: "part" } as const;
  const chamfered = "x (mm),y (mm)\n0,0\n79.9,0\n80,0.1\n80,30\n0,30\n";
  const read = importOutline({ ...question, text: chamfered, cornerRadius: null });
  if (!read.ok) throw new Error(read.problem.message);
  const preview = await mount("ww-outline-preview", { outline: read.value });
  const said = words(preview);
  expect(said).toContain("4 corners get a radius of 0.3 mm");
  expect(said).toContain("1 detail smaller than this radius became a corner");
  expect(said).not.toContain("names no unit");
  expect(one(preview, "path.solved").getAttribute("d")).not.toBe(one(preview, "path.given").getAttribute("d"));
});

test("ww-import-dialog offers to cancel a reading that runs", async () => {
  const dialog = await mount("ww-import-dialog", { reading: { ...initialTask, status: "pending", call: 1 } });
  const cancelled = heard(dialog, "outline-cancel");
  await userEvent.click(page.getByRole("button", { name: "Cancel" }));
  expect(cancelled).toHaveLength(1);
});
