import { describe, expect, it } from "vitest";
import { QUIET_WAKE_SUCTION_SHARE, quietWakeSuctionShare } from "../../shared/engine/flow/quietWake";

describe("quietWakeSuctionShare(gapRatio)", () => {
  it("is the quiet share up to gap / D 0.3, 1 from 0.5 on, linear and rising between", () => {
    for (const gap of [0, 0.1, 0.3]) expect(quietWakeSuctionShare(gap)).toBe(QUIET_WAKE_SUCTION_SHARE);
    for (const gap of [0.5, 2, 1000]) expect(quietWakeSuctionShare(gap)).toBe(1);
    expect(quietWakeSuctionShare(0.4)).toBeCloseTo((1 + QUIET_WAKE_SUCTION_SHARE) / 2, 12);
  });
});
