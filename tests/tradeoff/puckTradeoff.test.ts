import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { dragVerdict } from "../../shared/jobs/puck/drag/dragVerdict";
import { orientationIndex } from "../../shared/jobs/puck/drag/orientationIndex";
import { readRuleSet } from "../../shared/jobs/puck/rules/ruleSet";
import { advanceGeneration, recordOffspring, startGeneticSearch } from "../../shared/jobs/tradeoff/geneticSearch";
import { openPoints } from "../../shared/jobs/tradeoff/pointRun";
import { evaluatePuck, type PuckSearch, puckCandidate, puckSpace } from "../../shared/jobs/tradeoff/puckEvaluation";
import { puckSensitivity } from "../../shared/jobs/tradeoff/sensitivity";
import { success } from "../../shared/result";
import { examplePuck, unwrap } from "../puck/examplePuck";

const reading = readRuleSet(
  readFileSync(new URL("../../cases/harbour-league.rules.json", import.meta.url), "utf8"),
  "rules",
);
if (!reading.ok) throw new Error(reading.problem.message);

const search: PuckSearch = {
  template: {
    spec: { ...examplePuck, core: { kind: "underCoat", material: "lead", coatThicknessMetres: 0.003 } },
    setting: { fluidDensity: 996.5 },
  },
  variables: [
    { key: "diameterMetres", lowest: 0.07, highest: 0.09 },
    { key: "thicknessMetres", lowest: 0.025, highest: 0.035 },
    { key: "edgeRadiusMetres", lowest: 0.001, highest: 0.012 },
  ],
  goals: [
    { key: "frontalAreaEdgeOnSquareMetres", sense: "least" },
    { key: "momentOfInertiaAxisKilogramSquareMetres", sense: "most" },
  ],
  rules: reading.value,
  massTarget: { massKilograms: 1.25, freeDimension: "coatThickness", leastCoverMetres: 0.002 },
};

describe("evaluatePuck(search, values, dragIndexOf)", () => {
  it("sizes the core for the wanted mass, and a candidate inside the rules has no violation", () => {
    const evaluation = evaluatePuck(search, [0.08, 0.03, 0.006], null);
    expect(evaluation.violation).toBe(0);
    const candidate = unwrap(puckCandidate(search, [0.08, 0.03, 0.006], null));
    expect(candidate.figures.massKilograms).toBeCloseTo(1.25, 10);
  });

  it("a puck that cannot reach the mass is outside, with the reason", () => {
    const evaluation = evaluatePuck(search, [0.07, 0.025, 0.006], null);
    expect(evaluation.violation).toBeGreaterThan(1);
    expect(evaluation.reason).toContain("cannot be reached");
  });

  it("the space is cut to the rules' own ranges", () => {
    const space = unwrap(puckSpace(search));
    expect(space.variables[0]).toEqual({ key: "diameterMetres", lowest: 0.077, highest: 0.083 });
    expect(space.variables[2]).toEqual({ key: "edgeRadiusMetres", lowest: 0.004, highest: 0.012 });
  });

  it("larger diameter and smaller thickness give less frontal area and more inertia (common practice, no source)", () => {
    const flat = evaluatePuck(search, [0.083, 0.0285, 0.006], null);
    const tall = evaluatePuck(search, [0.079, 0.031, 0.006], null);
    expect(flat.goals[0]).toBeLessThan(tall.goals[0]);
    expect(flat.goals[1]).toBeGreaterThan(tall.goals[1]);
  });

  it("a drag index is asked of the caller, and its failure is a reason", () => {
    const withDrag: PuckSearch = { ...search, goals: [{ key: "dragIndex", sense: "least" }] };
    const index = () => success({ low: 0.8, expected: 0.9, high: 1 });
    expect(evaluatePuck(withDrag, [0.08, 0.03, 0.006], index).goals).toEqual([0.9]);
    expect(evaluatePuck(withDrag, [0.08, 0.03, 0.006], null).reason).toContain("solved sections");
  });
});

describe("the genetic search on a puck", () => {
  it("finds a front inside the rules whose flattest member is the widest allowed", () => {
    const space = unwrap(puckSpace(search));
    let state = unwrap(startGeneticSearch(space, { populationSize: 16, seed: 4 }));
    for (let i = 0; i < 12; i++) {
      for (const { index, variables } of openPoints(state.offspring, 16)) {
        state = recordOffspring(state, index, evaluatePuck(search, variables, null));
      }
      state = advanceGeneration(state);
    }
    expect(state.front.length).toBeGreaterThan(0);
    expect(state.front.every(({ violation }) => violation === 0)).toBe(true);
    expect(state.front[state.front.length - 1].variables[0]).toBeGreaterThan(0.082);
  });
});

describe("puckSensitivity(design, off, extraFigures)", () => {
  it("a sharp puck's volume has slope pi d t / 2 by diameter and pi d^2 / 4 by thickness, elasticities 2 and 1", () => {
    const spec = { ...examplePuck, edge: { kind: "radius", edgeRadiusMetres: 0 }, core: { kind: "none" } } as const;
    const rows = unwrap(puckSensitivity({ spec, setting: { fluidDensity: 0 } }, 5e-4));
    const row = (dimension: string) =>
      rows.find((candidate) => candidate.dimension === dimension && candidate.figure === "volumeCubicMetres");
    expect(row("diameterMetres")?.slope).toBeCloseTo((Math.PI * 0.08 * 0.03) / 2, 8);
    expect(row("diameterMetres")?.elasticity).toBeCloseTo(2, 6);
    expect(row("thicknessMetres")?.slope).toBeCloseTo((Math.PI * 0.08 ** 2) / 4, 8);
    expect(row("thicknessMetres")?.elasticity).toBeCloseTo(1, 6);
    expect(row("thicknessMetres")?.madeLarger).toBeCloseTo((Math.PI / 4) * 0.08 ** 2 * 0.0305, 14);
    expect(row("edgeRadiusMetres")?.madeSmaller).toBeNull();
  });

  it("takes further figures of the caller", () => {
    const doubled = {
      key: "doubleDiameter",
      of: (spec: { diameterMetres: number }) => success(2 * spec.diameterMetres),
    };
    const rows = unwrap(puckSensitivity(search.template, 5e-4, [doubled]));
    const row = rows.find(({ dimension, figure }) => dimension === "diameterMetres" && figure === "doubleDiameter");
    expect(row?.slope).toBeCloseTo(2, 8);
  });
});

describe("dragVerdict(index, candidate)", () => {
  const shares = { upright: 1, flat: 1, faceOn: 1 };
  const around = (expected: number, spread: number) => {
    const band = { low: expected * (1 - spread), expected, high: expected * (1 + spread) };
    return { upright: band, flat: band, faceOn: band };
  };
  const verdict = (expected: number, spread: number) =>
    dragVerdict(unwrap(orientationIndex(shares, around(expected, spread), around(1, spread))), "Candidate A");

  it.each([
    [0.5, 0.2, "less"],
    [0.8, 0.2, "lessIfErrorsAreShared"],
    [1, 0.2, "notShown"],
    [1.2, 0.2, "moreIfErrorsAreShared"],
    [2, 0.2, "more"],
  ])("drag x %d with a band of %d either side is %s", (expected, spread, kind) => {
    expect(verdict(expected, spread).kind).toBe(kind);
  });

  it("says in words that it does not beat the baseline", () => {
    expect(verdict(1, 0.2).sentence).toContain("does not beat the baseline by more than the band");
  });
});
