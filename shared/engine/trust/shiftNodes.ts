import { normalQuantile } from "../../statistics/normal";

/** How many equally likely shifts of a crisis stand for their distribution. */
const SHIFT_COUNT = 21;

/** Middles of equally likely parts of the standard normal distribution, shape [SHIFT_COUNT], rising. */
export const standardShifts: Readonly<Float64Array> = Float64Array.from({ length: SHIFT_COUNT }, (_, i) =>
  normalQuantile((i + 1 / 2) / SHIFT_COUNT),
);
