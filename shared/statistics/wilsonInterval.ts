import { normalFactor95 } from "./studentT";

/** Interval of a share that was counted. */
export interface ShareInterval {
  readonly shareLow: number;
  readonly shareHigh: number;
}

/**
 * 95 % interval of a share from counts. Source: Wilson (1927), J. Am. Stat. Assoc. 22, 209-212.
 * @param counted 0 to samples
 * @param samples 1 or more
 */
export function wilsonInterval(counted: number, samples: number): ShareInterval {
  const z = normalFactor95;
  const z2 = (z * z) / samples;
  const share = counted / samples;
  const middle = (share + z2 / 2) / (1 + z2);
  const half = (z * Math.sqrt((share * (1 - share)) / samples + z2 / (4 * samples))) / (1 + z2);
  return { shareLow: Math.max(0, middle - half), shareHigh: Math.min(1, middle + half) };
}
