import { problem, type Result, success } from "../../result";
import { patternHeights, type SurfacePattern } from "./surfacePattern";

/** An estimate of the sand-grain roughness of a pattern, and how far it can be trusted. */
export interface PatternEstimate {
  /** ks, m, to three digits: more would promise too much. */
  readonly sandGrainRoughness: number;
  /** False when the skewness lies outside the surfaces that were measured; the nearest measured one is taken. */
  readonly insideMeasured: boolean;
}

/** Skewness of the surfaces that the relation was fitted on, about. */
const measuredSkewness = [-0.7, 0.7] as const;

export const patternSource =
  "K. A. Flack, M. P. Schultz & J. M. Barros (2020), Flow, Turbulence and Combustion 104, 317-329: ks from the root mean square and the skewness of heights (from memory), fitted on irregular surfaces. For a regular pattern it is an estimate, good to a factor of two at best.";

/**
 * Equivalent sand-grain roughness of a pattern in the fully rough regime: ks / krms = 2.48 (1 + Sk)^2.24 above, 2.11 at,
 * 2.73 (2 + Sk)^-0.45 below zero skewness.
 * Source: Flack, Schultz & Barros (2020), Flow, Turbulence and Combustion 104, 317-329, from memory.
 */
export function equivalentRoughness(pattern: SurfacePattern): Result<PatternEstimate> {
  const { depth, width, pitch } = pattern;
  if (!(depth > 0)) return problem("pattern", `depth is ${depth} m; it must be above 0.`, "depth");
  if (!(width > 0)) return problem("pattern", `width is ${width} m; it must be above 0.`, "width");
  if (!(pitch > width * (1 + 1e-9))) {
    return problem("pattern", `pitch is ${pitch} m; it must be above the width, ${width} m.`, "pitch");
  }
  const { rootMeanSquare, skewness } = patternHeights(pattern);
  const held = Math.min(measuredSkewness[1], Math.max(measuredSkewness[0], skewness));
  const ratio = held > 0 ? 2.48 * (1 + held) ** 2.24 : held < 0 ? 2.73 * (2 + held) ** -0.45 : 2.11;
  return success({
    sandGrainRoughness: Number((ratio * rootMeanSquare).toPrecision(3)),
    insideMeasured: held === skewness,
  });
}
