import { describe, expect, it } from "vitest";
import { CALIBRATED } from "../../shared/engine/constants/calibrated";
import { abuGhannamShawTransition } from "../../shared/engine/layer/abuGhannamShaw";
import { laminarLayer } from "../../shared/engine/layer/laminarLayer";
import { stationValue } from "../../shared/engine/layer/sideStations";
import { attachedTransition } from "../../shared/engine/layer/transition";
import { circleStations, edgeStations } from "./edgeStations";
import { plateStations } from "./plateStations";

describe("abuGhannamShawTransition under a pressure gradient", () => {
  it("Tu 1 %: 408 at lambda -0.05 and 562 at +0.05, worked out by hand from the formula", () => {
    // F = 6.91 - 0.6375 + 0.1591 = 6.4316; 163 + exp(6.4316 - 0.9308) = 163 + 244.9.
    expect(Math.abs(abuGhannamShawTransition(-0.05, 0.01) - 407.9)).toBeLessThan(0.5);
    // F = 6.91 + 0.124 - 0.0307 = 7.0033; 163 + exp(7.0033 - 1.0135) = 163 + 399.3.
    expect(Math.abs(abuGhannamShawTransition(0.05, 0.01) - 562.3)).toBeLessThan(0.5);
  });
});

describe("attachedTransition by roughness on a plate", () => {
  const reynolds = 1e6;
  const find = (ks: number) =>
    attachedTransition(
      plateStations(4001),
      { reynolds, sandGrainRoughnessRatio: ks, turbulenceIntensity: 0.001 },
      [],
      CALIBRATED,
    );

  it("stands where Blasius's Re_theta reaches the criterion Re_theta = c (ks / theta)^(-1/3), solved by hand, within 1 %", () => {
    for (const ks of [1e-4, 3e-4]) {
      // Re theta = c (theta / ks)^(1/3), so theta = (c / Re)^(3/2) ks^(-1/2), and theta = 0.664 sqrt(x / Re).
      const theta = (CALIBRATED.roughTransition / reynolds) ** 1.5 / Math.sqrt(ks);
      const x = (theta / 0.664) ** 2 * reynolds;
      const found = find(ks);
      expect(found?.cause).toBe("roughness");
      expect(Math.abs((found?.station ?? 0) / 4000 / x - 1)).toBeLessThan(0.01);
    }
  });

  it("does nothing below the roughness Reynolds number of a smooth wall and acts above it", () => {
    const limit = CALIBRATED.smoothWallLimit / reynolds;
    expect(find(0.99 * limit)).toBeNull();
    expect(find(1.01 * limit)?.cause).toBe("roughness");
  });
});

describe("attachedTransition in the step in which the layer separates", () => {
  it("takes the thickness as growing to that of separation, not to the next station's", () => {
    const plate = plateStations(21);
    // theta sqrt(Re) is 0.1 (i + 1) at station i, and 1.5 where the layer leaves at 10.4: 1.3 half way from station 10.
    const thickness = plate.laminar.thickness.map((_, i) => 0.1 * (i + 1));
    const laminar = { ...plate.laminar, thickness, separation: 10.4, separationThickness: 1.5 };
    const reynolds = 1e6;
    const found = attachedTransition(
      { ...plate, laminar },
      { reynolds, sandGrainRoughnessRatio: 0, turbulenceIntensity: 0.001 },
      [],
      CALIBRATED,
      () => 1.3 * Math.sqrt(reynolds),
    );
    expect(found?.station).toBeCloseTo(10.2, 3);
  });
});

describe("attachedTransition where the speed changes", () => {
  const arcOf = (count: number) => {
    const stations = circleStations(140, count);
    const condition = { reynolds: 1e6, sandGrainRoughnessRatio: 0, turbulenceIntensity: 0.03 };
    const found = attachedTransition(stations, condition, [], CALIBRATED);
    return stationValue(stations.arc, found?.station ?? Number.NaN);
  };

  it("does not depend on where the stations stand: within 1e-3 of D from 141 to 1401 of them", () => {
    for (const count of [141, 150, 167, 701]) expect(Math.abs(arcOf(count) - arcOf(1401))).toBeLessThan(1e-3);
  });

  it("Re_theta there is that of the criterion for the local lambda and the intensity on the local edge speed", () => {
    const stations = circleStations(140, 1401);
    const arc = arcOf(1401);
    const theta = stationValue(stations.laminar.thickness, (arc * 1400) / stations.arc[1400]) / 1e3;
    const Ue = 2 * Math.sin(2 * arc);
    const lambda = theta * theta * 4 * Math.cos(2 * arc) * 1e6;
    expect((Ue * theta * 1e6) / abuGhannamShawTransition(lambda, 0.03 / Ue)).toBeCloseTo(1, 3);
  });
});

describe("laminarLayer over a dip", () => {
  const at = (s: number) =>
    Math.tanh(3 * s) * (1 + 0.6 * Math.max(0, s - 0.9)) - 0.12 * Math.exp(-(((s - 1) / 0.12) ** 2));
  const slope = (s: number) => (at(s + 1e-6) - at(Math.max(0, s - 1e-6))) / (s > 0 ? 2e-6 : 1e-6);
  const over = (count: number) => {
    const { arc, speed, gradient } = edgeStations(at, slope, 1.6, 2, count);
    return { arc, speed, layer: laminarLayer(arc, speed, gradient) };
  };

  it("the dip ends where the edge speed is that of its start, to 1e-9", () => {
    const { speed, layer } = over(801);
    const [dip] = layer.dips;
    expect(stationValue(speed, dip.recovery)).toBeCloseTo(stationValue(speed, dip.separation), 9);
  });

  it("all stations in it have the thickness of its start, and the first behind it a layer that begins to grow again", () => {
    const { layer } = over(801);
    const [dip] = layer.dips;
    const first = Math.ceil(dip.recovery);
    for (let i = Math.ceil(dip.separation); i <= first; i++) expect(layer.thickness[i]).toBeCloseTo(dip.thickness, 9);
    expect(layer.shapeFactor[first + 1]).toBeLessThan(2.7);
    expect(layer.thickness[first + 40]).not.toBeCloseTo(dip.thickness, 6);
  });

  it("its start does not depend on the stations, within 2e-3 of D", () => {
    const startOf = (count: number) => {
      const { arc, layer } = over(count);
      return stationValue(arc, layer.dips[0].separation);
    };
    for (const count of [301, 555, 800]) expect(Math.abs(startOf(count) - startOf(3201))).toBeLessThan(2e-3);
  });
});
