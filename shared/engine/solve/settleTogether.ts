import { differenceSlopes, type Residuals, solveByBroyden } from "../../numerics/broyden";
import type { FlowCondition } from "../condition";
import type { SideLayer } from "../layer/sideLayer";
import type { FixedPoint } from "./fixedPoint";
import { followBothSides } from "./followBothSides";
import type { PreparedSection } from "./preparedSection";
import type { SeparatedFlow } from "./separatedFlow";
import { RESIDUAL_TOLERANCE } from "./separationSearch";
import { twoSidedFlow } from "./twoSidedFlow";
import type { SeparationPair } from "./zeroCurves";

/** Step of the differences that start the matrix, node steps: small against the layers' length, large against their rounding. */
const DIFFERENCE_STEP = 0.05;
/** A step beyond this part of the way around leaves the neighbourhood of the guess. */
const LARGEST_STEP_SHARE = 1 / 16;
const MOST_STEPS = 10;

/** A flow with the layers of both of its sides. */
interface BothSides {
  readonly flow: SeparatedFlow;
  readonly lower: SideLayer;
  readonly upper: SideLayer;
}

/**
 * A fixed point near a pair of separation points, both sides moved at once by Broyden's method. It asks for fewer wakes
 * than moving one side after the other does.
 * @returns null where it does not settle near by, where a layer changes its kind on the way, or where the point found
 * repels the search side by side, so that no steady flow would come to it
 */
export function settleTogether(
  section: PreparedSection,
  condition: FlowCondition,
  guess: SeparationPair,
): FixedPoint | null {
  const whole = section.fullFlow();
  let here: BothSides | null = null;
  /** Residuals of both sides, less the one that is aimed at: layers that have just separated, as only those report where. */
  const residualsAt: Residuals = ([lowerDistance, upperDistance]) => {
    const flow = twoSidedFlow(whole, section, lowerDistance, upperDistance);
    if (flow === null) return null;
    const there = { flow, ...followBothSides(section, condition, flow) };
    if (here !== null && (there.lower.state !== here.lower.state || there.upper.state !== here.upper.state))
      return null;
    here = there;
    return Float64Array.of(
      there.lower.residual + RESIDUAL_TOLERANCE / 2,
      there.upper.residual + RESIDUAL_TOLERANCE / 2,
    );
  };
  const start = Float64Array.of(guess.lower, guess.upper);
  const residuals = residualsAt(start);
  if (residuals === null) return null;
  const first = here;
  const slopes = differenceSlopes(residualsAt, start, residuals, DIFFERENCE_STEP);
  if (slopes === null) return null;
  const [ownLower, crossLower, crossUpper, ownUpper] = slopes;
  // Moving one side after the other draws near only where each side answers more to itself than to the other.
  if (!(ownLower < 0 && ownUpper < 0 && Math.abs(crossLower * crossUpper) < ownLower * ownUpper)) return null;
  here = first;
  const found = solveByBroyden(residualsAt, start, residuals, slopes, {
    isFound: (each) => each.every((residual) => Math.abs(residual) <= RESIDUAL_TOLERANCE / 2),
    largestStep: LARGEST_STEP_SHARE * section.nodes.count,
    mostSteps: MOST_STEPS,
  });
  return found === null || here === null ? null : { ...(here as BothSides), onSwitch: false };
}
