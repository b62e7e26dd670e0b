import type { SectionFlow } from "../flow/sectionFlow";
import { type FlowClosure, type SeparatedFlow, separatedFlow } from "./separatedFlow";

/** Fewest node steps between two separation points. */
const NARROWEST_BASE = 3;

/**
 * The flow of a section that separates at two distances from the front, node steps along the lower and the upper side.
 * @returns null where no wake stands or the base is narrower than three node steps
 */
export function twoSidedFlow(
  flow: SectionFlow,
  closure: FlowClosure,
  lowerDistance: number,
  upperDistance: number,
): SeparatedFlow | null {
  const { count } = flow.nodes;
  if (!(lowerDistance > 0 && upperDistance > 0 && count - lowerDistance - upperDistance >= NARROWEST_BASE)) return null;
  const lower = flow.front + lowerDistance;
  const upper = flow.front + count - upperDistance;
  return separatedFlow(flow, closure, lower, upper);
}
