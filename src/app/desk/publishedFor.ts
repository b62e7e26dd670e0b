import type { Design } from "../../../shared/case/design";
import { sizeOf } from "../section/sectionFields";
import type { MarkName } from "../style/markName";
import type { PublishedPoints } from "./dragCurveScene";

/** Published drag of one section in one stream by one source. */
export interface PublishedGroup {
  readonly source: string;
  readonly citation: string;
  readonly shape: string;
  readonly lengthToHeight: number;
  readonly cornerRadiusToHeight: number;
  readonly sandGrainRoughnessRatio: number;
  readonly turbulenceIntensity: number;
  /** Reynolds number, Cd, lowest and highest by the source's own scatter. */
  readonly points: readonly (readonly [number, number, number, number])[];
}

/** Sources beside one curve beyond this number would only hide it. */
const mostSources = 6;
/** Sections this alike, as a factor of length/height and a difference of corner radius/height, are shown together. */
const sameLength = 1.1;
const sameCorner = 0.04;
/** Walls and streams this alike, as factors; below the floors every wall is smooth and every stream quiet. */
const sameRoughness = 2.5;
const smoothRoughness = 2e-5;
/** Sources on rectangles and ellipses name no grains; up to this ks/D theirs are laid beside a wall. */
const unnamedRoughness = 1e-3;
const sameTurbulence = 3;
const quietTurbulence = 0.01;

const marks: readonly MarkName[] = ["circle", "square", "triangle", "diamond", "nabla", "hexagon"];

/** Published drag of sections, walls and streams like a design's, to be laid beside its curve; those with most points first. */
export function publishedFor(design: Design, groups: readonly PublishedGroup[]): readonly PublishedPoints[] {
  const shape = shapeOf(design);
  if (shape === null || design.incidence !== 0 || design.floorGap !== null || design.trips.length > 0) return [];
  const [, height] = sizeOf(design.section);
  const roughness = Math.max(smoothRoughness, design.sandGrainRoughness / height);
  const turbulence = Math.max(quietTurbulence, design.turbulenceIntensity);
  const alike = groups.filter(
    (group) =>
      group.shape === shape.shape &&
      within(group.lengthToHeight, shape.lengthToHeight, sameLength) &&
      Math.abs(group.cornerRadiusToHeight - shape.cornerRadiusToHeight) <= sameCorner &&
      (shape.shape === "circle"
        ? within(Math.max(smoothRoughness, group.sandGrainRoughnessRatio), roughness, sameRoughness)
        : Math.max(group.sandGrainRoughnessRatio, roughness) <= unnamedRoughness) &&
      within(Math.max(quietTurbulence, group.turbulenceIntensity), turbulence, sameTurbulence),
  );
  const bySource = new Map<string, PublishedGroup["points"][number][]>();
  for (const { source, points } of alike) bySource.set(source, [...(bySource.get(source) ?? []), ...points]);
  return [...bySource]
    .sort((a, b) => b[1].length - a[1].length)
    .slice(0, mostSources)
    .map(([source, points], i) => ({ source, mark: marks[i], points: points.sort((a, b) => a[0] - b[0]) }));
}

function shapeOf({
  section,
}: Design): Pick<PublishedGroup, "shape" | "lengthToHeight" | "cornerRadiusToHeight"> | null {
  switch (section.family) {
    case "circle":
      return { shape: "circle", lengthToHeight: 1, cornerRadiusToHeight: 0.5 };
    case "ellipse":
      return { shape: "ellipse", lengthToHeight: section.length / section.height, cornerRadiusToHeight: 0.5 };
    case "roundedRectangle":
      return {
        shape: "rectangle",
        lengthToHeight: section.length / section.height,
        cornerRadiusToHeight: section.edgeRadius / section.height,
      };
    case "stadium":
      return { shape: "rectangle", lengthToHeight: section.length / section.height, cornerRadiusToHeight: 0.5 };
    default:
      return null;
  }
}

function within(one: number, other: number, factor: number): boolean {
  return Math.abs(Math.log(one / other)) <= Math.log(factor);
}
