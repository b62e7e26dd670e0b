import { describe, expect, it } from "vitest";
import { laminarLayer, marchLaminar } from "../../shared/engine/layer/laminarLayer";
import { similarClosure } from "../../shared/engine/layer/similarLayers";
import { blasiusPlate, similarLayers } from "../published/falkner-skan-1931";
import { hiemenzSeparationDegrees, hiemenzSpeedRatio, hiemenzStations } from "../published/hiemenz-1911";
import { howarthSeparation, howarthStations } from "../published/howarth-1938";
import { sineSeparationDegrees, sineStations } from "../published/terrill-1960";
import { valueAt } from "./plateStations";

const degree = Math.PI / 180;

/** An edge speed at equal steps of x from 0 to `end`, with its slope by central differences. */
function edge(speedAt: (x: number) => number, end: number, count = 2001) {
  const x = Float64Array.from({ length: count }, (_, i) => (i * end) / (count - 1));
  const step = x[1] / 8;
  return { x, speed: x.map(speedAt), gradient: x.map((at) => (speedAt(at + step) - speedAt(at - step)) / (2 * step)) };
}

/** Layer from a plane stagnation point at x = 0. */
function fromStagnation(speedAt: (x: number) => number, end: number, count?: number) {
  const { x, speed, gradient } = edge(speedAt, end, count);
  return { x, layer: laminarLayer(x, speed, gradient) };
}

/** Layer from a sharp leading edge at x = 0, Blasius's (1908) at the first station behind it. */
function fromLeadingEdge(speedAt: (x: number) => number, end: number) {
  const { x, speed, gradient } = edge(speedAt, end);
  const thickness = (blasiusPlate.momentumThickness ** 2 * x[1]) / speed[1];
  return { x, layer: marchLaminar(x, speed, gradient, 1, thickness, 1.5726) };
}

describe("laminar layer by the momentum and energy integrals: exact layers", () => {
  it("Blasius 1908 plate: theta and wall friction within 0.5 %, H within 0.3 % of 2.591, no separation", () => {
    const { x, layer } = fromLeadingEdge(() => 1, 1);
    for (const i of [50, 500, 2000]) {
      const theta = layer.thickness[i];
      expect(Math.abs(theta / Math.sqrt(x[i]) / blasiusPlate.momentumThickness - 1)).toBeLessThan(5e-3);
      // Cf sqrt(Re_x) = 2 S / (theta sqrt(Re)) * sqrt(x)
      const friction = ((2 * layer.shear[i]) / theta) * Math.sqrt(x[i]);
      expect(Math.abs(friction / blasiusPlate.friction - 1)).toBeLessThan(5e-3);
      expect(Math.abs(layer.shapeFactor[i] / 2.5911 - 1)).toBeLessThan(3e-3);
    }
    expect(layer.separation).toBe(Number.POSITIVE_INFINITY);
  });

  it("Hiemenz 1911 stagnation flow: theta^2 (dUe/ds) / nu = 0.0855, H = 2.216 and S = 0.360 all along, within 0.5 %", () => {
    const { layer } = fromStagnation((x) => 2 * x, 1);
    for (const i of [0, 1, 10, 500, 2000]) {
      expect(Math.abs((2 * layer.thickness[i] ** 2) / 0.08546 - 1)).toBeLessThan(5e-3);
      expect(Math.abs(layer.shapeFactor[i] / 2.2162 - 1)).toBeLessThan(5e-3);
      expect(Math.abs(layer.shear[i] / 0.36034 - 1)).toBeLessThan(5e-3);
    }
  });

  it("Falkner & Skan 1931: H and S at every energy shape factor of the table, within 0.5 % and 0.002", () => {
    const out = new Float64Array(3);
    for (const { energyShapeFactor, shapeFactor, shearParameter } of similarLayers) {
      similarClosure(energyShapeFactor, out);
      expect(Math.abs(out[0] / shapeFactor - 1)).toBeLessThan(5e-3);
      expect(Math.abs(out[1] - shearParameter)).toBeLessThan(2e-3);
    }
  });

  it("closes outside the table of similar layers as at its ends, without a jump there", () => {
    const closed = (energyShape: number) => {
      const out = new Float64Array(3);
      similarClosure(energyShape, out);
      return [...out];
    };
    for (const [end, inside, outside] of [
      [1.6375, 1.6375 - 1e-9, 1.7],
      [1.515, 1.515 + 1e-12, 1.4],
    ]) {
      closed(end).forEach((value, i) => {
        expect(Math.abs(value - closed(inside)[i])).toBeLessThan(1e-4);
      });
      expect(closed(outside)).toEqual(closed(end));
    }
  });

  it("Howarth 1938: theta within 1 %, H within 4 % at every station before x/L = 0.11", () => {
    const { x, layer } = fromLeadingEdge((at) => 1 - at, 0.125);
    for (const station of howarthStations) {
      expect(Math.abs(valueAt(station.x, x, layer.thickness) / station.momentumThickness - 1)).toBeLessThan(0.01);
      if (station.x > 0.11) continue;
      expect(Math.abs(valueAt(station.x, x, layer.shapeFactor) / station.shapeFactor - 1)).toBeLessThan(0.04);
    }
  });

  it("Terrill 1960, U = 2 sin: theta within 1.5 %, H within 3 % at every station up to 100 degrees", () => {
    const { x, layer } = fromStagnation((at) => 2 * Math.sin(at), 110 * degree);
    for (const station of sineStations) {
      const at = station.degrees * degree;
      expect(Math.abs(valueAt(at, x, layer.thickness) / station.momentumThickness - 1)).toBeLessThan(0.015);
      if (station.degrees > 100) continue;
      expect(Math.abs(valueAt(at, x, layer.shapeFactor) / station.shapeFactor - 1)).toBeLessThan(0.03);
    }
  });

  it("Hiemenz 1911 fit: theta within 1.5 % at every station, H within 3 % up to 75 degrees", () => {
    const { x, layer } = fromStagnation(hiemenzSpeedRatio, 85 * degree);
    for (const station of hiemenzStations) {
      const at = station.degrees * degree;
      expect(Math.abs(valueAt(at, x, layer.thickness) / station.momentumThickness - 1)).toBeLessThan(0.015);
      if (station.degrees > 75) continue;
      expect(Math.abs(valueAt(at, x, layer.shapeFactor) / station.shapeFactor - 1)).toBeLessThan(0.03);
    }
  });
});

describe("laminar layer by the momentum and energy integrals: separation", () => {
  const separationOf = ({ x, layer }: ReturnType<typeof fromStagnation>) => {
    const cell = Math.floor(layer.separation);
    return x[cell] + (layer.separation - cell) * (x[cell + 1] - x[cell]);
  };

  it("Howarth 1938: x/L within 1.5 % of the exact 0.1199", () => {
    const found = separationOf(fromLeadingEdge((x) => 1 - x, 0.13));
    expect(Math.abs(found / howarthSeparation.exact - 1)).toBeLessThan(0.015);
  });

  it("Terrill 1960, U = 2 sin: within 1.5 degrees of the exact 104.5", () => {
    const found = separationOf(fromStagnation((x) => 2 * Math.sin(x), 110 * degree)) / degree;
    expect(Math.abs(found - sineSeparationDegrees.exact)).toBeLessThan(1.5);
  });

  it("Hiemenz 1911 fit: within 1.5 degrees of 80.0 (Jaffe & Smith 1972)", () => {
    const found = separationOf(fromStagnation(hiemenzSpeedRatio, 90 * degree)) / degree;
    expect(Math.abs(found - hiemenzSeparationDegrees.exact)).toBeLessThan(1.5);
  });

  it("does not depend on the stations: 60 in place of 2001 move it on 2 sin by less than 0.5 degrees", () => {
    const fine = separationOf(fromStagnation((x) => 2 * Math.sin(x), 110 * degree));
    const coarse = separationOf(fromStagnation((x) => 2 * Math.sin(x), 110 * degree, 60));
    expect(Math.abs(coarse - fine) / degree).toBeLessThan(0.5);
  });

  it("an attached end tells how far separation is ahead, the better the nearer it is", () => {
    const place = separationOf(fromStagnation((x) => 2 * Math.sin(x), 110 * degree)) / degree;
    for (const [end, tolerance] of [
      [103, 0.6],
      [100, 3],
    ]) {
      const { layer } = fromStagnation((x) => 2 * Math.sin(x), end * degree);
      expect(layer.separation).toBe(Number.POSITIVE_INFINITY);
      expect(Math.abs(end + layer.remainingArc / degree - place)).toBeLessThan(tolerance);
    }
  });

  it("throws on arrays of different or too short length, giving the numbers", () => {
    expect(() => laminarLayer(new Float64Array(3), new Float64Array(3), new Float64Array(2))).toThrow(RangeError);
    expect(() => laminarLayer(new Float64Array(2), new Float64Array(2), new Float64Array(2))).toThrow(/2 values/);
  });
});
