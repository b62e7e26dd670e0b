import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { gradeNodes } from "../../shared/engine/geometry/gradedNodes";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { prepareSection } from "../../shared/engine/solve/prepareSection";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import { contourOutline } from "../../shared/jobs/handoff/outline";
import { pointsCsv } from "../../shared/jobs/handoff/pointsCsv";
import { unwrap } from "../puck/examplePuck";

const condition = { reynolds: 1e5, sandGrainRoughnessRatio: 0, turbulenceIntensity: 0.001 };

function dragCoefficient(spec: SectionSpec): number {
  const section = unwrap(prepareSection(unwrap(gradeNodes(unwrap(buildContour(spec)), 160)), 0));
  const outcome = solveCondition(section, condition);
  const state = outcome.rising === null ? undefined : outcome.states[outcome.rising];
  if (state === undefined) throw new Error(outcome.problem?.message ?? "no state");
  return state.dragCoefficient;
}

describe("a section exported as points and read back", () => {
  const sections: SectionSpec[] = [
    { family: "circle", diameter: 0.08 },
    { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.009 },
  ];
  it.each(sections)("$family: area within 1e-4, drag coefficient at Re 1e5 within 3 %%", (spec) => {
    const contour = unwrap(buildContour(spec));
    const csv = pointsCsv(contourOutline(contour, 1e-6), 1e-6);
    const rows = Papa.parse<number[]>(csv, { dynamicTyping: true }).data.slice(1);
    const points = rows.map(([x, y]) => [x / 1000, y / 1000] as const);
    const free: SectionSpec = { family: "freeContour", points };
    expect(Math.abs(unwrap(buildContour(free)).area / contour.area - 1)).toBeLessThan(1e-4);
    const [before, after] = [dragCoefficient(spec), dragCoefficient(free)];
    expect(Math.abs(after / before - 1), `${before} became ${after}`).toBeLessThan(0.03);
  });
});
