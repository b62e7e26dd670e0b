import { describe, expect, it } from "vitest";
import type { SeparationTable } from "../../shared/engine/solve/separationTable";
import { curveCrossings, type FollowedLayer, zeroCurves } from "../../shared/engine/solve/zeroCurves";

const distances = Array.from({ length: 27 }, (_, i) => 2 + 2 * i);
const held = [1, 5, 9, 13, 17, 21, 25];
const table: SeparationTable = { distances, held, stations: () => null };

/** A layer whose residual is given in closed form by its own and the other side's distance. */
const layer = (residual: (own: number, other: number) => number) => (own: number, other: number) =>
  ({
    state: "laminar separation",
    residual: residual(distances[own], distances[other]),
    end: distances[own],
  }) satisfies FollowedLayer;

describe("zero curves over a table of separation points", () => {
  it("two straight curves cross where their equations say", () => {
    // lower = 20 + upper / 4 and upper = 30 - lower / 3: lower = 330 / 13, upper = 280 / 13.
    const lower = zeroCurves(
      table,
      false,
      layer((own, other) => 20 + other / 4 - own),
    );
    const upper = zeroCurves(
      table,
      false,
      layer((own, other) => 30 - other / 3 - own),
    );
    const crossings = curveCrossings(lower, upper);
    expect(crossings.length).toBeGreaterThan(0);
    for (const { lower: l, upper: u } of crossings) {
      expect(l).toBeCloseTo(330 / 13, 8);
      expect(u).toBeCloseTo(280 / 13, 8);
    }
  });

  it("finds every pair of two curves with two branches each, stable ones alone", () => {
    // Attached, separated, attached, separated: stable at 12 and 36, unstable at 24.
    const waves = layer((own) => (-(own - 12) * (own - 24) * (own - 36)) / 500);
    const curves = zeroCurves(table, false, waves);
    const found = curveCrossings(curves, curves).map(({ lower, upper }) =>
      [Math.round(lower), Math.round(upper)].join(" "),
    );
    expect(new Set(found)).toEqual(new Set(["12 12", "12 36", "36 12", "36 36"]));
  });

  it("a crossing behind the last wake that stands is found with edges alone", () => {
    const ending = (own: number, other: number) => (distances[own] > 30 ? null : layer((at) => 31 - at)(own, other));
    expect(zeroCurves(table, false, ending)).toEqual([]);
    const pieces = zeroCurves(table, true, ending);
    expect(pieces.length).toBeGreaterThan(0);
    for (const { own } of pieces) expect(own).toEqual([31, 31]);
  });
});
