import { describe, expect, it } from "vitest";
import { sectionFlow } from "../../shared/engine/flow/sectionFlow";
import { cutsThroughBody } from "../../shared/engine/wake/wakeClearance";
import { type WakeFlow, wakeFlow } from "../../shared/engine/wake/wakeFlow";
import { nodesOf, unwrap } from "../flow/sections";

const panels = 200;
const circle = nodesOf({ family: "circle", diameter: 1 }, panels);
const flow = unwrap(sectionFlow(circle, 0));
const wakeAt = (degrees: number): WakeFlow => {
  const lower = (panels * degrees) / 360;
  return unwrap(wakeFlow(flow, lower, panels - lower));
};

describe("cutsThroughBody: wakes whose layers would have to pass through the section", () => {
  it("knows the circle's chord: what stands one separation width behind the separation points, to 1 %", () => {
    // Separation at beta: width sin(beta) at x = -cos(beta)/2, so that the circle one width behind is that high or gone.
    for (const degrees of [60, 80, 100]) {
      const beta = (degrees * Math.PI) / 180;
      const x = Math.sin(beta) - Math.cos(beta) / 2;
      const height = Math.abs(x) < 0.5 ? 2 * Math.sqrt(0.25 - x * x) : 0;
      expect(wakeAt(degrees).heightBehind).toBeCloseTo(height, 2);
    }
  });

  it("lets a wake pass that is wider than all that stands behind it, whatever it does further on", () => {
    const wake: WakeFlow = { ...wakeAt(90), separationWidth: 1, widestBehind: 1, heightBehind: 0, wakeWidth: [0.2, 0] };
    expect(cutsThroughBody(wake, 1.1, Math.sqrt(0.2))).toBe(false);
    expect(cutsThroughBody(wake, 0.9, Math.sqrt(0.2))).toBe(false);
  });

  it("refuses layers that leave the very nose and stay narrower than the section behind", () => {
    const wake: WakeFlow = {
      ...wakeAt(90),
      separationWidth: 0.4,
      widestBehind: 1,
      heightBehind: 1,
      wakeWidth: [0.8, 0],
    };
    expect(cutsThroughBody(wake, 1.1, Math.sqrt(0.32))).toBe(true);
    expect(cutsThroughBody({ ...wake, wakeWidth: [1.2, 0] }, 1.1, Math.sqrt(0.48))).toBe(false);
  });

  it("refuses water at rest above stream pressure (k below 1) ahead of a wider part: it does not spread", () => {
    const wake: WakeFlow = {
      ...wakeAt(90),
      separationWidth: 0.7,
      widestBehind: 1,
      heightBehind: 0.5,
      wakeWidth: [1, 0],
    };
    expect(cutsThroughBody(wake, 0.98, Math.sqrt(0.7))).toBe(true);
    expect(cutsThroughBody(wake, 1.02, Math.sqrt(0.7))).toBe(false);
  });

  it("refuses a wake that narrows faster than the tail: half way from 0.9 to 0.5 one width on, with a tail of 0.85 there", () => {
    const wake: WakeFlow = {
      ...wakeAt(90),
      separationWidth: 0.9,
      widestBehind: 0.9,
      heightBehind: 0.85,
      wakeWidth: [0.5, 0],
    };
    expect(cutsThroughBody(wake, 1.1, Math.sqrt(0.45))).toBe(true);
    expect(cutsThroughBody({ ...wake, heightBehind: 0.6 }, 1.1, Math.sqrt(0.45))).toBe(false);
  });
});
