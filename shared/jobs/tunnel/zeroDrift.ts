import type { RunReading } from "./runTable";

/** The balance's zero at a reading: a weighted mean of zero readings. */
export interface ZeroAtReading {
  /** N. */
  readonly force: number;
  /** Indices of zero readings and their weights, which add up to 1; empty without zero readings. */
  readonly weights: readonly (readonly [number, number])[];
}

/** Zeros over a test. */
export interface ZeroDrift {
  readonly at: (reading: RunReading) => ZeroAtReading;
  readonly count: number;
  /** Largest difference of two zeros that follow each other, N. */
  readonly largestStep: number;
  /** What the drift is taken along. */
  readonly along: "time" | "order";
}

/**
 * Zero readings joined by straight lines, along time where every row has one that does not fall, else along the order of
 * the rows; before the first and after the last they are kept. Common practice, no source.
 */
export function zeroDrift(readings: readonly RunReading[]): ZeroDrift {
  const hasTimes =
    readings.length > 0 &&
    readings.every(({ time }, i) => time !== null && (i === 0 || time >= (readings[i - 1].time ?? 0)));
  const position = ({ time, row }: RunReading) => (hasTimes && time !== null ? time : row);
  const zeros = readings.filter(({ kind }) => kind === "zero");
  const steps = zeros.slice(1).map(({ force }, i) => Math.abs(force - zeros[i].force));
  return {
    count: zeros.length,
    largestStep: Math.max(0, ...steps),
    along: hasTimes ? "time" : "order",
    at: (reading) => {
      if (zeros.length === 0) return { force: 0, weights: [] };
      const here = position(reading);
      // By row among equal times: a reading lies after the zeros that stand above it.
      const after = zeros.findIndex(
        (zero) => position(zero) > here || (position(zero) === here && zero.row > reading.row),
      );
      if (after <= 0) {
        const only = after === 0 ? 0 : zeros.length - 1;
        return { force: zeros[only].force, weights: [[only, 1]] };
      }
      const [from, to] = [position(zeros[after - 1]), position(zeros[after])];
      const share = to > from ? (here - from) / (to - from) : 0.5;
      return {
        force: (1 - share) * zeros[after - 1].force + share * zeros[after].force,
        weights: [
          [after - 1, 1 - share],
          [after, share],
        ],
      };
    },
  };
}

/** Standard uncertainty of a mean of zeros, as a factor on that of one zero reading. */
export function zeroUncertaintyFactor(zeros: readonly ZeroAtReading[], perReading: readonly number[]): number {
  const sums = new Map<number, number>();
  zeros.forEach(({ weights }, i) => {
    for (const [index, weight] of weights) sums.set(index, (sums.get(index) ?? 0) + weight * perReading[i]);
  });
  return Math.sqrt([...sums.values()].reduce((sum, weight) => sum + weight * weight, 0));
}
