/** A time and how far it scatters. */
export interface Timing {
  readonly medianMilliseconds: number;
  readonly fastestMilliseconds: number;
  readonly slowestMilliseconds: number;
  readonly repeats: number;
}

/**
 * Times a piece of work: first some runs that do not count, so that the compiler has seen it, then the repeats.
 * @param work gets the number of the run, so that it can differ from run to run
 */
export function timeOf(work: (run: number) => unknown, repeats: number, warmUps: number): Timing {
  for (let run = 0; run < warmUps; run++) work(run);
  const times = Array.from({ length: repeats }, (_, run) => {
    const start = performance.now();
    work(warmUps + run);
    return performance.now() - start;
  }).sort((a, b) => a - b);
  const middle = times.length >> 1;
  return {
    medianMilliseconds: times.length % 2 === 1 ? times[middle] : (times[middle - 1] + times[middle]) / 2,
    fastestMilliseconds: times[0],
    slowestMilliseconds: times[times.length - 1],
    repeats,
  };
}
