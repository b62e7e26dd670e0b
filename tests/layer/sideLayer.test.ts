import { describe, expect, it } from "vitest";
import { CALIBRATED } from "../../shared/engine/constants/calibrated";
import { followSide, laminarShearLayerLength } from "../../shared/engine/layer/sideLayer";
import { stationOfArc, stationValue } from "../../shared/engine/layer/sideStations";
import { circleStations, edgeStations } from "./edgeStations";

const smooth = (reynolds: number, turbulenceIntensity = 0.001) => ({
  reynolds,
  sandGrainRoughnessRatio: 0,
  turbulenceIntensity,
});

/** Roberts's (1980) length as a Reynolds number, q U l1 / nu; constants from memory. */
const roberts = (turbulence: number) => 2.5e4 * Math.log10(1 / Math.tanh(17.32 * turbulence));

/** What the turbulent layer starts with: arc, theta, H, Cf. */
function follow(stations: ReturnType<typeof circleStations>, condition: ReturnType<typeof smooth>) {
  const points: number[][] = [];
  const layer = followSide(stations, condition, [], CALIBRATED, (...point) => points.push(point));
  return { layer, points };
}

describe("followSide: a bubble behind laminar separation", () => {
  const reynolds = 3e5;
  const followed = () => {
    const stations = circleStations(150);
    const { layer, points } = follow(stations, smooth(reynolds));
    const separation = layer.bubble?.separationArc ?? Number.NaN;
    const reattachment = layer.bubble?.reattachmentArc ?? Number.NaN;
    return { stations, layer, points, separation, reattachment };
  };
  const speed = (arc: number) => 2 * Math.sin(2 * arc);

  it("separates at 104.5 degrees (Terrill 1960), within 1.5, and turns a length l1 behind it (Roberts 1980)", () => {
    const { layer, separation } = followed();
    expect(layer.state).toBe("separation bubble");
    expect(Math.abs((separation * 360) / Math.PI - 104.5)).toBeLessThan(1.5);
    const q = speed(separation);
    const expected = roberts(0.001) / (q * reynolds);
    // The intensity on the edge speed is below 0.1 %: the stream is quiet.
    expect((layer.transitionArc ?? 0) - separation).toBeCloseTo(expected, 6);
    expect(layer.transitionCause).toBe("separated shear layer");
  });

  it("the momentum thickness grows over the bubble as d theta/ds = -(H + 2) (theta / Ue) dUe/ds has it, with the H of vanishing wall shear, 4.03 (Hartree 1937), within 1 %", () => {
    const { stations, points, separation, reattachment } = followed();
    const thetaBefore = stations.laminar.separationThickness / Math.sqrt(reynolds);
    let theta = thetaBefore;
    const steps = 20000;
    const h = (reattachment - separation) / steps;
    for (let i = 0; i < steps; i++) {
      const s = separation + (i + 0.5) * h;
      theta -= h * (4.03 + 2) * (theta / speed(s)) * 4 * Math.cos(2 * s);
    }
    expect(theta / thetaBefore).toBeGreaterThan(1.2);
    expect(points[0][0]).toBeCloseTo(reattachment, 10);
    expect(Math.abs(points[0][1] / theta - 1)).toBeLessThan(0.01);
  });

  it("the turbulent layer behind it is followed to its separation, which the residual measures from the last station", () => {
    const { layer, points, reattachment } = followed();
    expect(layer.separationArc).toBeGreaterThan(reattachment);
    const end = (150 * Math.PI) / 360;
    expect(layer.separationArc).toBeLessThan(end);
    expect(layer.residual).toBeCloseTo(layer.separationArc - end, 12);
    expect(points[points.length - 1][0]).toBeCloseTo(layer.separationArc, 12);
    expect(points[points.length - 1][3]).toBeCloseTo(CALIBRATED.detachmentFriction, 12);
  });
});

describe("followSide: laminar separation for good", () => {
  it("at a low Reynolds number: the shear layer turns too late to come back, l1 above slope R / 2 with R = D/4", () => {
    const stations = circleStations(130);
    const { layer, points } = follow(stations, smooth(1e5));
    expect(layer.state).toBe("laminar separation");
    expect(layer.bubble).toBeNull();
    expect(points).toHaveLength(0);
    expect(layer.residual).toBeCloseTo(layer.separationArc - (130 * Math.PI) / 360, 12);
    const q = 2 * Math.sin(2 * layer.separationArc);
    expect((layer.transitionArc ?? 0) - layer.separationArc).toBeCloseTo(roberts(0.001) / (q * 1e5), 6);
  });

  it("changes to a bubble where Roberts's length falls to slope D / 8, to 1e-6 of the Reynolds number", () => {
    const stations = circleStations(130);
    const q = stationValue(stations.speed, stations.laminar.separation);
    const critical = roberts(0.001) / q / (CALIBRATED.reattachmentSlope / 8);
    expect(follow(stations, smooth(critical * (1 - 1e-6))).layer.state).toBe("laminar separation");
    expect(follow(stations, smooth(critical * (1 + 1e-6))).layer.state).toBe("separation bubble");
  });

  it("a layer that has not separated at the last station is attached, and says how far it would go on", () => {
    const { layer } = follow(circleStations(80), smooth(1e5));
    expect(layer.state).toBe("laminar separation");
    expect(layer.residual).toBeGreaterThan(0);
    expect(layer.separationArc).toBeCloseTo((80 * Math.PI) / 360, 12);
    expect(layer.transitionCause).toBeNull();
    expect(layer.transitionArc).toBeNull();
    // The sine flow separates at 104.5 degrees; a straight line from 95 points there within half and twice the way.
    const nearer = follow(circleStations(95), smooth(1e5)).layer.residual;
    expect(nearer).toBeGreaterThan((0.5 * 9.5 * Math.PI) / 360);
    expect(nearer).toBeLessThan((2 * 9.5 * Math.PI) / 360);
    expect(nearer).toBeLessThan(layer.residual);
  });

  it("a bubble that would end behind the last station leaves the layer attached there", () => {
    const stations = circleStations(107);
    const { layer, points } = follow(stations, smooth(6e5));
    expect(layer.state).toBe("separation bubble");
    expect(layer.residual).toBeGreaterThan(0);
    expect(layer.bubble?.reattachmentArc).toBeGreaterThan((107 * Math.PI) / 360);
    expect(points).toHaveLength(0);
  });
});

describe("followSide: transition in the attached layer", () => {
  const condition = { ...smooth(1e6), turbulenceIntensity: 0.03 };

  it("the turbulent layer starts there with the laminar layer's momentum thickness", () => {
    const stations = circleStations(140);
    const { layer, points } = follow(stations, condition);
    expect(layer.state).toBe("turbulent separation");
    expect(layer.transitionCause).toBe("natural");
    expect(layer.bubble).toBeNull();
    const [arc, theta] = points[0];
    expect(arc).toBe(layer.transitionArc);
    const laminar = stationValue(stations.laminar.thickness, stationOfArc(stations, arc)) / 1e3;
    expect(theta / laminar).toBeCloseTo(1, 9);
  });

  it("separates behind the laminar layer's 104.5 degrees and ahead of the rear, the residual being the way to the last station", () => {
    const { layer } = follow(circleStations(140), condition);
    const degrees = (layer.separationArc * 360) / Math.PI;
    expect(degrees).toBeGreaterThan(106);
    expect(degrees).toBeLessThan(140);
    expect(layer.residual).toBeCloseTo(layer.separationArc - (140 * Math.PI) / 360, 12);
  });
});

describe("followSide: a dip of the edge speed", () => {
  const depth = 0.12;
  const at = (s: number) =>
    Math.tanh(3 * s) * (1 + 0.6 * Math.max(0, s - 0.9)) - depth * Math.exp(-(((s - 1) / 0.12) ** 2));
  const slope = (s: number) => (at(s + 1e-6) - at(Math.max(0, s - 1e-6))) / (s > 0 ? 2e-6 : 1e-6);
  const dipped = () => {
    const stations = edgeStations(at, slope, 1.6, 2, 801);
    const [dip] = stations.laminar.dips;
    const separation = stationValue(stations.arc, dip.separation);
    const recovery = stationValue(stations.arc, dip.recovery);
    return { stations, dip, separation, recovery };
  };

  it("longer than the laminar part of its shear layer leaves a turbulent layer: a bubble from the dip's start to its end", () => {
    const { stations, dip, separation, recovery } = dipped();
    const reynolds = (2 * roberts(0.001)) / (at(separation) * (recovery - separation));
    // 0.05 % stays below 0.1 % on the edge speed here.
    const { layer, points } = follow(stations, smooth(reynolds, 0.0005));
    expect(layer.state).toBe("separation bubble");
    expect(layer.bubble?.separationArc).toBeCloseTo(separation, 12);
    expect(layer.bubble?.reattachmentArc).toBeCloseTo(recovery, 12);
    expect((layer.transitionArc ?? 0) - separation).toBeCloseTo((recovery - separation) / 2, 3);
    // Across the dip at constant pressure, so that theta is that at separation.
    expect(points[0][1] * Math.sqrt(reynolds)).toBeCloseTo(dip.thickness, 9);
  });

  it("shorter than it the layer stays laminar behind the dip", () => {
    const { stations, separation, recovery } = dipped();
    const reynolds = (0.5 * roberts(0.001)) / (at(separation) * (recovery - separation));
    expect(follow(stations, smooth(reynolds)).layer.bubble).toBeNull();
  });

  it("is not met by a layer that has turned before it, and is by one that turns behind it", () => {
    const { stations, separation, recovery } = dipped();
    const reynolds = (2 * roberts(0.001)) / (at(separation) * (recovery - separation));
    const trip = (arc: number) => ({ station: stationOfArc(stations, arc), heightRatio: 0.05 });
    const ahead = followSide(stations, smooth(reynolds), [trip(0.5)], CALIBRATED);
    expect(ahead.state).toBe("turbulent separation");
    expect(ahead.transitionCause).toBe("trip");
    const behind = followSide(stations, smooth(reynolds), [trip(1.5)], CALIBRATED);
    expect(behind.state).toBe("separation bubble");
  });
});

describe("laminarShearLayerLength", () => {
  it("is Roberts's length with the turbulence intensity on the local edge speed", () => {
    const stations = circleStations(130);
    const station = stationOfArc(stations, Math.PI / 4);
    // Edge speed 2 at 90 degrees: 2 % of the stream is 1 % there.
    const length = laminarShearLayerLength(stations, station, smooth(1e5, 0.02));
    expect(length).toBeCloseTo(roberts(0.01) / (2 * 1e5), 6);
  });
});
