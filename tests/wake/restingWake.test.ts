import { describe, expect, it } from "vitest";
import { fieldVelocity, streamFunction } from "../../shared/engine/flow/fieldVelocity";
import { mirrored } from "../../shared/engine/flow/floorImage";
import { type SectionFlow, sectionFlow } from "../../shared/engine/flow/sectionFlow";
import { interpolateAtPosition, positionAtArc } from "../../shared/engine/geometry/arcPosition";
import type { SectionNodes } from "../../shared/engine/geometry/sectionNodes";
import { outflowStrengths } from "../../shared/engine/wake/outflow";
import { restingWake } from "../../shared/engine/wake/restingWake";
import { quadraticAt, surfaceVelocity, type WakeFlow, wakeFlow } from "../../shared/engine/wake/wakeFlow";
import { nodesOf, unfolded, unwrap } from "../flow/sections";
import { halfCircle } from "./halfCircle";

function resting(nodes: SectionNodes, incidence: number) {
  const flow = unwrap(sectionFlow(nodes, incidence, 0));
  const contact = flow.floor?.contact;
  if (!contact) throw new Error("no contact");
  return { flow, contact };
}

/** Position on the upper side of a section at an angle from the front about (x, y). */
function positionAtAngle(nodes: SectionNodes, angle: number, [x, y]: readonly [number, number]): number {
  for (let i = nodes.count - 1; i > 0; i--) {
    if (Math.atan2(nodes.y[i] - y, x - nodes.x[i]) >= angle && nodes.y[i] > y) return i;
  }
  throw new RangeError(`no node at ${angle}`);
}

describe("restingWake", () => {
  it("of a half circle on the floor is half the wake of a free circle: k 1.2 to 1.5, drag, widths and speed within 3 %", () => {
    const nodes = halfCircle(320);
    const { flow, contact } = resting(nodes, 0);
    const circleNodes = nodesOf({ family: "circle", diameter: 1 }, 240);
    const circle = unwrap(sectionFlow(circleNodes, 0));
    const base: readonly [number, number] = [(Math.max(...nodes.x) + Math.min(...nodes.x)) / 2, Math.min(...nodes.y)];
    for (const degrees of [80, 100, 120]) {
      const upper = positionAtAngle(nodes, (degrees * Math.PI) / 180, base);
      const exactAngle = Math.atan2(nodes.y[upper] - base[1], base[0] - nodes.x[upper]);
      const lower = positionAtArc(circleNodes, exactAngle / 2);
      const half = unwrap(restingWake(flow, contact, upper));
      const whole = unwrap(wakeFlow(circle, lower, 240 - lower));
      const size = flow.referenceWidth / 0.5;
      expect((half.separationWidth * size) / whole.separationWidth).toBeCloseTo(1, 1);
      for (const k of [1.2, 1.35, 1.5]) {
        const width = (wake: WakeFlow) => wake.wakeWidth[0] + k * wake.wakeWidth[1];
        expect(Math.abs((width(half) * size) / width(whole) - 1)).toBeLessThan(0.03);
        const drag = quadraticAt(half.pressureDrag, k) * size;
        expect(Math.abs(drag - quadraticAt(whole.pressureDrag, k))).toBeLessThan(0.03);
        const speed = interpolateAtPosition(surfaceVelocity(half, k), (upper + nodes.count) / 2);
        const top = interpolateAtPosition(
          surfaceVelocity(whole, k),
          positionAtArc(circleNodes, circleNodes.perimeter - angleAt(nodes, (upper + nodes.count) / 2, base) / 2),
        );
        expect(Math.abs(speed - top)).toBeLessThan(0.03);
      }
    }
  });

  it("no water passes beneath: floor, section front and upper side are one streamline; speed k at separation", () => {
    const nodes = unfolded(nodesOf({ family: "circle", diameter: 1 }, 160));
    const { flow, contact } = resting(nodes, 0);
    const wake = unwrap(restingWake(flow, contact, 112.3));
    const k = 1.3;
    const velocity = surfaceVelocity(wake, k);
    expect(interpolateAtPosition(velocity, 112.3)).toBeCloseTo(-k, 11);
    const psi = streamFunction(nodes, seen(flow, wake, k), Float64Array.of(-0.2, 0.1, -5, flow.floor?.level ?? 0));
    expect(Math.abs(psi[0] - psi[1])).toBeLessThan(1e-6);
  });

  it("its outflow is found far downstream, between floor and water, as the wake's width", () => {
    const nodes = unfolded(nodesOf({ family: "roundedRectangle", length: 2, height: 1, edgeRadius: 0.2 }, 200));
    for (const incidence of [0, 0.2]) {
      const { flow, contact } = resting(nodes, incidence);
      const wake = unwrap(restingWake(flow, contact, 150));
      const k = 1.25;
      const floor = flow.floor;
      if (floor === null) throw new Error("no floor");
      const radius = 400;
      let through = 0;
      const steps = 400;
      const [footX, footY] = mirrored(floor, flow.nodes.centroid[0], flow.nodes.centroid[1]).map(
        (image, i) => (image + flow.nodes.centroid[i]) / 2,
      );
      for (let i = 0; i < steps; i++) {
        const angle = ((i + 0.5) / steps) * Math.PI;
        const normalX = Math.cos(angle) * floor.upY + Math.sin(angle) * floor.upX;
        const normalY = -Math.cos(angle) * floor.upX + Math.sin(angle) * floor.upY;
        const at = Float64Array.of(footX + radius * normalX, footY + radius * normalY);
        const [u, v] = fieldVelocity(flow.nodes, seen(flow, wake, k), at);
        // The stream itself brings in as much as it takes out.
        through +=
          ((u - Math.cos(incidence)) * normalX + (v - Math.sin(incidence)) * normalY) * radius * (Math.PI / steps);
      }
      const width = wake.wakeWidth[0] + k * wake.wakeWidth[1];
      expect(through / flow.referenceWidth / width).toBeCloseTo(1, 4);
    }
  });
});

function angleAt(nodes: SectionNodes, position: number, [x, y]: readonly [number, number]): number {
  return Math.atan2(interpolateAtPosition(nodes.y, position) - y, x - interpolateAtPosition(nodes.x, position));
}

function seen(flow: SectionFlow, wake: WakeFlow, k: number) {
  const amplitude = wake.amplitude[0] + k * wake.amplitude[1];
  return {
    surfaceVelocity: surfaceVelocity(wake, k),
    outflow: wake.outflow.map((strength, i) => (amplitude * strength) / flow.nodes.ds[i]),
    incidence: flow.incidence,
    floor: flow.floor,
  };
}

describe("outflowStrengths(nodes, lower, upper, 1/2)", () => {
  it("are the upper half of the symmetric base's", () => {
    const nodes = nodesOf({ family: "circle", diameter: 1 }, 160);
    const whole = outflowStrengths(nodes, 50.3, 109.7);
    const half = outflowStrengths(nodes, 80, 109.7, 0.5);
    for (let i = 81; i < 112; i++) expect(half[i]).toBeCloseTo(whole[i], 14);
    expect(half[80]).toBeCloseTo(whole[80] / 2, 14);
  });
});

describe("wakeFlow above a floor with a gap", () => {
  it("has speed k on both separation points, and far above it the wake of the open stream", () => {
    const nodes = unfolded(nodesOf({ family: "circle", diameter: 1 }, 160));
    const open = unwrap(wakeFlow(unwrap(sectionFlow(nodes, 0)), 40.3, 115.2));
    for (const gap of [0.05, 0.5, 1e5]) {
      const wake = unwrap(wakeFlow(unwrap(sectionFlow(nodes, 0, gap)), 40.3, 115.2));
      const velocity = surfaceVelocity(wake, 1.4);
      expect(interpolateAtPosition(velocity, 40.3)).toBeCloseTo(1.4, 11);
      expect(interpolateAtPosition(velocity, 115.2)).toBeCloseTo(-1.4, 11);
      const change = Math.abs(quadraticAt(wake.pressureDrag, 1.4) - quadraticAt(open.pressureDrag, 1.4));
      if (gap > 1e4) expect(change).toBeLessThan(1e-5);
      else expect(change).toBeGreaterThan(1e-3);
    }
  });
});
