import { describe, expect, test } from "vitest";
import { laminarLayer } from "../../shared/engine/layer/laminarLayer";

const count = 401;
const arc = Float64Array.from({ length: count }, (_, i) => (i * 2) / (count - 1));

/** A stream that speeds up, dips by `depth` around s = 1 and speeds up again to `end`. */
function dippedStream(depth: number, end: number): { speed: Float64Array; gradient: Float64Array } {
  const at = (s: number) =>
    Math.tanh(3 * s) * (1 + (end - 1) * Math.max(0, s - 0.9)) - depth * Math.exp(-(((s - 1) / 0.12) ** 2));
  const speed = arc.map((s) => (s === 0 ? 0 : at(s)));
  return { speed, gradient: arc.map((s) => (at(s + 1e-5) - at(Math.max(0, s - 1e-5))) / (s > 0 ? 2e-5 : 1e-5)) };
}

describe("laminarLayer bridges short dips of the edge speed", () => {
  test("a dip that is made up again within Crabtree's (1957) pressure rise of 0.35 does not hold the layer off the wall", () => {
    const { speed, gradient } = dippedStream(0.12, 1.6);
    const layer = laminarLayer(arc, speed, gradient);
    expect(layer.dips).toHaveLength(1);
    expect(layer.separation).toBe(Number.POSITIVE_INFINITY);
    const [dip] = layer.dips;
    expect(dip.recovery).toBeGreaterThan(dip.separation);
    // The shear layer carries its momentum thickness across at constant pressure.
    expect(layer.thickness[Math.ceil(dip.recovery)]).toBeCloseTo(dip.thickness, 6);
  });

  test("a deeper dip separates the layer for good", () => {
    const { speed, gradient } = dippedStream(0.3, 1.6);
    const layer = laminarLayer(arc, speed, gradient);
    expect(layer.dips).toHaveLength(0);
    expect(layer.separation).toBeLessThan(count);
  });

  test("a dip that is never made up separates the layer for good", () => {
    const { speed, gradient } = dippedStream(0.12, 0.6);
    const layer = laminarLayer(arc, speed, gradient);
    expect(layer.dips).toHaveLength(0);
    expect(layer.separation).toBeLessThan(count);
  });
});
