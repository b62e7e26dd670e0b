import { describe, expect, it } from "vitest";
import { CALIBRATED } from "../../shared/engine/constants/calibrated";
import { LAYER_NUMBERS } from "../../shared/engine/constants/layerNumbers";
import type { SectionNodes } from "../../shared/engine/geometry/sectionNodes";
import { laminarLayer } from "../../shared/engine/layer/laminarLayer";
import { longBubble } from "../../shared/engine/layer/longBubble";
import { followSide, laminarShearLayerLength } from "../../shared/engine/layer/sideLayer";
import type { SideOutline } from "../../shared/engine/layer/sideOutline";
import { type SideStations, stationOfArc, stationValue } from "../../shared/engine/layer/sideStations";

const front = 40;
const side = 400;
/** theta grows as Ue^-(H + 2) over a bubble, H that of vanishing wall shear: 4.03 (Hartree 1937), 4.009 in the closure. */
const growthExponent = 6.01;

/**
 * A wedge of half height 1/2 and length 1 with a straight side of ten heights behind it, edge speeds as asked for: all
 * integrals over it are sums of straight pieces. Stations stand on the contour's nodes, 1/40 apart along the stream.
 */
function wedge(
  frontSpeed: number,
  sideSpeed: (s: number) => number,
  parallelWake: SideOutline["parallelWake"] = null,
): SideStations & { readonly outline: SideOutline; readonly corner: number } {
  const count = front + side + 1;
  const x = Float64Array.from({ length: count }, (_, i) => i / front);
  const y = x.map((along) => -Math.min(along, 1) / 2);
  const slant = Math.hypot(1, 0.5);
  const arc = x.map((along) => Math.min(along, 1) * slant + Math.max(0, along - 1));
  const corner = front;
  const speed = x.map((along, i) => (i === 0 ? 0 : i <= corner ? frontSpeed : sideSpeed(along - 1)));
  const gradient = speed.map((_, i) => (i === 0 ? 1 : 0));
  const outline: SideOutline = {
    nodes: { count, x, y } as SectionNodes,
    cosine: 1,
    sine: 0,
    sign: 1,
    curvatureAhead: 0,
    parallelWake,
  };
  const curvature = new Float64Array(count);
  const position = arc.map((_, i) => i);
  const laminar = laminarLayer(arc, speed, gradient);
  return { count, arc, position, speed, gradient, curvature, spacing: null, laminar, outline, corner };
}

const backAgainst = Math.sqrt(1 - LAYER_NUMBERS.reattachmentRise.value);
const rate = LAYER_NUMBERS.bubbleClosing.value;

describe("longBubble on a wedge with a straight side, by sums of straight pieces", () => {
  it("on a side of one speed: speed, lost drag and lift, height by the momentum theorem, length by the closing rate", () => {
    const stations = wedge(1.9, () => 0.95);
    const bubble = longBubble(stations, stations.outline, stations.corner, 0, 0);
    const speed = 0.95 / backAgainst;
    const lost = 1.9 ** 2 - speed ** 2;
    expect(bubble.speed).toBeCloseTo(speed, 12);
    // The first step of 1/40 begins at rest: half of it is lost.
    const first = 1 / front;
    expect(bubble.drag).toBeCloseTo(lost * (1 - first / 2) * 0.5, 12);
    // Along the side the speed falls below the bubble's within one step more.
    expect(bubble.lift).toBeCloseTo(lost * (1 - first / 2 + first / 2), 12);
    expect(bubble.height).toBeCloseTo(bubble.drag / (speed ** 2 - 1), 12);
    expect(bubble.length).toBeCloseTo(bubble.height / rate, 9);
    expect(bubble.side).toBeCloseTo(10, 9);
  });

  it("on a side that slows steadily it ends where its length says, found by halving on the closed form, to a station", () => {
    const fall = (s: number) => 1.42 - 0.03 * s;
    const stations = wedge(1.9, fall);
    const bubble = longBubble(stations, stations.outline, stations.corner, 0, 0);
    const lengthOf = (s: number) => {
      const speed = fall(s) / backAgainst;
      return ((1.9 ** 2 - speed ** 2) * 0.5 * (1 - 1 / front / 2)) / (speed ** 2 - 1) / rate;
    };
    let [near, far] = [0, 10];
    for (let i = 0; i < 60; i++) {
      const middle = (near + far) / 2;
      if (lengthOf(middle) > middle) near = middle;
      else far = middle;
    }
    expect(near).toBeGreaterThan(0.5);
    expect(near).toBeLessThan(9);
    expect(Math.abs(bubble.speed - fall(near) / backAgainst)).toBeLessThan(0.03 / front / backAgainst);
    expect(Math.abs(bubble.length - near)).toBeLessThan(0.1);
  });

  it("a layer that leaves the slant runs on along it while laminar: l1 and the gap that it leaves over the side, closed at the rate", () => {
    // No front is faster than the bubble: nothing is lost, and the tangent alone makes the gap.
    const stations = wedge(1.1, () => 1);
    for (const [separation, laminarLength] of [
      [30, 3],
      [20.5, 2.2],
    ]) {
      const bubble = longBubble(stations, stations.outline, separation, laminarLength, 0);
      expect(bubble.drag).toBe(0);
      const departure = (0.5 * separation) / front;
      const gap = departure + laminarLength * 0.5 - 0.5;
      expect(bubble.length).toBeCloseTo(laminarLength + gap / rate, 9);
    }
  });

  it("closes faster in a turbulent stream, by its coefficient times the intensity", () => {
    const stations = wedge(1.9, () => 0.95);
    const [quiet, turbulent] = [0, 0.04].map((Tu) => longBubble(stations, stations.outline, front, 0, Tu).length);
    expect(quiet / turbulent).toBeCloseTo(1 + 0.04 * LAYER_NUMBERS.bubbleClosingTurbulence.value, 9);
  });

  it("comes back against the speed that the side has with a wake that does not widen", () => {
    const velocity = new Float64Array(front + side + 1).fill(-0.05);
    const stations = wedge(1.9, () => 1.05, { velocity, factor: 2 });
    expect(longBubble(stations, stations.outline, front, 0, 0).speed).toBeCloseTo(0.95 / backAgainst, 12);
  });
});

describe("followSide with long bubbles", () => {
  const condition = { reynolds: 3e4, sandGrainRoughnessRatio: 0, turbulenceIntensity: 0.001 };
  /** A dip at the corner that the laminar layer cannot pass. */
  const stations = wedge(1.9, (s) => 1.3 - 0.02 * s);
  const follow = (longBubbles: boolean, outlined: boolean) => {
    const points: number[][] = [];
    const side = outlined ? stations : { ...stations, outline: undefined };
    const layer = followSide(side, { ...condition, longBubbles }, [], CALIBRATED, (...point) => points.push(point));
    return { layer, points };
  };

  it("without them, or without an outline to look along, the layer has left for good", () => {
    for (const { layer } of [follow(false, true), follow(true, false)]) {
      expect(layer.longBubble).toBeNull();
      expect(layer.state).toBe("laminar separation");
    }
  });

  it("the layer comes back a bubble's length behind its separation, with the momentum that the front has lost: 2 theta U^2 = drag, and what its own has grown to", () => {
    const { layer, points } = follow(true, true);
    const { separation, separationThickness } = stations.laminar;
    const laminarLength = laminarShearLayerLength(stations, separation, condition);
    const bubble = longBubble(stations, stations.outline, separation, laminarLength, condition.turbulenceIntensity);
    expect(layer.longBubble).toEqual(bubble);
    const separationArc = stationValue(stations.arc, separation);
    const room = stations.arc[stations.count - 1] - separationArc;
    const distance = Math.min(bubble.length, LAYER_NUMBERS.latestReattachment.value * room);
    expect(layer.bubble?.separationArc).toBeCloseTo(separationArc, 9);
    expect(layer.bubble?.reattachmentArc).toBeCloseTo(separationArc + distance, 9);
    expect((layer.transitionArc ?? 0) - separationArc).toBeCloseTo(Math.min(distance, laminarLength), 9);
    const back = stationValue(stations.speed, stationOfArc(stations, separationArc + distance));
    const grown = (separationThickness / Math.sqrt(condition.reynolds)) * (bubble.speed / back) ** growthExponent;
    expect(points[0][0]).toBeCloseTo(separationArc + distance, 9);
    expect(Math.abs(points[0][1] / (grown + bubble.drag / (2 * back ** 2)) - 1)).toBeLessThan(1e-3);
  });
});
