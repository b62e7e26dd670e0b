import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { prepareSection } from "../../shared/engine/solve/prepareSection";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import { nodesOf, unfolded, unwrap } from "../flow/sections";
import { mirrorNodes, rotateNodes, scaleNodes } from "../geometry/nodeTransforms";
import { prepared, quietCondition, unmatchedStates } from "./sections";

/** A fixed seed: each run solves many flows, and one that sits just on the edge of a branch must not come and go. */
const runs = (numRuns: number) => ({ numRuns, seed: 1919 });

const bluntD: SectionSpec = {
  family: "dShape",
  length: 1,
  height: 1,
  noseLength: 0.5,
  cornerRadius: 0.1,
  flatSide: "rear",
};
const anySection: fc.Arbitrary<SectionSpec> = fc.constantFrom<SectionSpec[]>(
  { family: "circle", diameter: 0.08 },
  { family: "ellipse", length: 2, height: 1 },
  { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.006 },
  { family: "roundedRectangle", length: 1, height: 1, edgeRadius: 0.25 },
  bluntD,
);
/** Reynolds numbers below and above the drag crisis of these sections. */
const anyReynolds = fc.oneof(
  fc.double({ min: 2e4, max: 1.5e5, noNaN: true }),
  fc.double({ min: 7e5, max: 1e7, noNaN: true }),
);
const anyRoughness = fc.constantFrom(0, 1e-5, 1e-4, 1e-3);

describe("symmetries of the whole solution", () => {
  it("mirror a section and its states mirror: sides exchanged, lift reversed, the rest the same within 1e-3", () => {
    const asymmetric = fc.constantFrom<[SectionSpec, number][]>(
      [{ family: "ellipse", length: 2, height: 1 }, 0.15],
      [{ family: "roundedPolygon", sides: 5, inscribedDiameter: 1, cornerRadius: 0.2, facing: "flat" }, 0.2],
      [{ family: "roundedTriangle", length: 1, height: 1, cornerRadius: 0.2, apex: "forward" }, -0.1],
      [bluntD, 0.1],
    );
    fc.assert(
      fc.property(asymmetric, anyReynolds, ([spec, incidence], reynolds) => {
        const nodes = nodesOf(spec, 120);
        const condition = quietCondition(reynolds);
        const { states } = solveCondition(unwrap(prepareSection(nodes, incidence)), condition);
        const mirrored = solveCondition(unwrap(prepareSection(mirrorNodes(nodes), -incidence)), condition);
        expect(unmatchedStates(mirrored.states, states, 1e-3, true)).toEqual([]);
      }),
      runs(8),
    );
  });

  it("scale a section by any factor and nothing changes at the same Reynolds number, within 1e-6", () => {
    fc.assert(
      fc.property(
        anySection,
        anyReynolds,
        anyRoughness,
        fc.double({ min: -3, max: 3, noNaN: true }),
        (spec, Re, ks, power) => {
          const nodes = nodesOf(spec, 120);
          const condition = quietCondition(Re, ks);
          const { states } = solveCondition(unwrap(prepareSection(nodes, 0)), condition);
          const scaled = unwrap(prepareSection(scaleNodes(nodes, 10 ** power), 0));
          expect(unmatchedStates(solveCondition(scaled, condition).states, states, 1e-6)).toEqual([]);
        },
      ),
      runs(12),
    );
  });

  it("turn section and stream together and nothing changes, within 1e-3", () => {
    fc.assert(
      fc.property(
        anySection,
        anyReynolds,
        fc.double({ min: -0.2, max: 0.2, noNaN: true }),
        fc.double({ min: -2.5, max: 2.5, noNaN: true }),
        (spec, reynolds, incidence, turn) => {
          const nodes = unfolded(nodesOf(spec, 120));
          const condition = quietCondition(reynolds);
          const { states } = solveCondition(unwrap(prepareSection(nodes, incidence)), condition);
          const turned = unwrap(prepareSection(rotateNodes(nodes, turn), incidence + turn));
          expect(unmatchedStates(solveCondition(turned, condition).states, states, 1e-3)).toEqual([]);
        },
      ),
      runs(6),
    );
  });

  it("a symmetric section solved without its symmetry has the same symmetric states below and above the crisis, within 2e-3", () => {
    for (const [spec, reynolds] of [
      [{ family: "circle", diameter: 1 }, 1e5],
      [{ family: "circle", diameter: 1 }, 1e6],
      [{ family: "ellipse", length: 2, height: 1 }, 5e6],
      [bluntD, 1e5],
    ] as const) {
      const nodes = nodesOf(spec, 160);
      const folded = solveCondition(unwrap(prepareSection(nodes, 0)), quietCondition(reynolds));
      const full = solveCondition(unwrap(prepareSection(unfolded(nodes), 0)), quietCondition(reynolds));
      // A one-sided state and its mirror image are reported once on a symmetric section.
      const symmetric = (states: typeof full.states) =>
        states.filter(({ lower, upper }) => lower.state === upper.state);
      expect(symmetric(full.states).length).toBeGreaterThan(0);
      expect(unmatchedStates(symmetric(full.states), symmetric(folded.states), 2e-3)).toEqual([]);
    }
  });
});

describe("doubling the panels from 240 changes Cd by less than 1 %, and finds the same states", () => {
  const rounded = (length: number, edgeRadius: number): SectionSpec => ({
    family: "roundedRectangle",
    length,
    height: 1,
    edgeRadius,
  });
  const cases: readonly [SectionSpec, readonly number[]][] = [
    [{ family: "circle", diameter: 1 }, [1e5, 6e5, 5e6]],
    [{ family: "ellipse", length: 2, height: 1 }, [1e5, 1e6]],
    [{ family: "ellipse", length: 1, height: 2 }, [1e5, 5e6]],
    [rounded(1, 0.05), [1e5, 5e6]],
    [rounded(1, 0.1), [1e5, 2e6]],
    [rounded(1, 0.167), [1e5, 1e6]],
    [rounded(1, 0.333), [1e5, 2e6]],
    [rounded(80 / 30, 0.2), [1e5, 1e6, 5e6]],
    [rounded(80 / 30, 0.5), [1e5, 1e6]],
    [bluntD, [1e5, 5e6]],
    [{ ...bluntD, flatSide: "front" }, [1e5, 1e6]],
  ];
  for (const [spec, reynolds] of cases) {
    it(`${JSON.stringify(spec)}, Re ${reynolds.join(", ")}`, () => {
      const [coarse, fine] = [240, 480].map((panels) => prepared(spec, panels));
      for (const Re of reynolds) {
        const [a, b] = [coarse, fine].map((section) => solveCondition(section, quietCondition(Re)).states);
        expect(a.length).toBe(b.length);
        a.forEach((state, i) => {
          expect(Math.abs(state.dragCoefficient / b[i].dragCoefficient - 1)).toBeLessThan(0.01);
        });
      }
    });
  }
});
