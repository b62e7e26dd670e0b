import { describe, expect, it } from "vitest";
import { CALIBRATED } from "../../shared/engine/constants/calibrated";
import { abuGhannamShawTransition } from "../../shared/engine/layer/abuGhannamShaw";
import { stationValue } from "../../shared/engine/layer/sideStations";
import { michelTransition } from "../../shared/engine/layer/textbook/michel";
import { attachedTransition, type StationTrip } from "../../shared/engine/layer/transition";
import { abuGhannamShawCheckValues, michelCheckValues } from "../published/transition-criteria";
import { plateStations } from "./plateStations";

describe("Abu-Ghannam & Shaw 1980", () => {
  for (const [turbulencePercent, ReTheta] of abuGhannamShawCheckValues) {
    it(`plate, Tu ${turbulencePercent} %: Re_theta ${ReTheta}, to the digits printed`, () => {
      expect(Math.abs(abuGhannamShawTransition(0, turbulencePercent / 100) - ReTheta)).toBeLessThan(0.7);
    });
  }

  it("a falling speed brings transition forward, a rising one delays it; the effect is held at the ends of the measurements", () => {
    for (const turbulence of [0.001, 0.01, 0.03]) {
      const plate = abuGhannamShawTransition(0, turbulence);
      expect(abuGhannamShawTransition(-0.05, turbulence)).toBeLessThan(plate);
      expect(abuGhannamShawTransition(0.05, turbulence)).toBeGreaterThan(plate);
      expect(abuGhannamShawTransition(-0.4, turbulence)).toBe(abuGhannamShawTransition(-0.1, turbulence));
      expect(abuGhannamShawTransition(0.4, turbulence)).toBe(abuGhannamShawTransition(0.1, turbulence));
    }
  });

  it("never falls below 163, the value of Tollmien's limit of stability, as turbulence grows", () => {
    for (const lambda of [-0.1, 0, 0.1]) expect(abuGhannamShawTransition(lambda, 0.5)).toBeCloseTo(163, 0);
  });
});

describe("Michel 1951 in the form of Cebeci & Smith 1974", () => {
  for (const [reynoldsX, ReTheta] of michelCheckValues) {
    it(`Re_x ${reynoldsX}: Re_theta ${ReTheta}, to the digits printed`, () => {
      expect(Math.abs(michelTransition(reynoldsX) - ReTheta)).toBeLessThan(0.7);
    });
  }
});

describe("attachedTransition on a plate", () => {
  const plate = plateStations(2001);
  const smooth = { reynolds: 1e7, sandGrainRoughnessRatio: 0, turbulenceIntensity: 0.01 };
  const find = (condition: typeof smooth, trips: readonly StationTrip[] = []) =>
    attachedTransition(plate, condition, trips, CALIBRATED);
  const reynoldsAt = (station: number, reynolds: number) => stationValue(plate.arc, station) * reynolds;

  it("Schubauer & Skramstad 1948, Tu 0.08 %: begins at Re_x 2.8e6 (from memory), within 10 %", () => {
    const found = find({ ...smooth, turbulenceIntensity: 0.0008 });
    expect(found?.cause).toBe("natural");
    expect(Math.abs(reynoldsAt(found?.station ?? 0, 1e7) / 2.8e6 - 1)).toBeLessThan(0.1);
  });

  it("at Tu 1 %: where 0.664 sqrt(Re_x) reaches 532, within 1 %, whatever the Reynolds number of the whole plate", () => {
    for (const reynolds of [1e6, 1e7, 5e7]) {
      const found = find({ ...smooth, reynolds });
      expect(Math.abs(reynoldsAt(found?.station ?? 0, reynolds) / (532 / 0.664) ** 2 - 1)).toBeLessThan(0.01);
    }
  });

  it("finds none on a plate that ends before", () => {
    expect(find({ ...smooth, reynolds: 1e5 })).toBeNull();
  });

  it("a rough wall turns the layer sooner and is named as the cause; a wall below the limit does not count", () => {
    const natural = find(smooth)?.station ?? 0;
    const rough = find({ ...smooth, sandGrainRoughnessRatio: 1e-3 });
    expect(rough?.cause).toBe("roughness");
    expect(rough?.station ?? 0).toBeLessThan(natural);
    const below = (0.9 * CALIBRATED.smoothWallLimit) / smooth.reynolds;
    expect(find({ ...smooth, sandGrainRoughnessRatio: below })).toEqual(find(smooth));
  });

  it("a trip fires where Ue h / nu is above 826 (Gibbings 1959, from memory) and stands ahead of natural transition", () => {
    const station = 40;
    expect(find(smooth, [{ station, heightRatio: 830e-7 }])).toEqual({ station, cause: "trip" });
    expect(find(smooth, [{ station, heightRatio: 820e-7 }])).toEqual(find(smooth));
    expect(find(smooth, [{ station: 1900, heightRatio: 830e-7 }])).toEqual(find(smooth));
  });

  it("a trip between stations fires on the edge speed at its place: on 21.5 U at 826 / 21.5 of the height", () => {
    const rising = { ...plate, speed: plate.arc.map((_, i) => 1 + i) };
    // So slow that the layer does not turn by itself.
    const slow = { ...smooth, reynolds: 1e4 };
    const fires = (heightRatio: number) =>
      attachedTransition(rising, slow, [{ station: 20.5, heightRatio }], CALIBRATED)?.cause === "trip";
    const height = 826 / 21.5 / slow.reynolds;
    expect([fires(0.999 * height), fires(1.001 * height)]).toEqual([false, true]);
  });

  it("of several trips the first that fires counts; one on the other side of the stagnation point does not", () => {
    const trips = [
      { station: 60, heightRatio: 1e-3 },
      { station: 20, heightRatio: 1e-5 },
      { station: 30, heightRatio: 1e-3 },
      { station: -1, heightRatio: 1e-2 },
    ];
    expect(find(smooth, trips)?.station).toBe(30);
    expect(find(smooth, [trips[3]])).toEqual(find(smooth));
  });

  it("a trip behind laminar separation does not count", () => {
    const separating = { ...plate, laminar: { ...plate.laminar, separation: 25 } };
    const trip = { station: 30, heightRatio: 1e-3 };
    expect(attachedTransition(separating, smooth, [trip], CALIBRATED)).toBeNull();
    expect(attachedTransition(separating, smooth, [{ ...trip, station: 24 }], CALIBRATED)?.cause).toBe("trip");
  });
});
