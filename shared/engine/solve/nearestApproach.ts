import type { FlowCondition } from "../condition";
import type { FixedPoint } from "./fixedPoint";
import { followBothSides } from "./followBothSides";
import type { PreparedSection } from "./preparedSection";
import { twoSidedFlow } from "./twoSidedFlow";
import type { SeparationPair } from "./zeroCurves";

/** Steps of the pattern search as parts of the way around: the first, and the one at which it ends. */
const FIRST_STEP = 1 / 32;
const LAST_STEP = 1 / 8192;

const DIRECTIONS: readonly (readonly [number, number])[] = [-1, 0, 1].flatMap((lower) =>
  [-1, 0, 1].filter((upper) => lower !== 0 || upper !== 0).map((upper) => [lower, upper] as const),
);

/** A pair of separation points, and by how much the layers miss it, / D. */
export interface Approach extends SeparationPair {
  readonly miss: number;
  readonly point: FixedPoint;
}

/**
 * The pair of separation points whose layers come nearest to separating there, where no pair is found at which both do:
 * the flow has to sit somewhere. Found by a pattern search (Hooke & Jeeves 1961, J. ACM 8, 212) from the best of the
 * table's held points and the guesses.
 * @returns its point is marked `onSwitch`; null where no wake stands at any of them
 */
export function nearestApproach(
  section: PreparedSection,
  condition: FlowCondition,
  guesses: readonly SeparationPair[],
): Approach | null {
  const whole = section.fullFlow();
  const { count } = section.nodes;
  const at = ({ lower, upper }: SeparationPair): Approach | null => {
    const flow = twoSidedFlow(whole, section, lower, upper);
    if (flow === null) return null;
    const layers = followBothSides(section, condition, flow);
    const miss = Math.max(Math.abs(layers.lower.residual), Math.abs(layers.upper.residual));
    return { lower, upper, miss, point: { flow, ...layers, onSwitch: true } };
  };
  const { distances, held } = section.table();
  const starts = held.flatMap((i) => held.map((j) => ({ lower: distances[i], upper: distances[j] })));
  let best: Approach | null = null;
  for (const start of [...starts, ...guesses]) {
    const found = at(start);
    if (found !== null && (best === null || found.miss < best.miss)) best = found;
  }
  if (best === null) return null;
  for (let step = FIRST_STEP * count; step > LAST_STEP * count; ) {
    let next: Approach = best;
    for (const [lower, upper] of DIRECTIONS) {
      const found = at({ lower: best.lower + step * lower, upper: best.upper + step * upper });
      if (found !== null && found.miss < next.miss) next = found;
    }
    if (next === best) step /= 2;
    best = next;
  }
  return best;
}
