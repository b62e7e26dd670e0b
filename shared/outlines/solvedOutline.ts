import { millimetres } from "../engine/geometry/dimensionChecks";
import { buildOutline, type RoundedOutline, roundedOutline } from "../engine/geometry/outlineContour";
import { outlineSides } from "../engine/geometry/outlineSides";
import type { OutlineSpec } from "../engine/geometry/sectionSpec";
import { problem, type Result, success } from "../result";
import { chainPoints } from "./chooseOutline";
import { largestDeviation } from "./deviation";
import { extentsOf, type Outline, type Place } from "./outline";
import { type OutlinePlacement, placedOutline } from "./placedOutline";
import { curveShare } from "./pointSides";
import { withoutSmallDetails } from "./smallDetails";

/** An outline as it is solved, beside what the file gave. All lengths in metres. Plain data, so that it crosses to the page. */
export interface SolvedOutline {
  readonly spec: OutlineSpec;
  /** Round the outline as it was given, placed: its points, or points along its sides. */
  readonly given: readonly Place[];
  /** Round the contour that is solved. */
  readonly solved: readonly Place[];
  /** Of the solved contour, along and across the stream at zero incidence. */
  readonly length: number;
  readonly height: number;
  /** m^2 */
  readonly area: number;
  /** Of the outline as given. */
  readonly givenLength: number;
  readonly givenHeight: number;
  /** Largest distance of the given outline from the solved contour, and where. */
  readonly deviation: number;
  readonly deviationAt: Place;
  /** Largest distance of the solved contour from the straight lines between given points, m; null where none were given. */
  readonly betweenPoints: number | null;
  /** How many corners were rounded, and with which radius, m. */
  readonly corners: number;
  readonly cornerRadius: number;
  /** What a person should know, in sentences. */
  readonly remarks: readonly string[];
}

/** Largest deviation of the solved contour that is taken, as a part of the smaller dimension: chosen so that a corner of 20 degrees still passes. */
export const largestDeviationShare = 0.05;
/** Deviation of the points along the solved contour, as a part of the smaller dimension, and the longest step as a part of both extents. */
const drawnDeviation = 1e-6;
const longestStep = 1 / 100;
const trialSteps = 8;

/** The outline as the solver takes it. Fails where it crosses itself, cannot be built or leaves what was given too far. */
export function solvedOutline(
  outline: Outline,
  placement: OutlinePlacement,
  name: string,
  cornerRadius?: number,
): Result<SolvedOutline> {
  if (!(placement.scale > 0 && placement.scale <= largestScale)) {
    return problem("scale", `scale is ${placement.scale}; it must be above 0 and at most ${largestScale}`, "scale");
  }
  const placed = placedOutline(outline, placement);
  const all = { sides: placed.sides, end: placed.sides[0].from };
  // What crosses in the file is said before details of it are looked at.
  const sound = outlineSides(placed.sides);
  if (!sound.ok) return sound;
  const { sides, replaced } = withoutSmallDetails(placed.sides);
  const spec: OutlineSpec = {
    family: "outline",
    sides,
    name,
    ...(cornerRadius === undefined ? {} : { cornerRadius }),
  };
  const contour = buildOutline(spec);
  if (!contour.ok) return contour;
  const rounded = roundedOutline(spec);
  if (!rounded.ok) return rounded;
  const given = placed.points ?? chainPoints(all).slice(0, -1);
  const solved = outlinePolygon(rounded.value);
  const [length, height] = extentsOf(solved);
  const [givenLength, givenHeight] = extentsOf(chainPoints(all));
  const smaller = Math.min(givenLength, givenHeight);
  const { distance, at } = largestDeviation(given, solved);
  const betweenPoints = placed.points === null ? null : largestDeviation(solved, placed.points).distance;
  const worst = Math.max(distance, betweenPoints ?? 0);
  if (worst > largestDeviationShare * smaller) {
    const found = `the contour that can be solved leaves the outline by up to ${shortLength(worst)}, ${percent(worst, smaller)} of its smaller dimension`;
    const limit = `it must be at most ${100 * largestDeviationShare} %`;
    return problem("deviation", `${found}; ${limit}: blunt its sharpest corner or give more points`, "sides");
  }
  return success({
    spec,
    given,
    solved,
    length,
    height,
    area: contour.value.area,
    givenLength,
    givenHeight,
    deviation: distance,
    deviationAt: at,
    betweenPoints,
    corners: rounded.value.corners,
    cornerRadius: rounded.value.cornerRadius,
    remarks: [
      ...outline.remarks,
      ...fittedRemarks(outline, placed.tolerance),
      ...(replaced > 0
        ? [`${counted(replaced, "detail")} smaller than this radius became ${replaced === 1 ? "a corner" : "corners"}.`]
        : []),
    ],
  });
}

export const largestScale = 1e6;

/** What was made of a list of points. */
function fittedRemarks({ fitted }: Outline, tolerance: number | null): string[] {
  if (fitted === null || tolerance === null) return [];
  const parts = [
    ...(fitted.lines > 0 ? [counted(fitted.lines, "line")] : []),
    ...(fitted.arcs > 0 ? [counted(fitted.arcs, "arc")] : []),
    ...(fitted.curvePoints > 0 ? [`curves through ${counted(fitted.curvePoints, "point")}`] : []),
  ];
  return [
    `${counted(fitted.points.length, "point")} read as ${parts.join(", ")}, fitted within ${shortLength(curveShare * tolerance)}.`,
  ];
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? "" : "s"}`;
}

/** Lengths to two digits, as text in mm or micrometres. */
export function shortLength(metres: number): string {
  return metres < 1e-5 ? `${Number((metres * 1e6).toPrecision(2))} µm` : millimetres(Number(metres.toPrecision(3)));
}

function percent(part: number, whole: number): string {
  return `${Number(((100 * part) / whole).toPrecision(2))} %`;
}

/** Points round a rounded outline, dense where it turns. */
function outlinePolygon({ stretches, length, height }: RoundedOutline): Place[] {
  const scale = Math.min(length, height);
  const longest = longestStep * (length + height);
  return stretches.flatMap(({ path, from, to }) => {
    let size = 0;
    let turn = 0;
    let last = path.at(from);
    for (let k = 1; k <= trialSteps; k++) {
      const here = path.at(from + ((to - from) * k) / trialSteps);
      size += Math.hypot(here.x - last.x, here.y - last.y);
      turn += Math.abs(Math.atan2(last.dx * here.dy - last.dy * here.dx, last.dx * here.dx + last.dy * here.dy));
      last = here;
    }
    // An arc of this size and turn lies size * turn / (8 steps^2) from its chords.
    const steps = Math.ceil(Math.max(size / longest, Math.sqrt((size * turn) / (8 * drawnDeviation * scale)), 1));
    return Array.from({ length: steps }, (_, k): Place => {
      const { x, y } = path.at(from + ((to - from) * k) / steps);
      return [x, y];
    });
  });
}
