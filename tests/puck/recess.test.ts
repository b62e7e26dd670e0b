import { describe, expect, it } from "vitest";
import { puckSteps } from "../../shared/jobs/puck/puckSteps";
import { entryWith, puckCaseDocument, readGood } from "./puckDocuments";

describe("a recess in the faces, edge-on", () => {
  const recess = (side: string) => ({ face: { kind: "recess", side, diameterMetres: 0.04, depthMetres: 0.001 } });
  const steps = puckSteps(
    readGood(
      puckCaseDocument({
        play: { orientationShares: { upright: 1, flat: 1, faceOn: 1 } },
        baselines: [entryWith("plain")],
        candidates: [entryWith("one side", recess("top")), entryWith("both sides", recess("both"))],
      }),
    ).puck,
  );
  let step = steps.next();
  while (!step.done) step = steps.next();
  const [plain, one, both] = step.value;

  it("leaves the expected value and the lower end, and widens the band by its wall: depth x diameter a side", () => {
    for (const orientation of ["upright", "flat"]) {
      const areaOf = ({ drag }: typeof plain) => {
        const row = drag.find((each) => each.orientation === orientation);
        return row?.dragAreaSquareMetres ?? { low: Number.NaN, expected: Number.NaN, high: Number.NaN };
      };
      for (const [puck, sides] of [
        [one, 1],
        [both, 2],
      ] as const) {
        expect(areaOf(puck).expected).toBeCloseTo(areaOf(plain).expected, 15);
        expect(areaOf(puck).low).toBeCloseTo(areaOf(plain).low, 15);
        expect(areaOf(puck).high - areaOf(plain).high).toBeCloseTo(sides * 0.04 * 0.001, 15);
      }
    }
    expect(one.notes.join(" ")).toContain("an allowance without a source");
    expect(plain.notes.join(" ")).not.toContain("recess");
  });
});
