import { sectionSpecs, sweptKeys } from "../../document/sectionSpecs";
import { buildContour } from "../../engine/geometry/sectionFamilies";
import { contourExtent } from "../../engine/section/contourExtent";
import { problem, type Result, success } from "../../result";
import { puckFigures } from "../puck/public";
import type { TunnelBlockDocument } from "./tunnelBlockDocument";
import type { TunnelShape } from "./tunnelShape";

/**
 * The shape of a block at full size; the problem's field is below "model".
 * @param fluidDensity of the full-scale fluid, kg/m^3
 */
export function tunnelShape({ model }: TunnelBlockDocument, fluidDensity: number): Result<TunnelShape> {
  if (model.puck !== undefined) {
    const figures = puckFigures(model.puck, { fluidDensity });
    if (!figures.ok) return problem(figures.problem.code, figures.problem.message, "puck");
    return success({
      kind: "puck",
      name: model.puck.name,
      spec: model.puck,
      figures: figures.value,
      attitude: model.attitude ?? "edgeOn",
    });
  }
  const { section, spanMetres } = model;
  if (section === undefined || spanMetres === undefined) return problem("model", "it needs a section or a puck");
  const [swept] = sweptKeys(section);
  if (swept !== undefined)
    return problem("sweep", "it must be one number here, not a list or a range", `section.${swept}`);
  const [{ spec, floorGap }] = sectionSpecs(section);
  if (floorGap !== null)
    return problem("floor", "a floor below the section is not tested here", "section.floorGapMetres");
  const contour = buildContour(spec);
  if (!contour.ok) return problem(contour.problem.code, contour.problem.message, "section");
  return success({
    kind: "section",
    name: section.name ?? contour.value.name,
    contour: contour.value,
    width: contourExtent(contour.value, 0),
    length: contourExtent(contour.value, Math.PI / 2),
    isCircle: spec.family === "circle",
    span: spanMetres,
  });
}
