import { describe, expect, it } from "vitest";
import {
  fieldVelocity,
  type SurfaceFlow,
  streamFunction,
  traceStreamline,
} from "../../shared/engine/flow/fieldVelocity";
import { sectionFlow } from "../../shared/engine/flow/sectionFlow";
import { largestDifference, nodesOf, polarAngles, unfolded, unwrap } from "./sections";

const panels = 120;
const circle = unfolded(nodesOf({ family: "circle", diameter: 2 }, panels));
const incidence = 0.3;
const circulation = -1.7;
const solved = unwrap(sectionFlow(circle, incidence));
const flow: SurfaceFlow = {
  surfaceVelocity: solved.streamVelocity.map(
    (v, i) => v + circulation * (solved.circulationVelocity?.[i] ?? Number.NaN),
  ),
  outflow: new Float64Array(panels),
  incidence,
};

/** Circle of radius 1 in a unit stream with circulation: w = e^-ia - e^ia / z^2 - i Gamma / (2 pi z), velocity u - i v. */
function circleVelocity(x: number, y: number): [number, number] {
  const r2 = x * x + y * y;
  const cosine = Math.cos(incidence);
  const sine = Math.sin(incidence);
  // 1/z^2 = (x - i y)^2 / r^4
  const re = (x * x - y * y) / (r2 * r2);
  const im = (-2 * x * y) / (r2 * r2);
  const u = cosine - (cosine * re - sine * im) - (circulation * y) / (2 * Math.PI * r2);
  const minusV = -sine - (cosine * im + sine * re) - (circulation * x) / (2 * Math.PI * r2);
  return [u, -minusV];
}

const points = Float64Array.of(-3, 0, 0, 2.2, 1.3, -1.1, 4, 3, -1.4, 0.6, 0.1, -1.5);

describe("fieldVelocity", () => {
  it("gives the closed form around a circle at incidence with circulation, to 1e-10 from a third of the radius off", () => {
    const velocity = fieldVelocity(circle, flow, points);
    for (let i = 0; i < points.length; i += 2) {
      const exact = circleVelocity(points[i], points[i + 1]);
      expect(velocity[i]).toBeCloseTo(exact[0], 10);
      expect(velocity[i + 1]).toBeCloseTo(exact[1], 10);
    }
  });

  it("vanishes inside the section, where the vortex sheet cancels the stream", () => {
    const inside = fieldVelocity(circle, flow, Float64Array.of(0, 0, 0.4, -0.3));
    expect(largestDifference(inside, new Float64Array(4))).toBeLessThan(1e-10);
  });

  it("of a uniform outflow is that of a source at the centre, 2 pi R v / (2 pi r)", () => {
    const outflow = new Float64Array(panels).fill(0.5);
    const source: SurfaceFlow = { surfaceVelocity: new Float64Array(panels), outflow, incidence: 0 };
    const velocity = fieldVelocity(circle, source, Float64Array.of(3, 0, 0, -2));
    expect(largestDifference(velocity, [1 + 0.5 / 3, 0, 1, -0.25])).toBeLessThan(1e-12);
  });
});

describe("streamFunction", () => {
  it("has the velocity as its derivatives: u = d psi/dy, v = -d psi/dx", () => {
    const outflow = polarAngles(circle).map((phi) => Math.max(0, Math.cos(phi)) ** 2);
    const wake: SurfaceFlow = { ...flow, outflow };
    const step = 1e-4;
    for (let i = 0; i < points.length; i += 2) {
      const [x, y] = [points[i], points[i + 1]];
      const psi = streamFunction(circle, wake, Float64Array.of(x, y + step, x, y - step, x + step, y, x - step, y));
      const velocity = fieldVelocity(circle, wake, Float64Array.of(x, y));
      expect((psi[0] - psi[1]) / (2 * step)).toBeCloseTo(velocity[0], 6);
      expect(-(psi[2] - psi[3]) / (2 * step)).toBeCloseTo(velocity[1], 6);
    }
  });

  it("gives the closed form around the circle, (r - 1/r) sin(angle - incidence) - Gamma ln(r) / (2 pi), to 1e-10", () => {
    const psi = streamFunction(circle, flow, points);
    for (let i = 0; i < psi.length; i++) {
      const r = Math.hypot(points[2 * i], points[2 * i + 1]);
      const angle = Math.atan2(points[2 * i + 1], points[2 * i]);
      const exact = (r - 1 / r) * Math.sin(angle - incidence) - (circulation * Math.log(r)) / (2 * Math.PI);
      expect(psi[i]).toBeCloseTo(exact, 10);
    }
  });

  it("counts the flow between two points far apart across the stream: their distance less the half of Q that is emitted upstream", () => {
    const outflow = polarAngles(circle).map((phi) => Math.max(0, Math.cos(phi)) ** 2);
    const source: SurfaceFlow = { surfaceVelocity: new Float64Array(panels), outflow, incidence: 0 };
    const total = outflow.reduce((sum, v, i) => sum + v * circle.ds[i], 0);
    const psi = streamFunction(circle, source, Float64Array.of(0.5, 1e4, 0.5, -1e4));
    expect((psi[0] - psi[1] - 2e4) / total).toBeCloseTo(-0.5, 3);
  });
});

describe("traceStreamline", () => {
  it("keeps the stream function to 1e-6 on its way around the circle, and ends at the box", () => {
    const line = traceStreamline(circle, flow, [-4, 0.9], [-5, -5, 5, 5], 0.05, 1000);
    const psi = streamFunction(circle, flow, line);
    expect(Math.max(...psi) - Math.min(...psi)).toBeLessThan(1e-6);
    expect(line[line.length - 2]).toBeGreaterThan(4.9);
  });

  it("ends at each side of the box, whose edge belongs to it: a straight stream from the middle at steps of 1/2", () => {
    const none = new Float64Array(panels);
    for (const [incidence, x, y] of [
      [0, 1, 0],
      [Math.PI / 2, 0, 1],
      [Math.PI, -1, 0],
      [-Math.PI / 2, 0, -1],
    ]) {
      const stream: SurfaceFlow = { surfaceVelocity: none, outflow: none, incidence };
      const line = traceStreamline(circle, stream, [0, 0], [-2, -3, 4, 5], 0.5, 1000);
      const room = x > 0 ? 4 : y > 0 ? 5 : x < 0 ? 2 : 3;
      expect(line.length).toBe(2 * (1 + 2 * room));
      expect(line[line.length - 2]).toBeCloseTo(room * x, 12);
      expect(line[line.length - 1]).toBeCloseTo(room * y, 12);
    }
  });

  it("stops after the number of steps allowed", () => {
    expect(traceStreamline(circle, flow, [-4, 0.9], [-5, -5, 5, 5], 0.05, 7).length).toBe(16);
  });
});
