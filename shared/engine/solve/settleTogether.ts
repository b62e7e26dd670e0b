import type { FlowCondition } from "../condition";
import type { SectionFlow } from "../flow/sectionFlow";
import type { SideLayer } from "../layer/sideLayer";
import { type FixedPoint, RESIDUAL_TOLERANCE } from "./fixedPoints";
import { followBothSides } from "./followBothSides";
import type { PreparedSection } from "./preparedSection";
import { type SeparatedFlow, separatedFlow } from "./separatedFlow";

/** Step of the differences that start the matrix, node steps: small against the layers' length, large against their rounding. */
const DIFFERENCE_STEP = 0.05;
/** A step beyond this, in node steps, leaves the neighbourhood of the point that the search along the sides came to. */
const LARGEST_STEP = 2;
const MOST_STEPS = 8;

/** Both layers at a pair of separation positions; distances run from the nose along either side, in node steps. */
interface BothSides {
  readonly lowerDistance: number;
  readonly upperDistance: number;
  readonly flow: SeparatedFlow;
  readonly lower: SideLayer;
  readonly upper: SideLayer;
}

/**
 * A fixed point near a pair of separation positions, both sides moved at once: Newton's method with the matrix of slopes
 * taken once by differences and kept up by Broyden's update (Broyden 1965, Math. Comp. 19, 577). It asks for fewer wakes
 * than moving one side after the other does.
 * @param lower    separation on the lower side, node steps from the nose
 * @param upper    separation on the upper side, node steps from the nose, above `lower`
 * @returns null where it does not settle near by, where a layer changes its kind on the way, or where the point found
 * repels the search side by side, so that no steady flow would come to it
 */
export function settleTogether(
  section: PreparedSection,
  flow: SectionFlow,
  condition: FlowCondition,
  lower: number,
  upper: number,
): FixedPoint | null {
  const { count } = section.nodes;
  const at = (lowerDistance: number, upperDistance: number): BothSides | null => {
    if (!(lowerDistance > 0 && upperDistance > 0 && count - upperDistance - lowerDistance > 2)) return null;
    const solved = separatedFlow(
      flow,
      section.street,
      section.constants.afterbodyInterference,
      lowerDistance,
      count - upperDistance,
    );
    if (solved === null) return null;
    return { lowerDistance, upperDistance, flow: solved, ...followBothSides(section, condition, solved) };
  };
  let here = at(lower, count - upper);
  if (here === null) return null;
  const sameKind = (there: BothSides | null): there is BothSides =>
    there !== null && here !== null && there.lower.state === here.lower.state && there.upper.state === here.upper.state;
  const besideLower = at(here.lowerDistance + DIFFERENCE_STEP, here.upperDistance);
  const besideUpper = at(here.lowerDistance, here.upperDistance + DIFFERENCE_STEP);
  if (!sameKind(besideLower) || !sameKind(besideUpper)) return null;
  // Slopes of the residuals: a of the lower side, b of the upper side, 1 with the lower position, 2 with the upper one.
  let a1 = (besideLower.lower.residual - here.lower.residual) / DIFFERENCE_STEP;
  let a2 = (besideUpper.lower.residual - here.lower.residual) / DIFFERENCE_STEP;
  let b1 = (besideLower.upper.residual - here.upper.residual) / DIFFERENCE_STEP;
  let b2 = (besideUpper.upper.residual - here.upper.residual) / DIFFERENCE_STEP;
  // Moving one side after the other draws near only where each side answers more to itself than to the other.
  if (!(a1 < 0 && b2 < 0 && Math.abs(a2 * b1) < a1 * b2)) return null;
  for (let step = 0; step < MOST_STEPS; step++) {
    if (isFound(here.lower) && isFound(here.upper)) {
      return { flow: here.flow, lower: here.lower, upper: here.upper, onSwitch: false };
    }
    // Aims at layers that have just separated, as only those report where.
    const lowerMiss = here.lower.residual + RESIDUAL_TOLERANCE / 2;
    const upperMiss = here.upper.residual + RESIDUAL_TOLERANCE / 2;
    const determinant = a1 * b2 - a2 * b1;
    const lowerStep = (a2 * upperMiss - b2 * lowerMiss) / determinant;
    const upperStep = (b1 * lowerMiss - a1 * upperMiss) / determinant;
    if (!(Math.max(Math.abs(lowerStep), Math.abs(upperStep)) <= LARGEST_STEP)) return null;
    const next = at(here.lowerDistance + lowerStep, here.upperDistance + upperStep);
    if (!sameKind(next)) return null;
    const square = lowerStep * lowerStep + upperStep * upperStep;
    const lowerError = next.lower.residual + RESIDUAL_TOLERANCE / 2;
    const upperError = next.upper.residual + RESIDUAL_TOLERANCE / 2;
    a1 += (lowerError * lowerStep) / square;
    a2 += (lowerError * upperStep) / square;
    b1 += (upperError * lowerStep) / square;
    b2 += (upperError * upperStep) / square;
    here = next;
  }
  return null;
}

function isFound({ residual }: SideLayer): boolean {
  return residual <= 0 && residual > -RESIDUAL_TOLERANCE;
}
