import { describe, expect, it } from "vitest";
import { timeOf } from "./timing";

describe("timeOf(work, repeats, warmUps)", () => {
  it("runs the warm-ups first, numbers the runs, and counts only the repeats", () => {
    const runs: number[] = [];
    const timing = timeOf((run) => runs.push(run), 4, 2);
    expect(runs).toEqual([0, 1, 2, 3, 4, 5]);
    expect(timing.repeats).toBe(4);
    expect(timing.fastestMilliseconds).toBeLessThanOrEqual(timing.medianMilliseconds);
    expect(timing.medianMilliseconds).toBeLessThanOrEqual(timing.slowestMilliseconds);
  });
});
