import { expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import type { Evaluation } from "../../shared/jobs/tradeoff/designSpace";
import { frontOf, nextPoints, recordAnswer, startTradeoff } from "../../shared/jobs/tradeoff/tradeoffRun";
import { plannedSearch } from "../../shared/jobs/tradeoff/tradeoffSearch";
import "../../src/app/components/puck-case/puck-case";
import "../../src/app/components/puck-cautions/puck-cautions";
import "../../src/app/components/puck-drag/puck-drag";
import "../../src/app/components/puck-drawing/puck-drawing";
import "../../src/app/components/puck-figures/puck-figures";
import "../../src/app/components/puck-handoff/puck-handoff";
import "../../src/app/components/puck-materials/puck-materials";
import "../../src/app/components/puck-member/puck-member";
import "../../src/app/components/puck-motion-inputs/puck-motion-inputs";
import "../../src/app/components/puck-motion/puck-motion";
import "../../src/app/components/puck-panel/puck-panel";
import "../../src/app/components/puck-pins/puck-pins";
import "../../src/app/components/puck-play/puck-play";
import "../../src/app/components/puck-report/puck-report";
import "../../src/app/components/puck-rules/puck-rules";
import "../../src/app/components/puck-search-inputs/puck-search-inputs";
import "../../src/app/components/puck-sizing/puck-sizing";
import "../../src/app/components/puck-tradeoff/puck-tradeoff";
import { demoPuck } from "../../src/app/puck/demoPuck";
import { measurePuck } from "../../src/app/puck/measurePuck";
import { firstMotions } from "../../src/app/puck/motionInputs";
import { nothingKnown, type PuckAnswers } from "../../src/app/puck/puckAnswers";
import { puckCaseOf } from "../../src/app/puck/puckBlock";
import type { PuckInputs } from "../../src/app/puck/puckInputs";
import { noTradeoff } from "../../src/app/puck/tradeoffState";
import { cancelledCode, initialTask } from "../../src/app/view/taskState";
import { createPuckSolver } from "../../workers/puckApi";
import { drawn, heard, inside, mount, words } from "./mount";

const mm = (metres: number) => Number((1000 * metres).toPrecision(5));

/** As few sections as drag and motion can be had from. */
const inputs: PuckInputs = {
  ...demoPuck,
  play: { ...demoPuck.play, speeds: [2], tilts: [], panelCount: 60, chordRatios: [0.5, 1] },
  motions: [firstMotions.slide],
};
const theCase = puckCaseOf(inputs, []);
if (!theCase.ok) throw new Error(theCase.problem.message);
const [baseline, candidate] = await createPuckSolver().solvePucks(theCase.value);
const measured = measurePuck(inputs);
if (!measured.ok) throw new Error(measured.problem.message);
const known: PuckAnswers = { ...nothingKnown, measured: measured.value, solved: { inputs, baseline, candidate } };
const { spec } = inputs.candidate;
const pin = { id: 5, make: { ...inputs.candidate, spec: { ...spec, name: "Kept" } }, result: null, solvedFor: null };

test("ww-puck-panel sends dimensions and kinds, and shows a problem at the one field that it names", async () => {
  const problem = {
    code: "puck-shape",
    message: "edge radius 40 mm exceeds half the thickness",
    field: "edge.edgeRadiusMetres",
  };
  const panel = await mount("ww-puck-panel", { inputs, problem });
  const wrong = inside(panel, "ww-quantity-field").filter((field) => words(field).includes("exceeds half"));
  expect(wrong.map((field) => field.dataset.key)).toEqual(["edge.edgeRadiusMetres"]);
  const changes = heard(panel, "puck-change");
  await userEvent.fill(page.getByRole("textbox", { name: "Thickness", exact: true }), "28");
  expect(changes.at(-1)?.candidate?.spec.thicknessMetres).toBeCloseTo(0.028, 12);
  await userEvent.selectOptions(page.getByRole("combobox", { name: "Kind of rim" }), "axialGrooves");
  expect(changes.at(-1)?.candidate?.spec.rim.kind).toBe("axialGrooves");
});

test("ww-puck-panel tells a problem of a whole part under that part", async () => {
  const problem = { code: "puck-core", message: "the core reaches through the surface", field: "core" };
  const panel = await mount("ww-puck-panel", { inputs, problem });
  await expect
    .element(page.getByRole("group", { name: "Core" }).getByRole("alert"))
    .toHaveTextContent("reaches through");
  expect(inside(panel, "ww-quantity-field").filter((field) => words(field).includes("reaches"))).toEqual([]);
});

test("ww-puck-materials adds a material with its source, and says what is missing", async () => {
  const materials = await mount("ww-puck-materials", { own: [], spec });
  const changes = heard(materials, "puck-change");
  await userEvent.click(page.getByText("Own materials (0)"));
  await userEvent.click(page.getByRole("button", { name: "Add the material" }));
  await expect.element(page.getByRole("alert")).toHaveTextContent("Give the material a name");
  await userEvent.fill(page.getByRole("textbox", { name: "New material" }), "bronze");
  await userEvent.fill(page.getByRole("textbox", { name: "Source" }), "weighed");
  await userEvent.fill(page.getByRole("textbox", { name: "Density, kg/m³" }), "8800");
  await userEvent.click(page.getByRole("button", { name: "Add the material" }));
  expect(changes[0].userMaterials).toMatchObject([
    { name: "bronze", density: 8800, lowestDensity: 8750, source: "weighed" },
  ]);
});

test("ww-puck-play sends fluid, speeds and shares, and shows problems at the keys that they name", async () => {
  const play = await mount("ww-puck-play", {
    play: { ...inputs.play, flatGap: 0.0001 },
    problem: { code: "floor-gap", message: "0.1 mm is filled by boundary layers", field: "puck.play.flatGapMetres" },
  });
  const wrong = inside(play, "ww-quantity-field").filter((field) => words(field).includes("filled by"));
  expect(wrong.map((field) => field.getAttribute("label"))).toEqual(["Gap to the floor"]);
  expect(words(play)).not.toContain("filled by");
  const changes = heard(play, "puck-change");
  await userEvent.fill(page.getByRole("textbox", { name: "Speeds", exact: false }).first(), "1 3");
  await userEvent.tab();
  expect(changes[0].play).toMatchObject({ speeds: [1, 3], indexSpeeds: null });
});

test("ww-puck-drawing draws section and plan of the puck, by name, and says when it is an older one", async () => {
  const drawing = await mount("ww-puck-drawing");
  expect(words(drawing)).toContain("Nothing to draw yet.");
  drawing.spec = spec;
  drawing.stale = true;
  await drawn(drawing);
  await expect
    .element(page.getByRole("img", { name: `Half section of ${spec.name}: diameter ${mm(spec.diameterMetres)} mm` }))
    .toBeVisible();
  await expect.element(page.getByRole("img", { name: /Plan of/ })).toBeVisible();
  expect(words(drawing)).toContain("Stale:");
});

test("ww-puck-cautions warns of the thrown weight", async () => {
  const cautions = await mount("ww-puck-cautions", { spec, materials: [] });
  expect(inside(cautions, "li").length).toBeGreaterThan(1);
});

test("ww-puck-figures lists figures of candidate and baseline, and why they are old", async () => {
  const figures = await mount("ww-puck-figures", {
    inputs,
    known: { ...known, problem: { code: "x", message: "it cannot be made" } },
  });
  expect(inside(figures, "[data-figure=massKilograms] td.number")).toHaveLength(3);
  await expect.element(page.getByRole("status")).toHaveTextContent("it cannot be made");
});

test("ww-puck-pins sends what to pin, to work on, to remove, and to measure against", async () => {
  const pins = await mount("ww-puck-pins", { inputs, known: { ...known, pins: [pin] } });
  const [pinned, swapped, gone, based] = [
    heard(pins, "puck-pin"),
    heard(pins, "puck-swap"),
    heard(pins, "puck-unpin"),
    heard(pins, "puck-baseline"),
  ];
  await userEvent.click(page.getByRole("button", { name: "Pin this puck" }));
  await userEvent.click(page.getByRole("button", { name: "Make it the baseline" }));
  await userEvent.click(page.getByRole("button", { name: /Work on it.*Kept/ }));
  await userEvent.click(page.getByRole("button", { name: /Remove.*Kept/ }));
  expect([pinned, swapped, gone, based.length]).toEqual([[inputs.candidate], [5], [5], 1]);
});

test("ww-puck-case sends the title, a file and the wish to save, and lists what is wrong", async () => {
  const part = await mount("ww-puck-case", {
    caseTitle: "Pool",
    problems: [{ code: "no-puck", message: "it has no pucks" }],
  });
  await expect.element(page.getByRole("alert")).toHaveTextContent("it has no pucks");
  const [changes, saved, files] = [heard(part, "puck-change"), heard(part, "puck-save"), heard(part, "case-file")];
  await userEvent.fill(page.getByRole("textbox", { name: "Title" }), "Sea");
  await userEvent.click(page.getByRole("button", { name: "Save as a file" }));
  const [input] = inside<HTMLInputElement>(part, "input[type=file]");
  await userEvent.upload(input, new File(["{}"], "own.json"));
  expect([changes, saved.length, files[0].fileName]).toEqual([[{ title: "Sea" }], 1, "own.json"]);
});

test("ww-puck-drag gives drag in every attitude on its area, and says why there is none", async () => {
  const drag = await mount("ww-puck-drag", { inputs, known });
  expect(inside(drag, "tr[data-orientation]").map((row) => row.dataset.orientation)).toContain("upright");
  await expect.element(page.getByRole("heading", { name: "Weighted index against the baseline" })).toBeVisible();
  drag.known = { ...nothingKnown, solveProblem: { code: "no-drag", message: "nothing converged" } };
  await drawn(drag);
  await expect.element(page.getByRole("status")).toHaveTextContent("No result: nothing converged");
});

test("ww-puck-motion shows each motion with its results, and sends new and changed ones", async () => {
  const motion = await mount("ww-puck-motion", { inputs, known });
  const changes = heard(motion, "puck-change");
  await expect.element(page.getByRole("region", { name: /Figures of/ })).toBeVisible();
  await userEvent.click(page.getByRole("button", { name: "Add a sink" }));
  expect(changes[0].motions?.map(({ kind }) => kind)).toEqual(["slide", "sink"]);
  await userEvent.fill(page.getByRole("textbox", { name: "Speed at the start" }), "4");
  expect(changes.at(-1)?.motions).toMatchObject([{ kind: "slide", startSpeed: 4 }]);
});

test("ww-puck-motion-inputs sends its motion changed; a name that another has is refused", async () => {
  const part = await mount("ww-puck-motion-inputs", { motion: firstMotions.flick, otherNames: ["taken"] });
  const [changes, gone] = [heard(part, "motion-change"), heard(part, "motion-remove")];
  const name = page.getByRole("textbox", { name: "Name" });
  await userEvent.fill(name, "taken");
  await userEvent.tab();
  await expect.element(name).toHaveValue(firstMotions.flick.name);
  await userEvent.fill(name, "long flick");
  await userEvent.tab();
  await userEvent.click(page.getByRole("button", { name: /Remove/ }));
  expect([changes.map(({ motion }) => motion.name), gone.length]).toEqual([["long flick"], 1]);
});

test("ww-puck-rules sends tolerances, rules and the wish to count, and tells a count or why there is none", async () => {
  const rules = await mount("ww-puck-rules", { inputs, known });
  const [changes, jobs] = [heard(rules, "puck-change"), heard(rules, "puck-job")];
  await userEvent.click(page.getByRole("button", { name: "Harbour League rules" }));
  await expect.poll(() => changes[0]?.rules?.name).toMatch(/Harbour League/);
  rules.inputs = { ...inputs, rules: changes[0].rules ?? null };
  const count = { inside: 95, samples: 100, share: 0.95, shareLow: 0.89, shareHigh: 0.98 };
  rules.known = {
    ...known,
    counting: { ...initialTask, status: "complete", last: { inputs: rules.inputs, result: count as never } },
  };
  await drawn(rules);
  await userEvent.click(page.getByRole("button", { name: "Count the pucks inside" }));
  expect(jobs).toEqual(["count"]);
  expect(words(rules)).toContain("95 of 100 made pucks are inside every range: 95.0 %");
  await userEvent.fill(page.getByRole("textbox", { name: "Diameter ±" }), "0.2");
  expect(changes.at(-1)?.tolerances).toMatchObject({ diameterMetres: 0.0002 });
  const [input] = inside<HTMLInputElement>(rules, "input[type=file]");
  await userEvent.upload(input, new File(["no rules"], "broken.json"));
  await expect.element(page.getByRole("alert").first()).toBeVisible();
});

test("ww-puck-sizing asks for the core, says what came of it, and is silent when the wish was overtaken", async () => {
  const sizing = await mount("ww-puck-sizing", { inputs });
  const [changes, jobs] = [heard(sizing, "puck-change"), heard(sizing, "puck-job")];
  await userEvent.fill(page.getByRole("textbox", { name: "Wanted mass" }), "1.25");
  await userEvent.click(page.getByRole("button", { name: "Size the core" }));
  expect([changes[0].massTarget?.massKilograms, jobs]).toEqual([1.25, ["size"]]);
  sizing.sizing = { ...initialTask, status: "error", problems: [{ code: "mass", message: "no core is heavy enough" }] };
  await drawn(sizing);
  await expect.element(page.getByRole("alert")).toHaveTextContent("no core is heavy enough");
  sizing.sizing = { ...initialTask, status: "error", problems: [{ code: cancelledCode, message: "Cancelled." }] };
  await drawn(sizing);
  expect(words(sizing)).not.toContain("Cancelled");
});

test("ww-puck-handoff asks for a file with its settings, and cannot be pressed for a puck that cannot be made", async () => {
  const handoff = await mount("ww-puck-handoff", {
    turbulenceIntensity: 0.02,
    message: { text: "It has no core.", isProblem: true },
  });
  await expect.element(page.getByRole("alert")).toHaveTextContent("It has no core.");
  const wanted = heard(handoff, "puck-handoff");
  await userEvent.fill(page.getByRole("textbox", { name: "Flow brief: speed" }), "4");
  await userEvent.click(page.getByRole("button", { name: "Solid, STL" }));
  expect(wanted).toMatchObject([
    { ending: "-solid.stl", mediaType: "model/stl", request: { speed: 4, turbulenceIntensity: 0.02 } },
  ]);
  handoff.disabled = true;
  await drawn(handoff);
  await expect.element(page.getByRole("button", { name: "Solid, STL" })).toBeDisabled();
});

test("ww-puck-report prints figures, inputs and cautions, and says when they are of an older puck", async () => {
  const report = await mount("ww-puck-report", {
    inputs,
    known: { ...known, solveProblem: { code: "x", message: "nothing converged" } },
  });
  expect(words(report)).toMatch(/Stale:.*nothing converged.*Figures of.*Inputs.*Cautions/);
});

test("ww-puck-search-inputs frees and fixes dimensions, and tells a range that ends before it begins", async () => {
  const [first] = inputs.tradeoff.variables;
  const wrong = { ...first, lowest: 0.02, highest: 0.01 };
  const part = await mount("ww-puck-search-inputs", {
    inputs: { ...inputs, tradeoff: { ...inputs.tradeoff, variables: [wrong] } },
  });
  await expect.element(page.getByRole("alert")).toHaveTextContent("must begin below its end");
  const changes = heard(part, "puck-change");
  await userEvent.selectOptions(page.getByRole("combobox", { name: "Method" }), "sweep");
  await userEvent.click(page.getByRole("button", { name: /Keep it fixed/ }));
  expect(changes).toMatchObject([{ tradeoff: { method: "sweep" } }, { tradeoff: { variables: [] } }]);
});

test("ww-puck-tradeoff starts and steers a search, lists its front, and asks for the best member at once", async () => {
  const tradeoff = await mount("ww-puck-tradeoff", { inputs, known });
  const [controls, members] = [heard(tradeoff, "puck-search"), heard(tradeoff, "puck-member")];
  await userEvent.click(page.getByRole("button", { name: "Start the search" }));
  const search = doneSearch();
  tradeoff.run = { ...noTradeoff, status: "running", search, workers: 2 };
  await drawn(tradeoff);
  await userEvent.click(page.getByRole("button", { name: "Pause" }));
  await userEvent.click(page.getByRole("button", { name: "Cancel the search" }));
  expect(controls).toEqual(["start", "pause", "cancel"]);
  tradeoff.run = { ...noTradeoff, status: "done", search };
  await drawn(tradeoff);
  expect(inside(tradeoff, ".front tbody tr")).toHaveLength(frontOf(search.run).length);
  expect(members).toMatchObject([{ name: "Front 1", member: frontOf(search.run)[0] }]);
});

test("ww-puck-member says that it is being solved, then why it has no report", async () => {
  const search = doneSearch();
  const [found] = frontOf(search.run);
  const member = await mount("ww-puck-member", { search: search.theCase, inputs, member: found, number: 3 });
  await expect.element(page.getByRole("status")).toHaveTextContent("Solving number 3 of the front");
  member.answer = {
    ...initialTask,
    status: "error",
    inputs: { search: search.theCase, member: found, name: "Front 3" },
    problems: [{ code: "crash", message: "The solver stopped." }],
  };
  await drawn(member);
  await expect.element(page.getByRole("status")).toHaveTextContent("No report: The solver stopped.");
});

/** A Latin hypercube of three pucks whose goals are made up: the first is best in the first goal, the last in the others. */
function doneSearch() {
  const few: PuckInputs = { ...inputs, tradeoff: { ...inputs.tradeoff, method: "latinHypercube", points: 3 } };
  const own = puckCaseOf(few, []);
  if (!own.ok || own.value.tradeoff === null) throw new Error("no trade-off");
  const planned = plannedSearch(own.value);
  if (!planned.ok) throw new Error(planned.problem.message);
  const started = startTradeoff(own.value.tradeoff, planned.value.space);
  if (!started.ok) throw new Error(started.problem.message);
  let run = started.value;
  const allowed: Evaluation[] = [];
  for (const { index, variables } of nextPoints(run, 3, new Set())) {
    const goals = few.tradeoff.goals.map((_, i) => (i === 0 ? 1 + index : 9 - index));
    const evaluation = { variables, goals, violation: 0, reason: null };
    allowed.push(evaluation);
    run = recordAnswer(run, index, evaluation);
  }
  return { inputs: few, theCase: own.value, run, allowed, refused: 0, reason: null, seconds: 1 };
}
