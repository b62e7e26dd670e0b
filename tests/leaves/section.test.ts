import { expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { type Design, demoDesign } from "../../shared/case/design";
import "../../src/app/components/conditions-panel/conditions-panel";
import "../../src/app/components/floor-notes/floor-notes";
import "../../src/app/components/flow-view/flow-view";
import "../../src/app/components/key-figures/key-figures";
import "../../src/app/components/pattern-panel/pattern-panel";
import "../../src/app/components/pin-panel/pin-panel";
import "../../src/app/components/plot-board/plot-board";
import "../../src/app/components/plot/plot";
import "../../src/app/components/report/report";
import "../../src/app/components/section-panel/section-panel";
import "../../src/app/components/sweep-panel/sweep-panel";
import "../../src/app/components/trip-panel/trip-panel";
import { turbulencePresets } from "../../src/app/reference/presets";
import type { Pin } from "../../src/app/section/solved";
import { noSweep } from "../../src/app/section/sweep";
import { sweepInputs } from "../../src/app/section/sweepInputs";
import { drawn, heard, inside, mount, one, words } from "./mount";
import { solvedSection } from "./solvedSection";

const solved = await solvedSection();
const fault = { code: "shape", message: "edge radius 40 mm is too large", field: "section.edgeRadius" };
const rectangle: Design = {
  ...demoDesign,
  section: { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.006 },
};
const pin: Pin = { id: 4, name: "pin D", design: rectangle, solved: await solvedSection(rectangle), curves: null };

test("ww-key-figures tells drag and separation, and marks figures of another design as stale", async () => {
  const figures = await mount("ww-key-figures", { solved });
  const state = solved.solution.outcome.states[solved.solution.outcome.rising ?? 0];
  expect(words(figures)).toContain(`Drag coefficient, Cd i ${state.dragCoefficient.toFixed(3)}`.replace(" i ", " "));
  figures.problem = fault;
  figures.stale = true;
  await drawn(figures);
  await expect.element(page.getByRole("status")).toHaveTextContent(/Stale:.*edge radius 40 mm is too large/);
});

test("ww-key-figures says why there is no result", async () => {
  await mount("ww-key-figures", { problem: fault });
  await expect.element(page.getByRole("status")).toHaveTextContent(/No result: edge radius 40 mm/);
});

test("ww-floor-notes speaks near a floor and is silent in open water", async () => {
  const notes = await mount("ww-floor-notes");
  expect(words(notes)).toBe("");
  notes.floor = (await solvedSection({ floorGap: 0.01 })).solution.floor;
  await drawn(notes);
  await expect.element(page.getByRole("list", { name: "Near the floor" })).toBeVisible();
});

test("ww-flow-view draws the section; a handle moves by keys and by pointer, each drag from begin to end", async () => {
  const view = await mount("ww-flow-view", { design: rectangle, solved: pin.solved, solveCount: 2 });
  Object.assign(view.style, { width: "900px", height: "400px" });
  await expect.element(page.getByRole("group", { name: /Section in the stream/ })).toBeVisible();
  const handle = page.getByRole("slider", { name: /Edge radius/ }).first();
  const [changes, begun, drags, ended] = [
    heard(view, "section-change"),
    heard(view, "section-drag-begin"),
    heard(view, "section-drag"),
    heard(view, "section-drag-end"),
  ];
  await expect.poll(() => handle.elements().length).toBe(1);
  (handle.element() as HTMLElement).focus();
  await userEvent.keyboard("{ArrowUp}");
  // One step of a length is 0.1 mm.
  expect(changes).toMatchObject([{ section: { edgeRadius: 0.0061 } }]);
  const knob = handle.element();
  const { x, y } = knob.getBoundingClientRect();
  const at = (type: string, dx: number) =>
    knob.dispatchEvent(
      new PointerEvent(type, { bubbles: true, composed: true, pointerId: 1, button: 0, clientX: x + dx, clientY: y }),
    );
  knob.setPointerCapture = () => {};
  at("pointerdown", 0);
  at("pointermove", 12);
  at("pointerup", 12);
  expect([begun.length, drags.length, ended.length]).toEqual([1, 1, 1]);
});

test("ww-section-panel sends dimensions and families, and shows a problem at the field that it names", async () => {
  const panel = await mount("ww-section-panel", { design: rectangle, problem: fault });
  const fields = inside(panel, "ww-quantity-field");
  const wrong = fields.filter((field) => words(field).includes("too large"));
  expect(wrong.map((field) => field.dataset.key)).toEqual(["edgeRadius"]);
  const [changes, rules, dialogs] = [
    heard(panel, "section-change"),
    heard(panel, "section-rules"),
    heard(panel, "open-dialog"),
  ];
  await userEvent.fill(page.getByRole("textbox", { name: "Edge radius" }), "5");
  expect(changes.at(-1)).toMatchObject({ section: { edgeRadius: 0.005, length: 0.08 } });
  await userEvent.selectOptions(page.getByRole("combobox", { name: "Family" }), "stadium");
  expect(changes.at(-1)).toMatchObject({ section: { family: "stadium", length: 0.08, height: 0.03 } });
  await userEvent.click(page.getByRole("checkbox", { name: "A floor below the section" }));
  expect(changes.at(-1)).toEqual({ floorGap: 0.015 });
  await userEvent.click(page.getByRole("checkbox", { name: /Hold the handles/ }));
  await userEvent.click(page.getByRole("button", { name: "Import a contour ..." }));
  expect([rules, dialogs]).toEqual([[true], ["import"]]);
});

test("ww-conditions-panel sends fluid, speed and presets, and shows a problem of the speed", async () => {
  const panel = await mount("ww-conditions-panel", {
    design: demoDesign,
    problem: { code: "range", message: "Reynolds number is 2", field: "reynolds" },
  });
  await expect.element(page.getByRole("alert")).toHaveTextContent("Reynolds number is 2");
  const changes = heard(panel, "section-change");
  await userEvent.fill(page.getByRole("textbox", { name: "Stream speed" }), "2,5");
  await userEvent.selectOptions(page.getByRole("combobox", { name: "Fluid" }), "dryAir");
  const [preset] = turbulencePresets;
  await userEvent.selectOptions(page.getByRole("combobox", { name: "Turbulence", exact: true }), preset.key);
  expect(changes).toMatchObject([{ speed: 2.5 }, { fluid: { kind: "dryAir" } }, { turbulenceIntensity: preset.value }]);
});

test("ww-pattern-panel sends the pattern, and the roughness that it comes to only on demand", async () => {
  const panel = await mount("ww-pattern-panel", { perimeter: 0.25 });
  // 0.25 m around the section over a pitch of 2.5 mm.
  await expect.element(page.getByRole("status")).toHaveTextContent("About 100 around the section");
  const [tools, changes] = [heard(panel, "section-tools"), heard(panel, "section-change")];
  await userEvent.fill(page.getByRole("textbox", { name: "Depth" }), "0,3");
  expect([tools, changes]).toMatchObject([[{ pattern: { depth: 0.0003 } }], []]);
  await userEvent.click(page.getByRole("button", { name: "Use as the design's ks" }));
  expect(changes[0].sandGrainRoughness).toBeGreaterThan(0);
});

test("ww-trip-panel adds, changes and removes trips", async () => {
  const panel = await mount("ww-trip-panel", { perimeter: 0.2 });
  const changes = heard(panel, "section-change");
  await userEvent.click(page.getByRole("button", { name: "Add on the lower side" }));
  expect(changes.at(-1)).toMatchObject({ trips: [{ side: "lower" }] });
  panel.trips = [{ side: "upper", arc: 0.01, height: 0.0003 }];
  await drawn(panel);
  await userEvent.fill(page.getByRole("textbox", { name: "Trip 1, upper: height" }), "0.4");
  expect(changes.at(-1)?.trips?.[0].height).toBeCloseTo(0.0004, 12);
  await userEvent.click(page.getByRole("button", { name: "Remove trip 1" }));
  expect(changes.at(-1)).toEqual({ trips: [] });
});

test("ww-pin-panel shows the differences and sends what to pin, to work on and to remove", async () => {
  const panel = await mount("ww-pin-panel", { solved, pins: [pin] });
  await expect.element(page.getByRole("columnheader", { name: "pin D" })).toBeVisible();
  const [pinned, changes, gone] = [
    heard(panel, "section-pin"),
    heard(panel, "section-change"),
    heard(panel, "section-unpin"),
  ];
  await userEvent.click(page.getByRole("button", { name: "Pin this design" }));
  await userEvent.click(page.getByRole("button", { name: /Work on it.*pin D/ }));
  await userEvent.click(page.getByRole("button", { name: "Remove pin D" }));
  expect([pinned.length, changes, gone]).toEqual([1, [rectangle], [4]]);
  panel.stale = true;
  await drawn(panel);
  await expect.element(page.getByRole("button", { name: "Pin this design" })).toBeDisabled();
});

test("ww-conditions-panel shows the part that it is asked for", async () => {
  await mount("ww-conditions-panel", { design: demoDesign, shown: "turbulence" });
  await expect.element(page.getByRole("textbox", { name: "Turbulence intensity, Tu" })).toBeVisible();
  expect(page.getByRole("textbox", { name: "Stream speed" }).elements()).toEqual([]);
});

test("ww-plot-board draws pressure and layer of the design and sends its choices", async () => {
  const board = await mount("ww-plot-board", { solved, isAnswered: true, layerChoice: "shapeFactor" });
  await expect.element(page.getByRole("heading", { name: /Pressure/ }).first()).toBeVisible();
  expect(inside(board, "ww-plot").map(({ id }) => id)).toContain("plot-layer-shapeFactor");
  const [measures, tools] = [heard(board, "section-measure"), heard(board, "section-tools")];
  await userEvent.selectOptions(page.getByRole("combobox", { name: "Surface position by" }), "arc");
  await userEvent.selectOptions(page.getByRole("combobox", { name: "Layer quantity" }), "all");
  expect([measures, tools]).toEqual([["arc"], [{ layerChoice: "all" }]]);
});

test("ww-plot says that there is nothing yet, then shows its figure, and its numbers as a table on demand", async () => {
  const plot = await mount("ww-plot", { empty: "Comparing ..." });
  expect(words(plot)).toBe("Comparing ...");
  plot.figure = {
    key: "line",
    title: "A line",
    caption: "Two points.",
    data: [{ type: "scatter", mode: "lines", name: "line", x: [1, 2], y: [3, 4], line: { color: "#000000" } }],
    layout: {},
    table: {
      columns: ["x", "y"],
      rows: [
        [1, 3],
        [2, 4],
      ],
    },
  };
  await drawn(plot);
  await expect.element(page.getByRole("figure", { name: "A line" })).toBeVisible();
  await userEvent.click(page.getByRole("button", { name: "Table of A line" }));
  await expect.element(page.getByRole("cell", { name: "4", exact: true })).toBeVisible();
  await userEvent.click(page.getByRole("button", { name: "line", exact: true }));
  await expect
    .element(page.getByRole("button", { name: "line", exact: true }))
    .toHaveAttribute("aria-pressed", "false");
});

test("ww-sweep-panel sends the ranges of a sweep and how it is to go on, and refuses one that is too large", async () => {
  const panel = await mount("ww-sweep-panel", { design: rectangle });
  const [sweeps, controls] = [heard(panel, "section-sweep"), heard(panel, "section-sweep-control")];
  await userEvent.click(page.getByRole("button", { name: "Start sweep" }));
  // Half to one and a half times the present edge radius of 6 mm.
  expect(sweeps[0].ranges).toMatchObject([{ key: "edgeRadius", from: 0.003 }]);
  expect(sweeps[0].ranges[0].to).toBeCloseTo(0.009, 12);
  const [input] = sweepInputs(rectangle).filter(({ key }) => key === "edgeRadius");
  panel.sweep = {
    ...noSweep,
    status: "running",
    inputs: [input],
    ranges: [{ key: "edgeRadius", from: 0.003, to: 0.009, count: 10 }],
    rows: Array.from({ length: 10 }, () => [null]),
    total: 10,
    done: 4,
    seconds: 2,
    workers: 3,
  };
  await drawn(panel);
  await expect.element(page.getByRole("status")).toHaveTextContent("4 of 10 points on 3 workers, about 3 s left");
  await userEvent.click(page.getByRole("button", { name: "Pause" }));
  await userEvent.click(page.getByRole("button", { name: "Cancel sweep" }));
  expect(controls).toEqual(["pause", "cancel"]);
  const count = page.getByRole("textbox", { name: "Number of values" });
  await userEvent.fill(count, "1");
  await userEvent.tab();
  await expect.element(page.getByRole("alert")).toHaveTextContent("from 2 to 101");
});

test("ww-report prints inputs, cautions and pictures of its plots, and says so when the figures are of an older design", async () => {
  const report = await mount("ww-report", { solved, problem: fault });
  expect(words(report)).toContain("the design could not be solved (edge radius 40 mm is too large)");
  expect(words(report)).toContain("Cautions");
  await report.preparePictures();
  const pictures = inside<HTMLImageElement>(report, "img");
  // The flow, the pressure and the drag curve.
  expect(pictures.map(({ alt }) => alt !== "")).toEqual([true, true, true]);
  expect(one(report, "dl").textContent).toContain("Stream speed");
});
