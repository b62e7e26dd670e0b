import { expandSweep } from "../document/expandSweep";
import { mostShapes } from "../document/limits";
import type { SectionDocument } from "../document/sectionDocument";
import { type SweptSpec, sectionSpecs, sweptKeys } from "../document/sectionSpecs";
import { sweepText } from "../document/sweepText";
import { buildContour } from "../engine/geometry/sectionFamilies";
import type { CaseSection } from "../jobs/jobBlock";
import { radiansOf } from "../numerics/degreesAndPercent";
import type { Problem } from "../result";
import type { CaseDocument } from "./caseDocument";
import { caseSections } from "./caseSections";
import type { CaseShape } from "./resolvedCase";

/** The sections of a case with their contours, for every swept value and incidence; and what cannot be built. */
export function caseShapes(document: CaseDocument): { shapes: CaseShape[]; problems: Problem[] } {
  const sections = caseSections(document);
  const problems = sweepProblems(sections);
  if (problems.length > 0) return { shapes: [], problems };
  const incidences = incidencesOf(document);
  const { panelCount = "auto", layerMethod = "integral" } = document;
  const swept = sections.map(({ section }) => sectionSpecs(section));
  const count = swept.reduce((sum, specs) => sum + specs.length, 0) * incidences.length;
  if (count > mostShapes) {
    const message = `the case has ${count} sections (sweeps and incidences written out); it must have at most ${mostShapes}`;
    return { shapes: [], problems: [{ code: "section-count", message, field: "sections" }] };
  }
  const shapes: CaseShape[] = [];
  sections.forEach(({ section, field, sandGrainRoughness }, i) => {
    for (const { spec, sweep, floorGap } of swept[i]) {
      const contour = buildContour(spec);
      if (!contour.ok) {
        problems.push(located(contour.problem, section, field, sweep));
        continue;
      }
      const name = shapeName(section, contour.value.name, sweep);
      for (const incidence of incidences) {
        shapes.push({
          name,
          section: contour.value,
          incidence,
          sweep,
          floorGap,
          panelCount,
          layerMethod,
          sandGrainRoughness,
        });
      }
    }
  });
  return { shapes, problems };
}

/** rad */
function incidencesOf({ incidenceDegrees = 0 }: CaseDocument): number[] {
  const stated = typeof incidenceDegrees === "number" ? [incidenceDegrees] : expandSweep(incidenceDegrees);
  return stated.map(radiansOf);
}

function sweepProblems(sections: readonly CaseSection[]): Problem[] {
  return sections.flatMap(({ section, field: place }) => {
    const keys = sweptKeys(section);
    if (keys.length <= 1) return [];
    const field = `${place}.${keys[1]}`;
    const message = `${field} is swept as well as ${keys[0]}; at most one key of a section may be a list or a range`;
    return [{ code: "sweep", message, field }];
  });
}

/** The geometry names its own parameters ("edgeRadius"); the file's key has the unit behind it. */
function located(problem: Problem, section: SectionDocument, place: string, sweep: SweptSpec["sweep"]): Problem {
  const parameter = problem.field?.split(".").at(-1);
  const key = Object.keys(section).find((name) => name === parameter || name === `${parameter}Metres`);
  // A section made from a puck has keys that do not stand in the file.
  const field = key === undefined || place.startsWith("puck.") ? place : `${place}.${key}`;
  const where = sweep === null ? field : `${field} (${sweep.key} ${sweep.value})`;
  return { code: problem.code, message: `${where}: ${problem.message}`, field };
}

function shapeName(section: SectionDocument, contourName: string, sweep: SweptSpec["sweep"]): string {
  if (section.name === undefined) return contourName;
  return sweep === null ? section.name : `${section.name}, ${sweepText(sweep.key, sweep.value)}`;
}
