/** How the speed rises from the wall: heights over the momentum thickness, speeds over the edge speed; shape [n] each. */
export interface VelocityProfile {
  readonly heights: readonly number[];
  readonly speeds: readonly number[];
}

const points = 13;

/** Most that Pohlhausen's profiles reach before they leave the wall, and where they overshoot the edge speed. */
const steepestAdverse = -12;
const steepestFavourable = 12;

/**
 * The profile that belongs to a momentum thickness and a shape factor. Laminar: Pohlhausen's polynomials, u/Ue = 2 e - 2
 * e^3 + e^4 + (L/6) e (1 - e)^3 with e = y/delta; turbulent: the power law u/Ue = e^n with H = 1 + 2 n. Schlichting
 * (1979), Boundary-Layer Theory, ch. X and XXI (from memory).
 * @param shapeFactor  H, above 1
 */
export function velocityProfile(shapeFactor: number, isTurbulent: boolean): VelocityProfile {
  const at = Array.from({ length: points }, (_, i) => i / (points - 1));
  if (isTurbulent) {
    const power = Math.max(0.01, (shapeFactor - 1) / 2);
    const thetaOverDelta = power / ((1 + power) * (1 + 2 * power));
    return { heights: at.map((e) => e / thetaOverDelta), speeds: at.map((e) => e ** power) };
  }
  const lambda = pohlhausenParameter(shapeFactor);
  const thetaOverDelta = momentumOverDelta(lambda);
  return {
    heights: at.map((e) => e / thetaOverDelta),
    speeds: at.map((e) => 2 * e - 2 * e ** 3 + e ** 4 + (lambda / 6) * e * (1 - e) ** 3),
  };
}

function momentumOverDelta(lambda: number): number {
  return (37 - lambda / 3 - (5 * lambda ** 2) / 144) / 315;
}

/** H falls as the parameter rises; held to the ends of the family. */
function pohlhausenParameter(shapeFactor: number): number {
  let [low, high] = [steepestAdverse, steepestFavourable];
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    const H = (0.3 - middle / 120) / momentumOverDelta(middle);
    if (H > shapeFactor) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
