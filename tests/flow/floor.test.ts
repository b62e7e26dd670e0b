import { Matrix, solve } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { fieldVelocity, type SurfaceFlow, streamFunction } from "../../shared/engine/flow/fieldVelocity";
import { mirrored } from "../../shared/engine/flow/floorImage";
import { SMALLEST_GAP_RATIO } from "../../shared/engine/flow/floorPlane";
import { type SectionFlow, sectionFlow, sourceVelocity } from "../../shared/engine/flow/sectionFlow";
import type { SectionNodes } from "../../shared/engine/geometry/sectionNodes";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { moveNodes, rotateNodes } from "../geometry/nodeTransforms";
import { largestDifference, nodesOf, unfolded, unwrap } from "./sections";

const circleOf = (panels: number) => unfolded(nodesOf({ family: "circle", diameter: 2 }, panels));
const puckProfile: SectionSpec = { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.006 };

type Complex = readonly [number, number];
const times = ([a, b]: Complex, [c, d]: Complex): Complex => [a * c - b * d, a * d + b * c];
const inverse = ([a, b]: Complex): Complex => [a / (a * a + b * b), -b / (a * a + b * b)];

/** Counter-clockwise surface velocity of a complex velocity u - i v at a node. */
function alongTangent(nodes: SectionNodes, i: number, [u, minusV]: Complex): number {
  return u * nodes.tangentX[i] - minusV * nodes.tangentY[i];
}

/**
 * Circle of radius 1 about (0, 0) over a wall at y = -height, no circulation, by successive images (Milne-Thomson,
 * Theoretical Hydrodynamics, circle theorem and images in a plane; from memory): doublets mu_n at depth a_n inside the
 * circle and their mirror images, mu_0 = 1, a_0 = 0, a_(n+1) = 1 / (2 height - a_n), mu_(n+1) = mu_n a_(n+1)^2.
 */
function byImages(nodes: SectionNodes, height: number): Float64Array {
  return nodes.x.map((x, i) => {
    let velocity: Complex = [1, 0];
    let moment = 1;
    let depth = 0;
    for (let n = 0; n < 400 && moment > 1e-18; n++) {
      for (const y of [-depth, depth - 2 * height]) {
        const reciprocal = inverse([x, nodes.y[i] - y]);
        const square = times(reciprocal, reciprocal);
        velocity = [velocity[0] - moment * square[0], velocity[1] - moment * square[1]];
      }
      depth = 1 / (2 * height - depth);
      moment *= depth * depth;
    }
    return alongTangent(nodes, i, velocity);
  });
}

describe("circle over a plane floor", () => {
  for (const [gap, panels, tolerance] of [
    [2, 60, 1e-11],
    [0.5, 80, 1e-9],
    [0.1, 160, 1e-7],
    [SMALLEST_GAP_RATIO, 240, 1e-5],
  ]) {
    it(`gap / D ${gap}, ${panels} nodes: surface speed of the successive images, within ${tolerance}`, () => {
      const nodes = circleOf(panels);
      const flow = unwrap(sectionFlow(nodes, 0, gap));
      expect(largestDifference(flow.streamVelocity, byImages(nodes, 1 + 2 * gap))).toBeLessThan(tolerance);
    });

    it(`gap / D ${gap}, ${panels} nodes: a circulation is a vortex at the limiting point of bipolar coordinates, within ${tolerance}`, () => {
      // Lamb (1932), Hydrodynamics, art. 64: the circle is a streamline of a vortex pair at +-sqrt(height^2 - R^2).
      const nodes = circleOf(panels);
      const height = 1 + 2 * gap;
      const pole = Math.sqrt(height * height - 1);
      const flow = unwrap(sectionFlow(nodes, 0, gap));
      const exact = nodes.x.map((x, i) => {
        const own = inverse([x, nodes.y[i] + height - pole]);
        const image = inverse([x, nodes.y[i] + height + pole]);
        // u - i v = -i / (2 pi) (1/z_own - 1/z_image)
        return alongTangent(nodes, i, [(own[1] - image[1]) / (2 * Math.PI), -(own[0] - image[0]) / (2 * Math.PI)]);
      });
      expect(largestDifference(flow.circulationVelocity ?? [], exact)).toBeLessThan(tolerance);
    });
  }

  for (const [centreX, centreY] of [
    [0, 0],
    [0.4, 1.3],
  ]) {
    it(`lying on it about (${centreX}, ${centreY}), no flow beneath: pi^2 / (z^2 sinh^2(pi / z)), 2.467 on top (Milne-Thomson, circle touching a plane; from memory), within 0.3 %`, () => {
      const nodes = moveNodes(circleOf(160), centreX, centreY);
      const flow = unwrap(sectionFlow(nodes, 0, 0));
      const { stream, circulation } = flow.beneath ?? { stream: Number.NaN, circulation: Number.NaN };
      const gamma = -stream / circulation;
      const velocity = flow.streamVelocity.map((v, i) => v + gamma * (flow.circulationVelocity?.[i] ?? Number.NaN));
      const exact = nodes.x.map((nodeX, i) => {
        const x = nodeX - centreX;
        const y = nodes.y[i] - centreY + 1;
        if (Math.hypot(x, y) < 0.2) return 0;
        const [a, b] = inverse([x, y]).map((part) => Math.PI * part);
        const sinh: Complex = [Math.sinh(a) * Math.cos(b), Math.cosh(a) * Math.sin(b)];
        const root = inverse(times([x, y], sinh));
        const [re, im] = times(root, root);
        return alongTangent(nodes, i, [Math.PI ** 2 * re, Math.PI ** 2 * im]);
      });
      expect(largestDifference(velocity, exact)).toBeLessThan(0.003 * 2.467);
      expect(Math.max(...velocity.map(Math.abs))).toBeGreaterThan(0.997 * (Math.PI ** 2 / 4));
    });
  }

  it("far above it recovers the unbounded flow as the inverse square of the gap", () => {
    const nodes = circleOf(60);
    const open = unwrap(sectionFlow(nodes, 0.4));
    const off = [10, 100, 1e6].map((gap) =>
      largestDifference(unwrap(sectionFlow(nodes, 0.4, gap)).streamVelocity, open.streamVelocity),
    );
    expect(off[0] / off[1]).toBeGreaterThan(80);
    expect(off[2]).toBeLessThan(1e-11);
  });
});

/** A floor flow with circulation and an outflow, to be looked at from outside. */
function mixedFlow(flow: SectionFlow): SurfaceFlow {
  const { nodes } = flow;
  const strengths = nodes.ds.map((ds, i) => ds * Math.max(0, Math.sin((2 * Math.PI * i) / nodes.count - 0.5)) ** 2);
  const sourced = sourceVelocity(flow, strengths);
  return {
    surfaceVelocity: flow.streamVelocity.map((v, i) => v + sourced[i] - 0.02 * (flow.circulationVelocity?.[i] ?? 0)),
    outflow: strengths.map((strength, i) => strength / nodes.ds[i]),
    incidence: flow.incidence,
    floor: flow.floor,
  };
}

describe("the floor is a streamline", () => {
  for (const [gap, incidence] of [
    [0.02, 0],
    [0.3, 0.25],
    [1.7, -0.4],
  ]) {
    it(`at gap / D ${gap}, incidence ${incidence}: no velocity through it, stream function constant, both to 1e-12`, () => {
      const nodes = nodesOf(puckProfile, 160);
      const flow = unwrap(sectionFlow(nodes, incidence, gap));
      const { upX, upY, level } = flow.floor ?? { upX: 0, upY: 0, level: Number.NaN };
      const points = Float64Array.from({ length: 80 }, (_, i) => {
        const along = 0.02 * ((i >> 1) - 20);
        return i % 2 === 0 ? level * upX + along * upY : level * upY - along * upX;
      });
      const seen = mixedFlow(flow);
      const velocity = fieldVelocity(nodes, seen, points);
      const psi = streamFunction(nodes, seen, points);
      let slip = 0;
      for (let i = 0; i < 40; i++) {
        expect(Math.abs(velocity[2 * i] * upX + velocity[2 * i + 1] * upY)).toBeLessThan(1e-12);
        expect(Math.abs(psi[i] - level)).toBeLessThan(1e-12 * 0.08);
        slip = Math.max(slip, Math.abs(velocity[2 * i] * upY - velocity[2 * i + 1] * upX - 1));
      }
      expect(slip).toBeGreaterThan(0.01);
    });
  }

  it("and the stream function has the velocity as its derivatives off it", () => {
    const nodes = nodesOf(puckProfile, 160);
    const flow = unwrap(sectionFlow(nodes, 0.25, 0.3));
    const seen = mixedFlow(flow);
    const h = 1e-6;
    for (const [x, y] of [
      [-0.1, 0.01],
      [0.02, 0.05],
      [-0.05, -0.012],
    ]) {
      const [u, v] = fieldVelocity(nodes, seen, Float64Array.of(x, y));
      const psi = streamFunction(nodes, seen, Float64Array.of(x, y + h, x, y - h, x + h, y, x - h, y));
      expect((psi[0] - psi[1]) / (2 * h)).toBeCloseTo(u, 7);
      expect(-(psi[2] - psi[3]) / (2 * h)).toBeCloseTo(v, 7);
    }
  });
});

describe("a section and its floor", () => {
  /** Surface velocities of two bodies that are each other's image, with opposite circulation and equal sources, by a library. */
  function twoBodies(nodes: SectionNodes, flow: SectionFlow, circulation: number, strengths: Float64Array): number[] {
    const { count, x, y, tangentX, tangentY, ds, curvature, perimeter } = nodes;
    const floor = flow.floor;
    if (floor === null) throw new RangeError("no floor");
    const point = (i: number) => (i < count ? [x[i], y[i]] : mirrored(floor, x[i - count], y[i - count]));
    const tangent = (i: number) => {
      if (i < count) return [tangentX[i], tangentY[i]];
      // Walked the other way round, so that it stays counter-clockwise.
      const across = 2 * (tangentX[i - count] * floor.upX + tangentY[i - count] * floor.upY);
      return [across * floor.upX - tangentX[i - count], across * floor.upY - tangentY[i - count]];
    };
    const equations: number[][] = [];
    const right: number[][] = [];
    for (let m = 0; m < 2 * count; m++) {
      const row: number[] = [];
      const [px, py] = point(m);
      const [tx, ty] = tangent(m);
      let onset = Math.cos(flow.incidence) * tx + Math.sin(flow.incidence) * ty;
      for (let n = 0; n < 2 * count; n++) {
        const sameBody = m < count === n < count;
        const fill = sameBody ? 1 / perimeter : 0;
        const own = n % count;
        if (m === n) {
          row.push(-0.5 + (curvature[own] / (4 * Math.PI) + fill) * ds[own]);
          continue;
        }
        const [qx, qy] = point(n);
        const [dx, dy] = [px - qx, py - qy];
        const factor = 1 / (2 * Math.PI * (dx * dx + dy * dy));
        row.push(((dx * ty - dy * tx) * factor + fill) * ds[own]);
        const weight = sameBody ? ((m + n) % 2 === 0 ? 0 : 2) : 1;
        onset += weight * strengths[own] * (dx * tx + dy * ty) * factor;
      }
      equations.push(row);
      right.push([-onset + ((m < count ? 1 : -1) * circulation) / perimeter]);
    }
    return solve(new Matrix(equations), new Matrix(right)).to1DArray();
  }

  it("are one of two bodies that mirror each other: stream, circulation and sources, inclined, within 1e-10", () => {
    const nodes = unfolded(nodesOf({ family: "ellipse", length: 1, height: 0.6 }, 80));
    const flow = unwrap(sectionFlow(nodes, 0.3, 0.5));
    const strengths = nodes.ds.map((ds, i) => (i > 25 && i < 55 ? ds * Math.sin((Math.PI * (i - 25)) / 30) ** 2 : 0));
    const both = twoBodies(nodes, flow, 0.4, strengths);
    const sourced = sourceVelocity(flow, strengths);
    const single = flow.streamVelocity.map((v, i) => v + sourced[i] + 0.4 * (flow.circulationVelocity?.[i] ?? 0));
    expect(largestDifference(single, both.slice(0, 80))).toBeLessThan(1e-10);
    const mirror = both.slice(80).map((v) => -v);
    expect(largestDifference(single, mirror)).toBeLessThan(1e-10);
  });

  it("turn together with the stream, within 1e-11", () => {
    const nodes = unfolded(nodesOf(puckProfile, 100));
    const level = unwrap(sectionFlow(nodes, 0.1, 0.2));
    const turned = unwrap(sectionFlow(rotateNodes(nodes, 0.5), 0.6, 0.2));
    expect(largestDifference(turned.streamVelocity, level.streamVelocity)).toBeLessThan(1e-11);
  });

  it("with a flat face a smallest gap above the floor: nodes doubled change the speed by less than 2 % RMS", () => {
    for (const gap of [SMALLEST_GAP_RATIO, 0.1]) {
      const [coarse, fine] = [120, 240].map((panels) => unwrap(sectionFlow(nodesOf(puckProfile, panels), 0, gap)));
      let sum = 0;
      for (let i = 0; i < 120; i++) {
        const { ds, perimeter } = coarse.nodes;
        sum += (ds[i] / perimeter) * (coarse.streamVelocity[i] - fine.streamVelocity[2 * i]) ** 2;
      }
      expect(Math.sqrt(sum)).toBeLessThan(0.02);
    }
  });

  it("gaps that are negative, not numbers, or above 0 and below 0.02 D are refused with the reason", () => {
    const nodes = circleOf(40);
    for (const gap of [-0.1, Number.NaN, 0.01, Number.POSITIVE_INFINITY]) {
      const refused = sectionFlow(nodes, 0, gap);
      expect(refused.ok).toBe(false);
      if (!refused.ok) expect(refused.problem.message).toMatch(/0 \(lying on the floor\) or at least 0.02/);
    }
  });
});
