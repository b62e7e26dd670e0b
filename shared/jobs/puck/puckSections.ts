import type { SectionDocument } from "../../document/sectionDocument";
import type { CaseSection } from "../jobBlock";
import { profileSection } from "./drag/solvedSections";
import type { PuckBlockDocument } from "./puckBlockDocument";

/** The plan and profile sections of the pucks of a block, each with its own finish. */
export function puckSections({ baselines, candidates = [] }: PuckBlockDocument): CaseSection[] {
  const entries = [
    ...baselines.map((entry, i) => ({ entry, field: `puck.baselines[${i}].puck` })),
    ...candidates.map((entry, i) => ({ entry, field: `puck.candidates[${i}].puck` })),
  ];
  return entries.flatMap(({ entry: { puck: spec, sandGrainRoughnessMetres: sandGrainRoughness = null }, field }) => {
    const rim = spec.rim.kind === "rough" ? spec.rim.sandGrainRoughnessMetres : sandGrainRoughness;
    const plan: SectionDocument = {
      family: "circle",
      name: sectionName(spec.name, "plan section"),
      diameterMetres: spec.diameterMetres,
    };
    const profile = profileDocument(
      profileSection(spec, spec.diameterMetres),
      sectionName(spec.name, "profile section"),
    );
    return [
      { section: plan, field, sandGrainRoughness: rim },
      { section: profile, field, sandGrainRoughness },
    ];
  });
}

/** Names of sections are shorter than those of pucks may be. */
function sectionName(puck: string, what: string): string {
  return `${puck.slice(0, 80)}, ${what}`;
}

function profileDocument(spec: ReturnType<typeof profileSection>, name: string): SectionDocument {
  switch (spec.family) {
    case "roundedRectangle":
      return {
        family: spec.family,
        name,
        lengthMetres: spec.length,
        heightMetres: spec.height,
        edgeRadiusMetres: spec.edgeRadius,
      };
    case "bevelledRectangle":
      return {
        family: spec.family,
        name,
        lengthMetres: spec.length,
        heightMetres: spec.height,
        bevelLengthMetres: spec.bevelLength,
        bevelHeightMetres: spec.bevelHeight,
        cornerRadiusMetres: spec.cornerRadius,
      };
    case "freeContour":
      return { family: spec.family, name, pointsMetres: spec.points.map(([x, y]) => [x, y] as [number, number]) };
    default:
      throw new RangeError(`a puck's profile is a ${spec.family}; it must be a rectangle or a free contour.`);
  }
}
