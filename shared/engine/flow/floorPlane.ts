import { problem, type Result, success } from "../../result";
import { WAKE_NUMBERS } from "../constants/wakeNumbers";
import { highestAlong } from "../geometry/referenceWidth";
import type { SectionNodes } from "../geometry/sectionNodes";
import { type FloorContact, floorContact } from "./floorContact";

/**
 * A plane floor below a section, parallel to the stream. It slips: that is exact for a body that moves over a floor at
 * rest in water at rest; a floor that stands still in a stream has a layer of its own, which is not modelled.
 */
export interface FloorPlane {
  /** Gap between the lowest point of the section and the floor / D; 0 when the section lies on it. */
  readonly gapRatio: number;
  /** The floor's coordinate across the stream, -sin(a) x + cos(a) y, m. */
  readonly level: number;
  /** Unit vector away from the floor. */
  readonly upX: number;
  readonly upY: number;
  /** Where the section lies on the floor; null above a gap. */
  readonly contact: FloorContact | null;
}

/**
 * Smallest gap / D above 0. In a narrower one the layers of floor and section would fill the gap and little water would
 * pass; the section is then better taken as lying on the floor, gap 0. The limit is ours.
 */
export const SMALLEST_GAP_RATIO = WAKE_NUMBERS.smallestGap.value;

/**
 * A section on the floor is solved this far above it, / D, with the flow beneath held at 0: the equation has no solution
 * where section and image touch, and with no flow beneath the standoff changes the rest of the flow by as little as itself.
 */
const STANDOFF_RATIO = WAKE_NUMBERS.restingStandoff.value;

/**
 * The floor below a section.
 * @param incidence angle of the stream, and so of the floor, to the x axis, rad; the floor lies to the right of the stream
 * @param referenceWidth D, m
 * @param gapRatio gap / D: 0, or at least {@link SMALLEST_GAP_RATIO}
 * @returns a problem "floor-gap" when the gap is out of range
 */
export function floorPlane(
  nodes: SectionNodes,
  incidence: number,
  referenceWidth: number,
  gapRatio: number,
): Result<FloorPlane> {
  const refused = checkGapRatio(gapRatio);
  if (refused !== null) return problem("floor-gap", refused, "floorGapRatio");
  const upX = -Math.sin(incidence);
  const upY = Math.cos(incidence);
  const lowest = -highestAlong(nodes, -upX, -upY);
  const resting = gapRatio === 0;
  return success({
    gapRatio,
    level: lowest - (resting ? STANDOFF_RATIO : gapRatio) * referenceWidth,
    upX,
    upY,
    contact: resting ? floorContact(nodes, upX, upY, lowest, referenceWidth) : null,
  });
}

/** A gap given in millimetres and divided by D may fall short of the limit by rounding. */
const ROUNDING = 1e-3;

/** What is wrong with a gap / D, or null. */
export function checkGapRatio(gapRatio: number): string | null {
  if (gapRatio === 0 || (gapRatio >= SMALLEST_GAP_RATIO * (1 - ROUNDING) && gapRatio < Number.POSITIVE_INFINITY))
    return null;
  return `the gap to the floor is ${gapRatio} of D; it must be 0 (lying on the floor) or at least ${SMALLEST_GAP_RATIO}: narrower gaps are filled by boundary layers, take 0 for them.`;
}
