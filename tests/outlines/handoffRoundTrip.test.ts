import { describe, expect, it } from "vitest";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { prepareShape } from "../../shared/engine/section/prepareShape";
import { solveStreams } from "../../shared/engine/section/solveStreams";
import { profileOutline } from "../../shared/jobs/handoff/outline";
import { outlinesDxf } from "../../shared/jobs/handoff/outlineDxf";
import { outlineSvg } from "../../shared/jobs/handoff/outlineSvg";
import { pointsCsv } from "../../shared/jobs/handoff/pointsCsv";
import { importOutline } from "../../shared/outlines/importOutline";
import { examplePuck, unwrap } from "../puck/examplePuck";

/** Deviation of the hand-off's points when a case names none, m. */
const deviation = 1e-5;
const condition = { reynolds: 8e4, sandGrainRoughnessRatio: 5e-4, turbulenceIntensity: 0.01 };

function solve(section: SectionSpec) {
  const shape = unwrap(prepareShape({ section, panelCount: 200 }));
  const [solved] = solveStreams(shape, [condition], "all");
  const { rising, states } = solved.outcome;
  if (rising === null) throw new Error("no state");
  return { drag: states[rising].dragCoefficient, band: solved.bands[rising] };
}

describe("a profile that was handed to the workshop and is read back", () => {
  const radius = 0.006;
  const profile: SectionSpec = { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: radius };
  const before = solve(profile);
  const outline = profileOutline({ ...examplePuck, edge: { kind: "radius", edgeRadiusMetres: radius } });
  const files = [
    ["profile.csv", pointsCsv(outline, deviation)],
    ["profile.dxf", outlinesDxf([outline])],
    ["profile.svg", outlineSvg(outline)],
  ] as const;

  it.each(files)(
    "%s: the same height within 0.01 mm, the same drag within half a per cent, the same trust",
    (fileName, text) => {
      const question = {
        text,
        fileName,
        format: null,
        unit: null,
        scale: 1,
        quarterTurns: 0,
        name: "back",
        cornerRadius: null,
      };
      const { solved, unitFrom } = unwrap(importOutline(question));
      expect(unitFrom).toBe("file");
      expect(Math.abs(solved.height - 0.03)).toBeLessThan(1e-5);
      expect(solved.deviation).toBeLessThan(1e-6);
      const after = solve(solved.spec);
      expect(Math.abs(after.drag / before.drag - 1), `${before.drag} became ${after.drag}`).toBeLessThan(0.005);
      expect(after.band.applicability).toEqual(before.band.applicability);
      for (const end of ["low", "high"] as const) {
        expect(Math.abs(after.band[end] / before.band[end] - 1)).toBeLessThan(0.005);
      }
    },
  );
});
