import { describe, expect, it } from "vitest";
import { readCaseDocument } from "../../shared/case/readCase";
import { puckCsv, puckCsvColumns } from "../../shared/jobs/puck/puckCsv";
import { puckSteps } from "../../shared/jobs/puck/puckSteps";
import { puckTable } from "../../shared/jobs/puck/puckTable";
import { type PlainObject, puckCaseDocument, readGood } from "./puckDocuments";

const orientationShares = { upright: 1, flat: 1, faceOn: 1 };

function results(play: PlainObject) {
  const steps = puckSteps(readGood(puckCaseDocument({ play: { orientationShares, ...play } })).puck);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

function faults(play: PlainObject): string {
  const reading = readCaseDocument(puckCaseDocument({ play: { orientationShares, ...play } }), "case.json");
  return reading.ok ? "" : reading.problems.map(({ message }) => message).join("\n");
}

describe("flatGapMetres and sweptGapsMetres", () => {
  const [swept] = results({ sweptGapsMetres: [0, 0.003, 0.3] });

  it("sweep a puck over the floor: one row per speed and gap, beside the orientations of play", () => {
    const rows = swept.drag.filter(({ orientation }) => orientation === "overFloor");
    expect(rows.map(({ speedMetresPerSecond, floorGapMetres }) => [speedMetresPerSecond, floorGapMetres])).toEqual([
      [1, 0],
      [1, 0.003],
      [1, 0.3],
      [2, 0],
      [2, 0.003],
      [2, 0.3],
    ]);
    for (const { dragCoefficient: Cd, dragNewtons } of rows) {
      expect(Cd.low).toBeGreaterThan(0);
      expect(Cd.low).toBeLessThanOrEqual(Cd.expected);
      expect(Cd.expected).toBeLessThanOrEqual(Cd.high);
      expect(dragNewtons.expected).toBeGreaterThan(0);
    }
    expect(rows[0].applicability).toContain("near a floor");
    expect(rows[2].applicability).not.toContain("near a floor");
  });

  it("at gap 0 the swept row is the flat one, ten thicknesses up the upright one within 1 %", () => {
    const at = (orientation: string, gap: number | null) =>
      swept.drag.find(
        (row) => row.orientation === orientation && row.floorGapMetres === gap && row.speedMetresPerSecond === 1,
      );
    expect(at("overFloor", 0)?.dragCoefficient).toEqual(at("flat", 0)?.dragCoefficient);
    const ratio =
      (at("overFloor", 0.3)?.dragCoefficient.expected ?? Number.NaN) /
      (at("upright", null)?.dragCoefficient.expected ?? 1);
    expect(Math.abs(ratio - 1)).toBeLessThan(0.01);
  });

  it("every band over the floor holds the figure in open water", () => {
    const upright = swept.drag.find(({ orientation }) => orientation === "upright")?.dragAreaSquareMetres;
    const over = swept.drag.find(({ orientation }) => orientation === "overFloor")?.dragAreaSquareMetres;
    expect(over?.low).toBeLessThanOrEqual(upright?.low ?? Number.NaN);
    expect(over?.high).toBeGreaterThanOrEqual(upright?.high ?? Number.NaN);
  });

  it("stand in the CSV under floorGapMetres and in a table of their own", () => {
    const csv = puckCsv([swept]).split("\r\n");
    const column = puckCsvColumns.indexOf("floorGapMetres");
    expect(csv[0].split(",")[column]).toBe("floorGapMetres");
    expect(csv.filter((line) => line.includes(",overFloor,,0.003,"))).toHaveLength(2);
    const table = puckTable([swept]);
    expect(table).toContain("FLAT OVER THE FLOOR at turbulence 1 %");
    expect(table).toContain("flat on the floor");
  });

  it("a gap in play is what lying flat means in the index and the motions", () => {
    const [puck] = results({ flatGapMetres: 0.003 });
    const [flat] = puck.drag.filter(({ orientation }) => orientation === "flat");
    expect(flat.floorGapMetres).toBe(0.003);
    const same = swept.drag.find(
      ({ orientation, floorGapMetres }) => orientation === "overFloor" && floorGapMetres === 0.003,
    );
    expect(flat.dragCoefficient).toEqual(same?.dragCoefficient);
    expect(puckTable([puck])).toContain("flat 3 mm above the floor");
  });

  it("are refused where boundary layers would fill them, below 0, and in open water, with what to write instead", () => {
    expect(faults({ flatGapMetres: 0.0001 })).toMatch(
      /puck.play.flatGapMetres: 0.1 mm is filled by boundary layers under ".*"; it must be 0 or at least 0.6 mm/,
    );
    expect(faults({ sweptGapsMetres: [0, 0.0001] })).toContain("puck.play.sweptGapsMetres[1]");
    expect(faults({ flatGapMetres: -0.001 })).toContain("flatGapMetres");
    expect(faults({ flatGapMetres: 0.001, flatPlace: "openWater" })).toContain('it needs flatPlace "floor"');
  });
});
