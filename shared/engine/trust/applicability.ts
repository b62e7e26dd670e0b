import type { FlowCondition } from "../condition";
import { TRUST_NUMBERS } from "../constants/trustNumbers";
import {
  type BandTable,
  type CheckedFamily,
  type CheckedRange,
  type ShapeFamily,
  sharpCornerRadius,
  smoothWallRoughness,
} from "./bandTable";
import { insideHull } from "./insideHull";
import type { SectionDescription } from "./sectionDescription";
import { familyNames, shapeFamily } from "./shapeFamily";

/** Where a section and its condition stand among those of published values. */
export type Applicability = "inside the checked range" | "between checked shapes" | "outside: do not rely on it";

export interface JudgedApplicability {
  readonly applicability: Applicability;
  /** One sentence that says which range was left; null inside the checked range. */
  readonly reason: string | null;
  /** True when the wall is rougher than the family was checked at. */
  readonly roughnessUnchecked: boolean;
}

/** A shape counts as checked when a published one has its length / height within this factor, */
const sameLength = TRUST_NUMBERS.sameLength.value;
/** and its corner radius / height within this. */
const sameCorner = TRUST_NUMBERS.sameCorner.value;
/** A condition counts as inside a range up to this factor beyond its last published value. */
const reach = TRUST_NUMBERS.rangeReach.value;
/** A wall of which Re ks/D stays below this is hydraulically smooth, however smooth the checked ones were. */
const smoothWallReynolds = TRUST_NUMBERS.smoothWallReynolds.value;

/** Whether published values were compared at such a section and condition, and if not, which range was left. */
export function judgeApplicability(
  section: SectionDescription,
  condition: FlowCondition,
  { checked }: Pick<BandTable, "checked">,
): JudgedApplicability {
  const family = shapeFamily(section, condition);
  const circle = joined([checked["smooth circle"], checked["rough circle"]]);
  const own =
    family === "other"
      ? joined([checked.ellipse, checked["sharp rectangle"], checked["rounded rectangle"]])
      : section.shape === "circle"
        ? circle
        : checked[family];
  const name = familyNames[family];
  const roughnessUnchecked = above(condition.sandGrainRoughnessRatio, checkedRoughness(own));
  const judged = (applicability: Applicability, reason: string | null) => ({
    applicability,
    reason,
    roughnessUnchecked,
  });
  const outside = [...outsideReasons(section, condition, family, checked, own, circle, name)];
  if (outside.length > 0) return judged("outside: do not rely on it", outside[0]);
  const between = [...betweenReasons(section, condition, family, checked, own, name)];
  if (between.length > 0) return judged("between checked shapes", between[0]);
  return judged("inside the checked range", null);
}

function* outsideReasons(
  section: SectionDescription,
  condition: FlowCondition,
  family: ShapeFamily,
  checked: BandTable["checked"],
  own: CheckedRange,
  circle: CheckedRange,
  name: string,
): Generator<string> {
  const { reynolds, sandGrainRoughnessRatio: roughness, turbulenceIntensity: turbulence } = condition;
  if (section.layerMethod === "textbook") {
    yield "Drag with textbook layers (Thwaites, Michel, Head) was not checked; the band's width is that of unchecked sections.";
  }
  if (condition.trips?.length) yield "Trips were not checked on any section.";
  if (section.nearFloor) yield "Sections near a floor were not checked.";
  if (section.inclined) yield "Sections inclined to the stream were not checked.";
  if (family === "other" && !section.betweenEllipseAndRectangle) {
    yield "The section is not of a checked kind: it does not lie between an ellipse and a rectangle of its length and height.";
  }
  const [shortest, longest] = lengthRange(family, checked);
  const ratio = section.lengthToHeight;
  if (above(shortest, ratio)) yield `Length/height lies below ${text(shortest)}, the least checked on ${name}.`;
  if (above(ratio, longest)) yield `Length/height lies above ${text(longest)}, the most checked on ${name}.`;
  if (
    section.shape === "rectangle" &&
    !insideHull(Math.log(ratio), section.cornerRadiusToHeight!, rectanglePlane(checked))
  ) {
    yield "The corners are rounder than those of any checked rectangle of about this length/height.";
  }
  const lowest = Math.min(own.reynolds[0], circle.reynolds[0]);
  if (above(lowest, reynolds)) yield `Re lies below ${text(lowest)}, the lowest checked.`;
  if (above(reynolds, own.reynolds[1])) yield `Re lies above ${text(own.reynolds[1])}, the highest checked on ${name}.`;
  if (above(roughness, circle.sandGrainRoughnessRatio[1])) {
    yield `ks/D lies above ${text(circle.sandGrainRoughnessRatio[1])}, the roughest wall checked.`;
  }
  const smoothest = circle.sandGrainRoughnessRatio[0];
  if (above(smoothest, roughness) && reynolds * smoothest > smoothWallReynolds) {
    yield `ks/D lies below ${text(smoothest)}, the smoothest wall checked, where the polish matters (Re above ${text(smoothWallReynolds / smoothest)}).`;
  }
  // No least turbulence: transition does not notice a stream quieter than the quietest one checked.
  if (above(turbulence, circle.turbulenceIntensity[1])) {
    yield `The turbulence lies above ${text(circle.turbulenceIntensity[1] * 100)} %, the highest checked.`;
  }
}

function* betweenReasons(
  section: SectionDescription,
  condition: FlowCondition,
  family: ShapeFamily,
  checked: BandTable["checked"],
  own: CheckedRange,
  name: string,
): Generator<string> {
  if (family === "other") {
    yield "The section lies between an ellipse and a rectangle of its length and height; only those were checked.";
  } else if (section.shape !== "circle" && !checked[family].shapes.some((shape) => sameShape(section, shape))) {
    yield section.shape === "ellipse"
      ? "The length/height lies between those of the checked ellipses."
      : "The length/height and corner radius lie between those of the checked rectangles.";
  }
  // Drag hardly changes with Re below a crisis, so that the circle can stand for the low end; it cannot for the high end.
  if (above(own.reynolds[0], condition.reynolds)) {
    yield `Re below ${text(own.reynolds[0])} was checked on circles, not on ${name}.`;
  }
  if (above(condition.sandGrainRoughnessRatio, checkedRoughness(own))) {
    yield `Walls rougher than ks/D ${text(own.sandGrainRoughnessRatio[1])} were checked on circles, not on ${name}.`;
  }
  if (above(condition.turbulenceIntensity, own.turbulenceIntensity[1])) {
    yield `Turbulence above ${text(own.turbulenceIntensity[1] * 100)} % was checked on circles, not on ${name}.`;
  }
}

function sameShape(section: SectionDescription, [lengthToHeight, corner]: readonly [number, number]): boolean {
  const ratio = section.lengthToHeight / lengthToHeight;
  if (!(ratio <= sameLength && ratio >= 1 / sameLength)) return false;
  return section.cornerRadiusToHeight === null || Math.abs(section.cornerRadiusToHeight - corner) <= sameCorner;
}

/** The roughest wall that counts as checked: what was checked, or whatever counts as smooth. */
function checkedRoughness({ sandGrainRoughnessRatio }: CheckedRange): number {
  return Math.max(sandGrainRoughnessRatio[1], smoothWallRoughness);
}

/** Length / height of the checked shapes that surround a family's: a circle is an ellipse and a rounded square too. */
function lengthRange(family: ShapeFamily, checked: BandTable["checked"]): readonly [number, number] {
  const families: readonly CheckedFamily[] =
    family === "sharp rectangle" || family === "rounded rectangle"
      ? ["sharp rectangle", "rounded rectangle"]
      : family === "ellipse" || family === "other"
        ? ["ellipse", "smooth circle"]
        : ["smooth circle"];
  const lengths = families.flatMap((member) => checked[member].shapes.map(([lengthToHeight]) => lengthToHeight));
  return [Math.min(...lengths), Math.max(...lengths)];
}

/** The checked rectangles, sharp, rounded and the circle, in the plane of ln(length / height) and corner radius / height. */
function rectanglePlane(checked: BandTable["checked"]): [number, number][] {
  return (["sharp rectangle", "rounded rectangle", "smooth circle"] as const).flatMap((family) =>
    // A sharp corner stands for every smaller radius.
    checked[family].shapes.map(([lengthToHeight, corner]): [number, number] => [
      Math.log(lengthToHeight),
      corner <= sharpCornerRadius ? 0 : corner,
    ]),
  );
}

function joined(ranges: readonly CheckedRange[]): CheckedRange {
  const span = (of: (range: CheckedRange) => readonly [number, number]) =>
    [Math.min(...ranges.map((range) => of(range)[0])), Math.max(...ranges.map((range) => of(range)[1]))] as const;
  return {
    reynolds: span(({ reynolds }) => reynolds),
    sandGrainRoughnessRatio: span(({ sandGrainRoughnessRatio }) => sandGrainRoughnessRatio),
    turbulenceIntensity: span(({ turbulenceIntensity }) => turbulenceIntensity),
    shapes: ranges.flatMap(({ shapes }) => shapes),
  };
}

function above(value: number, limit: number): boolean {
  return value > limit * reach;
}

/** Powers of ten from 1e4 on and below 0.01, else plain. */
function text(value: number): string {
  if (value !== 0 && (value >= 1e4 || value < 1e-2)) {
    return value
      .toExponential(2)
      .replace("+", "")
      .replace(/\.?0+e/, "e");
  }
  return String(Number(value.toPrecision(3)));
}
