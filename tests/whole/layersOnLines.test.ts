import { describe, expect, test } from "vitest";
import { laminarLayer } from "../../shared/engine/layer/laminarLayer";
import { stagnationLayer } from "../../shared/engine/layer/similarLayers";
import { lineStations } from "../../shared/engine/whole/lineStations";
import { surfaceField } from "../../shared/engine/whole/surfaceField";
import { type SurfaceLine, stagnationDirection, surfaceLines } from "../../shared/engine/whole/surfaceLines";
import { streamPotential } from "../../shared/engine/whole/wholeFlow";
import { solved, spheroid } from "./bodies";

const degrees = 180 / Math.PI;

/** theta sqrt(a / nu) of f''' + 2 f f'' + 1 - f'^2 = 0 by Runge-Kutta from the wall. */
function homannThickness(): number {
  const slope = ([f, g, h]: readonly number[]) => [g, h, -2 * f * h - 1 + g * g];
  const step = 1e-3;
  let y: number[] = [0, 0, 1.3119378];
  let thickness = 0;
  while (y[1] < 0.9999) {
    thickness += step * y[1] * (1 - y[1]);
    const k1 = slope(y);
    const k2 = slope(y.map((v, i) => v + (step / 2) * k1[i]));
    const k3 = slope(y.map((v, i) => v + (step / 2) * k2[i]));
    const k4 = slope(y.map((v, i) => v + step * k3[i]));
    y = y.map((v, i) => v + (step / 6) * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]));
  }
  return thickness;
}

/** Arc where theta^2 (dq/ds) / nu falls to -0.09: theta^2 = 0.45 nu h^-2 q^-6 times the integral of h^2 q^5 ds. */
function quadratureSeparation({ arc, speed, spacing, count }: SurfaceLine): number {
  const integrand = (i: number) => spacing[i] ** 2 * speed[i] ** 5;
  // From the stagnation point, where spacing and speed grow in proportion to the arc.
  let integral = (integrand(0) * arc[0]) / 8;
  for (let i = 1; i < count - 1; i++) {
    const step = arc[i] - arc[i - 1];
    integral += (step / 2) * (integrand(i - 1) + integrand(i));
    const lambda =
      ((0.45 * integral) / (spacing[i] ** 2 * speed[i] ** 6)) * ((speed[i + 1] - speed[i - 1]) / (2 * step));
    if (lambda < -0.09) return arc[i];
  }
  return Number.NaN;
}

describe("layers under spreading streamlines", () => {
  test("stagnation layers: plane 0.0855 (Hiemenz), on an axis Homann's (1936), solved here from f''(0) = 1.3119378", () => {
    expect(stagnationLayer(0).lambda).toBeCloseTo(0.0855, 3);
    expect(stagnationLayer(1).lambda / homannThickness() ** 2).toBeCloseTo(1, 2);
  });

  test("equal spacing is plane flow: the cylinder's laminar layer to rounding", () => {
    const count = 300;
    const arc = Float64Array.from({ length: count }, (_, i) => (2.2 * i) / count);
    const speed = arc.map((s) => 2 * Math.sin(s));
    const gradient = arc.map((s) => 2 * Math.cos(s));
    const plane = laminarLayer(arc, speed, gradient);
    const spaced = laminarLayer(arc, speed, gradient, new Float64Array(count).fill(3));
    expect(spaced.separation).toBeCloseTo(plane.separation, 3);
  });

  test("Mangler's transformation: spacing r along the axis gives theta r of the plane layer of the same speed", () => {
    // A cone-like flow away from the stagnation point: Ue = 1, r = s: plane arc s^3 / 3, Blasius 0.664 sqrt(x), theta sqrt(3) thinner.
    const count = 400;
    const arc = Float64Array.from({ length: count }, (_, i) => 1e-4 + (i / count) * 1.5);
    const speed = arc.map((s) => Math.min(1, s / arc[1]));
    const flat = new Float64Array(count);
    const layer = laminarLayer(
      arc,
      speed,
      flat.map((_, i) => (i === 0 ? 1 / arc[1] : 0)),
      arc,
    );
    const last = count - 1;
    expect(layer.thickness[last]).toBeCloseTo((0.664 / Math.sqrt(3)) * Math.sqrt(arc[last]), 2);
  });

  const sphereLines = (tilt: number) => {
    const { flow, shape } = solved(spheroid(1), { edgePanels: 3 });
    const field = surfaceField(flow.panels, streamPotential(flow, tilt));
    return surfaceLines(shape, field, stagnationDirection(shape, field, tilt), [0.01, 0.8, 1.5], 2.6);
  };

  test("sphere: Rott & Crabtree's quadrature on the lines separates at 103.6 degrees within 0.5 (Schlichting 1979: 103.6 to 105)", () => {
    for (const line of [...sphereLines(0), ...sphereLines(0.7)]) {
      expect(Math.abs(quadratureSeparation(line) * degrees - 103.6)).toBeLessThan(0.5);
    }
  });

  test("sphere: the engine's two-equation layer separates at 105 degrees within 1, as late as on the cylinder (104.5, Terrill 1960)", () => {
    for (const line of [...sphereLines(0), ...sphereLines(0.7)]) {
      const { laminar, arc } = lineStations(line, 2, 2.5);
      const at = Math.floor(laminar.separation);
      const separation = 2 * (arc[at] + (laminar.separation - at) * (arc[at + 1] - arc[at]));
      expect(Math.abs(separation * degrees - 105)).toBeLessThan(1);
    }
  });
});
