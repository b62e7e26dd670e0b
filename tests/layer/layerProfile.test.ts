import { describe, expect, it } from "vitest";
import { CALIBRATED } from "../../shared/engine/constants/calibrated";
import { layerProfile } from "../../shared/engine/layer/layerProfile";
import { followSide } from "../../shared/engine/layer/sideLayer";
import { circleStations } from "./edgeStations";

/** The layer of the attached flow past a circle of diameter 1, as far as an angle from the front. */
function profileOn(degrees: number, reynolds: number, turbulenceIntensity = 0.001) {
  const stations = circleStations(degrees, 601);
  const turbulent: number[] = [];
  const condition = { reynolds, sandGrainRoughnessRatio: 0, turbulenceIntensity };
  const layer = followSide(stations, condition, [], CALIBRATED, (...point) => turbulent.push(...point));
  return { stations, layer, turbulent, profile: layerProfile(stations, layer, turbulent, reynolds) };
}

const speed = (arc: number) => 2 * Math.sin(2 * arc);
const kindsOf = ({ layerKind }: { readonly layerKind: Uint8Array }) => [...new Set(layerKind)];

describe("layerProfile: the laminar part", () => {
  const reynolds = 1e5;

  it("begins as Hiemenz's (1911) stagnation flow of slope a = 4 U/D: theta = 0.2923 sqrt(nu / a), H = 2.216, tau = 1.2326 rho Ue sqrt(a nu), within 1 %", () => {
    const { profile } = profileOn(130, reynolds);
    for (const i of [3, 10, 20]) {
      expect(profile.momentumThickness[i] / (0.2923 / Math.sqrt(4 * reynolds))).toBeCloseTo(1, 2);
      expect(profile.shapeFactor[i] / 2.216).toBeCloseTo(1, 2);
      const Cf = (2 * 1.2326 * Math.sqrt(4 / reynolds)) / profile.edgeSpeed[i];
      expect(Math.abs(profile.skinFriction[i] / Cf - 1)).toBeLessThan(0.01);
    }
    expect(profile.skinFriction[0]).toBe(0);
  });

  it("has the stations' arcs and edge speeds and ends where the layer separates, its friction gone and H near 4.03 (Hartree 1937)", () => {
    const { profile, layer } = profileOn(130, reynolds);
    const last = profile.arc.length - 1;
    expect(kindsOf(profile)).toEqual([0]);
    for (let i = 0; i <= last; i++) {
      expect(profile.edgeSpeed[i]).toBeCloseTo(speed(profile.arc[i]), 4);
      if (i > 0) expect(profile.arc[i]).toBeGreaterThan(profile.arc[i - 1]);
    }
    expect(profile.arc[last]).toBeCloseTo(layer.separationArc, 10);
    expect(Math.abs((profile.arc[last] * 360) / Math.PI - 104.5)).toBeLessThan(1.5);
    expect(profile.skinFriction[last]).toBeLessThan(0.02 * Math.max(...profile.skinFriction.slice(3)));
    expect(Math.abs(profile.shapeFactor[last] / 4.03 - 1)).toBeLessThan(0.03);
  });

  it("thins as 1 / sqrt(Re) and its friction with it, edge speed and H the same", () => {
    const [low, high] = [1e4, 16e4].map((Re) => profileOn(100, Re).profile);
    for (const i of [10, 200, 500]) {
      expect(low.momentumThickness[i] / high.momentumThickness[i]).toBeCloseTo(4, 9);
      expect(low.skinFriction[i] / high.skinFriction[i]).toBeCloseTo(4, 9);
      expect(low.shapeFactor[i]).toBeCloseTo(high.shapeFactor[i], 12);
    }
  });

  it("of a layer that is attached at the last station ends there", () => {
    const { profile, stations } = profileOn(80, reynolds);
    expect(profile.arc[profile.arc.length - 1]).toBeCloseTo(stations.arc[stations.count - 1], 12);
    expect(kindsOf(profile)).toEqual([0]);
  });
});

describe("layerProfile: with a bubble", () => {
  it("runs laminar, over the bubble's two ends without friction, then turbulent to separation", () => {
    const { profile, layer, turbulent } = profileOn(150, 3e5);
    expect(kindsOf(profile)).toEqual([0, 1, 2]);
    const ends = [...profile.layerKind].flatMap((kind, i) => (kind === 1 ? [i] : []));
    expect(ends).toHaveLength(2);
    const [from, to] = ends;
    expect(to).toBe(from + 1);
    expect(profile.arc[from]).toBeCloseTo(layer.bubble?.separationArc ?? 0, 12);
    expect(profile.arc[to]).toBeCloseTo(layer.bubble?.reattachmentArc ?? 0, 12);
    for (const end of ends) {
      expect(profile.skinFriction[end]).toBe(0);
      expect(profile.edgeSpeed[end]).toBeCloseTo(speed(profile.arc[end]), 4);
      expect(Math.abs(profile.shapeFactor[end] / 4.03 - 1)).toBeLessThan(0.01);
    }
    // The laminar thickness at one end, that of the turbulent start at the other.
    expect(profile.momentumThickness[from]).toBe(profile.momentumThickness[from - 1]);
    expect(profile.momentumThickness[to]).toBe(turbulent[1]);
    const rest = Array.from({ length: turbulent.length / 4 }, (_, i) => to + 1 + i);
    expect(profile.arc.length).toBe(to + 1 + rest.length);
    rest.forEach((row, i) => {
      expect(profile.layerKind[row]).toBe(2);
      expect([
        profile.arc[row],
        profile.momentumThickness[row],
        profile.shapeFactor[row],
        profile.skinFriction[row],
      ]).toEqual(turbulent.slice(4 * i, 4 * i + 4));
      expect(profile.edgeSpeed[row]).toBeCloseTo(speed(profile.arc[row]), 4);
    });
  });

  it("that does not close ahead of the last station ends with the laminar layer", () => {
    const { profile, layer } = profileOn(107, 6e5);
    expect(layer.state).toBe("separation bubble");
    expect(kindsOf(profile)).toEqual([0]);
    expect(profile.arc[profile.arc.length - 1]).toBeCloseTo(layer.bubble?.separationArc ?? 0, 10);
  });
});

describe("layerProfile: with transition in the attached layer", () => {
  it("runs laminar to transition and turbulent from there, theta the same on both sides", () => {
    const { profile, layer } = profileOn(140, 1e6, 0.03);
    expect(kindsOf(profile)).toEqual([0, 2]);
    const first = profile.layerKind.indexOf(2);
    expect(profile.arc[first]).toBeCloseTo(layer.transitionArc ?? 0, 12);
    expect(profile.arc[first - 1]).toBeCloseTo(layer.transitionArc ?? 0, 10);
    expect(profile.momentumThickness[first] / profile.momentumThickness[first - 1]).toBeCloseTo(1, 9);
    expect(profile.arc[profile.arc.length - 1]).toBeCloseTo(layer.separationArc, 12);
  });
});
