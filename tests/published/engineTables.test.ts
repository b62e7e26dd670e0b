import { describe, expect, it } from "vitest";
import {
  codeEndRelief,
  type EndReliefTable,
  reliefFrom,
  subcriticalEndRelief,
  supercriticalEndRelief,
} from "../../shared/jobs/puck/drag/endRelief";
import { axialCylinderDrag } from "../../shared/jobs/puck/drag/faceOnDrag";
import { dnvRpC205 } from "./dnv-rp-c205";
import { en199114 } from "./en-1991-1-4";
import type { PublishedSource } from "./publishedValue";
import { kritzinger2004 } from "./short-cylinders";
import { whiteDragTables } from "./white-drag-tables";
import { wieselsberger1922 } from "./wieselsberger-1922";

/** Pairs of length / diameter and published value. */
function pairs({ values }: PublishedSource, kind: string, reynolds?: number): [number, number][] {
  return values.flatMap(({ quantity, value }) =>
    quantity.kind === kind && "lengthToDiameter" in quantity && (reynolds ?? quantity.reynolds) === quantity.reynolds
      ? [[quantity.lengthToDiameter, value] as [number, number]]
      : [],
  );
}

function engineTable(source: string): EndReliefTable {
  const found = subcriticalEndRelief.find((table) => table.source.startsWith(source));
  if (found === undefined) throw new Error(`the engine has no table of ${source}`);
  return found;
}

/** The engine reads these tables itself; the published values beside the accuracy report must be the same ones. */
describe("tables in the engine are those of their published sources", () => {
  it("White, short cylinders across the stream over 1.20", () => {
    const found = pairs(whiteDragTables, "crossFlowCylinderDrag");
    expect(found.length).toBeGreaterThan(4);
    for (const [ratio, Cd] of found) expect(reliefFrom(engineTable("White"), ratio)).toBeCloseTo(Cd / 1.2, 12);
  });

  it("Wieselsberger 1922, short cylinders across the stream over 1.19", () => {
    const found = pairs(wieselsberger1922, "crossFlowCylinderDrag");
    expect(found.length).toBeGreaterThan(4);
    for (const [ratio, Cd] of found) expect(reliefFrom(engineTable("Wieselsberger"), ratio)).toBeCloseTo(Cd / 1.19, 12);
  });

  it("DNV-RP-C205, both columns", () => {
    const [below, above] = [1e5, 5e5].map((reynolds) => pairs(dnvRpC205, "crossFlowLengthFactor", reynolds));
    expect(below.length).toBeGreaterThan(4);
    for (const [ratio, factor] of below) expect(reliefFrom(engineTable("DNV"), ratio)).toBeCloseTo(factor, 12);
    for (const [ratio, factor] of above) expect(reliefFrom(supercriticalEndRelief, ratio)).toBeCloseTo(factor, 12);
  });

  it("EN 1991-1-4, solid bodies", () => {
    const found = pairs(en199114, "crossFlowLengthFactor");
    expect(found.length).toBe(codeEndRelief.points.length);
    for (const [ratio, factor] of found) expect(reliefFrom(codeEndRelief, ratio)).toBeCloseTo(factor, 12);
  });

  it("Kritzinger 2004, sharp cylinders along the stream", () => {
    expect(pairs(kritzinger2004, "axialCylinderDrag")).toEqual(axialCylinderDrag);
  });
});
