import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reattachmentDistance, shearLayerTransitionReynolds } from "../../shared/engine/layer/bubble";

describe("shearLayerTransitionReynolds", () => {
  // 2.5e4 log10 coth(17.32 Tu), Roberts (1980), AIAA J. 18, 25-31; constants from memory, values computed from them.
  for (const [turbulencePercent, reynoldsLength] of [
    [0.2, 36525],
    [0.5, 26589],
    [1, 19143],
    [2, 11933],
    [5, 3884],
  ]) {
    it(`Roberts 1980: Tu ${turbulencePercent} % gives ${reynoldsLength}, within 0.1 %`, () => {
      expect(Math.abs(shearLayerTransitionReynolds(turbulencePercent / 100) / reynoldsLength - 1)).toBeLessThan(1e-3);
    });
  }

  it("lies between the 4e4 and 5e4 of Horton (1968), from memory, however quiet the stream", () => {
    for (const turbulence of [0, 1e-5, 0.0005, 0.001]) {
      expect(shearLayerTransitionReynolds(turbulence)).toBeGreaterThan(4e4);
      expect(shearLayerTransitionReynolds(turbulence)).toBeLessThan(5e4);
    }
  });

  it("follows Roberts down to Tu 0.1 %, where 2.5e4 log10 coth 0.01732 = 4.404e4", () => {
    expect(Math.abs(shearLayerTransitionReynolds(0.001) / 44040 - 1)).toBeLessThan(1e-3);
    expect(shearLayerTransitionReynolds(0.0012)).toBeLessThan(shearLayerTransitionReynolds(0.001));
  });

  it("never grows with turbulence and stays finite without any", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        (tu, more) => {
          const length = shearLayerTransitionReynolds(tu);
          expect(Number.isFinite(length)).toBe(true);
          expect(shearLayerTransitionReynolds(tu + more)).toBeLessThanOrEqual(length);
        },
      ),
    );
  });
});

/** Curvature of a circle of diameter D = 1, with which the outer stream turns around a body: by geometry 1 / radius. */
const circleCurvature = 1 / 0.5;

/**
 * Where the lower edge of the layer, which stays straight over l1 and then spreads downward with the slope, first meets
 * a wall that falls away from the tangent: both walked along in small steps, without solving anything.
 */
function walkedDistance(laminarLength: number, curvature: number, slope: number): number | null {
  const step = 2e-6;
  for (let l = laminarLength; l < 1; l += step) {
    const gap = (l * l * (curvature + circleCurvature)) / 2;
    if (slope * (l - laminarLength) >= gap) return l;
  }
  return null;
}

/** The longest laminar length with which a layer still comes back to the wall. */
function longestLaminarLength(curvature: number, slope: number): number {
  let back = 0;
  let away = 10;
  for (let i = 0; i < 60; i++) {
    const middle = (back + away) / 2;
    if (reattachmentDistance(middle, curvature, slope) === null) away = middle;
    else back = middle;
  }
  return back;
}

describe("reattachmentDistance: a wedge over a gap that opens as l^2 / (2 R), 1/R the wall's curvature and the stream's", () => {
  it.each([
    [0.03, 0, 0.4],
    [0.01, 2, 0.3],
    [0.05, 2, 0.69],
    [0.002, 40, 0.5],
    [0.08, 1, 0.69],
  ])(
    "l1 %d, curvature %d, slope %d: where a walk along wedge and wall finds that they meet, within 1e-4",
    (length, curvature, slope) => {
      const walked = walkedDistance(length, curvature, slope) ?? Number.NaN;
      expect(Math.abs((reattachmentDistance(length, curvature, slope) ?? Number.NaN) - walked)).toBeLessThan(1e-4);
    },
  );

  it("the wedge just touches the wall at twice l1 = slope R / 2: R is D/2 over a flat side and D/4 over a circle of diameter D", () => {
    for (const slope of [0.1, 0.3, 0.6]) {
      expect(longestLaminarLength(0, slope)).toBeCloseTo((slope * 0.5) / 2, 10);
      expect(longestLaminarLength(circleCurvature, slope)).toBeCloseTo((slope * 0.25) / 2, 10);
      const longest = longestLaminarLength(circleCurvature, slope);
      expect(reattachmentDistance(longest, circleCurvature, slope)).toBeCloseTo(2 * longest, 5);
      expect(walkedDistance(1.01 * longest, circleCurvature, slope)).toBeNull();
      expect(reattachmentDistance(1.01 * longest, circleCurvature, slope)).toBeNull();
    }
  });

  it("of no laminar length it never leaves the wall", () => {
    expect(reattachmentDistance(0, 2, 0.3)).toBeCloseTo(0, 12);
  });

  it("a wider wedge and a flatter wall bring it back sooner", () => {
    const reference = reattachmentDistance(0.02, 2, 0.4) ?? Number.NaN;
    expect(reattachmentDistance(0.02, 2, 0.5)).toBeLessThan(reference);
    expect(reattachmentDistance(0.02, 1, 0.4)).toBeLessThan(reference);
    expect(reattachmentDistance(0.02, 40, 0.4)).toBeNull();
    expect(reattachmentDistance(0.02, 2, 0.05)).toBeNull();
  });

  it("a concave wall counts as flat, and NaN never comes back", () => {
    expect(reattachmentDistance(0.02, -5, 0.3)).toBe(reattachmentDistance(0.02, 0, 0.3));
    expect(reattachmentDistance(Number.NaN, 2, 0.3)).toBeNull();
  });
});
