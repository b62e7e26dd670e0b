import { expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { demoDesign } from "../../shared/case/design";
import { createSolver } from "../../workers/solverApi";
import "../../src/app/components/answer/answer";
import "../../src/app/components/desk-group/desk-group";
import "../../src/app/components/detail-tabs/detail-tabs";
import "../../src/app/components/drag-curve/drag-curve";
import "../../src/app/components/few-figures/few-figures";
import "../../src/app/components/flow-view/flow-view";
import "../../src/app/components/ribbon/ribbon";
import "../../src/app/components/ring/ring";
import "../../src/app/components/speed-strip/speed-strip";
import { designRequest } from "../../shared/case/design";
import { crisisZones } from "../../src/app/section/crisisZone";
import type { Ribbon } from "../../src/app/section/ribbon";
import { workingPoint } from "../../src/app/section/workingPoint";
import { drawn, heard, mount, words } from "./mount";
import { solvedSection } from "./solvedSection";

const solved = await solvedSection();
const made = designRequest(demoDesign);
if (!made.ok) throw new Error(made.problem.message);
const sketch = await createSolver().sketchCurve(made.value.request, [1e4, 3e4, 6e4, 1e5, 1.5e5, 3e5, 1e6]);
if (!sketch.ok) throw new Error(sketch.problem.message);
const curves = { overReynolds: sketch.value, overRoughness: [] };
const point = workingPoint(solved, null);
const zones = crisisZones(sketch.value);

/** A press, a move and a letting go at a place of an element, as a pointer would send them. */
function dragOn(element: Element, dx: number): void {
  const { x, y } = element.getBoundingClientRect();
  (element as HTMLElement).setPointerCapture = () => {};
  for (const [type, away] of [
    ["pointerdown", 0],
    ["pointermove", dx],
    ["pointerup", dx],
  ] as const) {
    element.dispatchEvent(
      new PointerEvent(type, { bubbles: true, composed: true, pointerId: 1, button: 0, clientX: x + away, clientY: y }),
    );
  }
}

test("ww-answer says how much, how sure and what next, how far to trust it, and why there is nothing", async () => {
  const answer = await mount("ww-answer", {
    words: {
      sentence: [{ text: "Expected " }, { text: "Cd 0.39", isStrong: true }],
      next: [{ text: "Past it from 4.3 m/s" }],
    },
    trust: "between checked shapes",
    reason: "Not this one.",
  });
  expect(words(answer)).toContain("Expected Cd 0.39");
  expect(words(answer)).toContain("between checked shapes");
  expect(words(answer)).toContain("Past it from 4.3 m/s");
  answer.problem = { code: "shape", message: "edge radius 40 mm is too large" };
  answer.stale = true;
  await drawn(answer);
  await expect.element(page.getByRole("status")).toHaveTextContent(/^Stale.*edge radius 40 mm is too large/);
  answer.words = null;
  await drawn(answer);
  await expect.element(page.getByRole("status")).toHaveTextContent(/^No result: edge radius 40 mm/);
});

test("ww-ring sends steps for its keys and places for the pointer", async () => {
  const ring = await mount("ww-ring", { label: "Speed", value: 3, lowest: 1, highest: 5, words: "3 m/s" });
  const [steps, begun, moves, ended] = [
    heard(ring, "ring-step"),
    heard(ring, "ring-begin"),
    heard(ring, "ring-move"),
    heard(ring, "ring-end"),
  ];
  const slider = page.getByRole("slider", { name: "Speed" });
  (slider.element() as HTMLElement).focus();
  await userEvent.keyboard("{ArrowUp}{Shift>}{ArrowLeft}{/Shift}{PageDown}{Home}{End}");
  expect(steps).toEqual([{ steps: 1 }, { steps: -0.1 }, { steps: -10 }, { end: "lowest" }, { end: "highest" }]);
  dragOn(slider.element(), 9);
  expect([begun.length, moves.length, ended.length]).toEqual([1, 1, 1]);
});

test("ww-speed-strip moves the speed by its ring", async () => {
  const strip = await mount("ww-speed-strip", { speed: 3, zones, point });
  Object.assign(strip.style, { width: "600px", height: "90px" });
  const [changes, drags] = [heard(strip, "section-change"), heard(strip, "section-drag")];
  const ring = page.getByRole("slider", { name: /Stream speed/ });
  (ring.element() as HTMLElement).focus();
  await userEvent.keyboard("{ArrowUp}");
  expect(changes).toEqual([{ speed: 3.1 }]);
  await expect.poll(() => strip.renderRoot.querySelector("canvas")?.width ?? 0).toBeGreaterThan(300);
  await drawn(strip);
  dragOn(ring.element(), 40);
  expect(drags).toHaveLength(1);
});

test("ww-drag-curve is drawn and its ring is the speed", async () => {
  const curve = await mount("ww-drag-curve", { solved, curves, point, zone: zones.rising });
  Object.assign(curve.style, { width: "420px", height: "420px" });
  await expect.poll(() => curve.renderRoot.querySelector("canvas")?.width ?? 0).toBeGreaterThan(300);
  await drawn(curve);
  const changes = heard(curve, "section-change");
  const ring = page.getByRole("slider", { name: /along the drag curve/ });
  (ring.element() as HTMLElement).focus();
  await userEvent.keyboard("{ArrowDown}");
  expect(changes).toEqual([{ speed: 2.9 }]);
  await expect.element(page.getByRole("button", { name: "CSV of the drag curve" })).toBeEnabled();
});

test("ww-ribbon uses its best value, a clicked one, and asks for another input", async () => {
  const row = sketch.value[2];
  const ribbon: Ribbon = {
    key: "edgeRadius",
    range: { from: 0.002, to: 0.012, isLogarithmic: false },
    values: [0.002, 0.007, 0.012],
    rows: [0.9, 0.5, 0.7].map((drag) => ({ ...row, dragCoefficient: drag, dragCoefficientExpected: drag })),
    design: demoDesign,
    isComplete: true,
  };
  const element = await mount("ww-ribbon", { design: demoDesign, ribbon, drag: 0.6 });
  Object.assign(element.style, { width: "600px", height: "170px" });
  await expect.poll(() => element.renderRoot.querySelector("canvas")?.width ?? 0).toBeGreaterThan(300);
  await drawn(element);
  const [changes, asked] = [heard(element, "section-change"), heard(element, "section-ribbon")];
  await userEvent.click(page.getByRole("button", { name: /^best 7 mm: Cd 0.50/ }));
  expect(changes).toMatchObject([{ section: { edgeRadius: 0.007 } }]);
  await userEvent.selectOptions(page.getByRole("combobox", { name: "Input of the ribbon" }), "speed");
  expect(asked).toEqual(["speed"]);
});

test("ww-desk-group folds to one line and asks to be opened", async () => {
  const group = await mount("ww-desk-group", { key: "stream", label: "Stream", now: "fresh water" });
  const asked = heard(group, "desk-group");
  const button = page.getByRole("button", { name: /Stream\s*fresh water/ });
  await expect.element(button).toHaveAttribute("aria-expanded", "false");
  await userEvent.click(button);
  expect(asked).toEqual(["stream"]);
});

test("ww-detail-tabs opens a part and closes the open one", async () => {
  const tabs = await mount("ww-detail-tabs", {
    tabs: [
      { key: "layer", label: "Layer" },
      { key: "sweep", label: "Sweep" },
    ],
    open: "layer",
  });
  const chosen = heard(tabs, "detail-choose");
  await userEvent.click(page.getByRole("button", { name: "Sweep" }));
  await userEvent.click(page.getByRole("button", { name: "Layer" }));
  expect(chosen).toEqual(["sweep", null]);
});

test("ww-few-figures tells Reynolds number, drag and shedding", async () => {
  const figures = await mount("ww-few-figures", { solved });
  expect(words(figures)).toMatch(/Re.*Cd as computed.*drag.*N\/m.*Strouhal.*Hz.*base pressure/);
});

test("ww-flow-view offers the flows on both sides of a near crisis", async () => {
  const view = await mount("ww-flow-view", {
    design: demoDesign,
    solved,
    flows: [
      { key: "own", label: "past the crisis", words: "7 of 10", speed: 3 },
      { key: "before", label: "before it", words: "3 of 10", speed: 2 },
    ],
  });
  Object.assign(view.style, { width: "900px", height: "400px" });
  const chosen = heard(view, "section-flow");
  await userEvent.click(page.getByRole("button", { name: /before it/ }));
  expect(chosen).toEqual(["before"]);
});
