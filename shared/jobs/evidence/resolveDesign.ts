import type { SectionDocument } from "../../document/sectionDocument";
import { sectionSpecs } from "../../document/sectionSpecs";
import { buildContour } from "../../engine/geometry/sectionFamilies";
import { contourExtent } from "../../engine/section/contourExtent";
import { radiansOf } from "../../numerics/degreesAndPercent";
import { problem, type Result, success } from "../../result";
import { frontalAreaEdgeOn, type PuckSpec } from "../puck/public";
import type { MeasurementSetDocument } from "./measurementBlockDocument";
import type { MeasuredDesign } from "./measurementCase";
import { referenceAreaWords, referenceLengthWords, referenceScale } from "./reference";

/** What was measured, and how a set's own references go over into those of the engine. */
export interface ResolvedDesign {
  readonly name: string;
  readonly design: MeasuredDesign;
  /** m; of a section its extent across the stream, of a puck its diameter. */
  readonly width: number;
  /** Factors on the set's Reynolds numbers and drag coefficients. */
  readonly scale: { readonly reynolds: number; readonly drag: number };
  readonly referenceText: string;
  readonly shownOn: string;
}

/**
 * The design of a measurement set.
 * @param sections of the case, which the set may name; the problem's field is below the set
 */
export function resolveDesign(
  document: MeasurementSetDocument,
  sections: readonly SectionDocument[],
): Result<ResolvedDesign> {
  return document.puck === undefined ? sectionDesign(document, sections) : puckDesign(document, document.puck);
}

function sectionDesign(document: MeasurementSetDocument, sections: readonly SectionDocument[]): Result<ResolvedDesign> {
  const { section, panelCount } = document;
  const named = typeof section === "string" ? sections.find(({ name }) => name === section) : section;
  if (named === undefined) {
    const names = sections.flatMap(({ name }) => (name === undefined ? [] : [`"${name}"`])).join(", ");
    const known = names === "" ? "the case names no sections" : `the case's sections are ${names}`;
    return problem("measurements", `there is no section "${section}"; ${known}`, "section");
  }
  const specs = sectionSpecs(named);
  if (specs.length > 1) {
    return problem("measurements", "has a sweep; a measured design has one value of every key", "section");
  }
  const contour = buildContour(specs[0].spec);
  if (!contour.ok) return problem("measurements", contour.problem.message, "section");
  const incidence = radiansOf(document.incidenceDegrees ?? 0);
  const width = contourExtent(contour.value, incidence);
  const { referenceArea = "frontal", referenceLength = "acrossStream" } = document;
  const lengthToWidth = contourExtent(contour.value, incidence + Math.PI / 2) / width;
  return success({
    name: named.name ?? contour.value.name,
    design: { kind: "section", placed: { section: contour.value, incidence, panelCount } },
    width,
    scale: referenceScale(referenceArea, referenceLength, lengthToWidth),
    referenceText: `Cd on ${referenceAreaWords[referenceArea]}, Re on the ${referenceLengthWords[referenceLength]}`,
    shownOn: "Cd on width across the stream x span, Re on the width",
  });
}

function puckDesign(document: MeasurementSetDocument, spec: PuckSpec): Result<ResolvedDesign> {
  const { attitude = "edgeOn", referenceArea = "frontal", referenceLength = "acrossStream" } = document;
  const frontalArea = frontalAreaEdgeOn(spec);
  if (!frontalArea.ok) return problem("measurements", frontalArea.problem.message, "puck");
  const frontalAreaEdgeOnSquareMetres = frontalArea.value;
  const faceArea = (Math.PI / 4) * spec.diameterMetres ** 2;
  const isAlongThickness = attitude === "faceOn" && referenceLength === "alongStream";
  const ownArea = attitude === "edgeOn" ? "frontal area edge-on" : "face area";
  const statedArea = referenceArea === "plan" ? "face area" : ownArea;
  return success({
    name: `${spec.name}, ${attitude === "edgeOn" ? "edge-on" : "face-on"}`,
    design: { kind: "puck", spec, figures: { frontalAreaEdgeOnSquareMetres }, attitude },
    width: spec.diameterMetres,
    scale: {
      reynolds: isAlongThickness ? spec.diameterMetres / spec.thicknessMetres : 1,
      drag: attitude === "edgeOn" && referenceArea === "plan" ? faceArea / frontalAreaEdgeOnSquareMetres : 1,
    },
    referenceText: `Cd on the ${statedArea}, Re on the ${isAlongThickness ? "thickness" : "diameter"}`,
    shownOn: `Cd on the ${ownArea}, Re on the diameter`,
  });
}
