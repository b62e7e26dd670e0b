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

  it("lies between 4e4 and 5.5e4 in a quiet stream, as Horton (1968) has it, from memory", () => {
    for (const turbulence of [0.0005, 0.001]) {
      expect(shearLayerTransitionReynolds(turbulence)).toBeGreaterThan(4e4);
      expect(shearLayerTransitionReynolds(turbulence)).toBeLessThan(5.5e4);
    }
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

describe("reattachmentDistance: a wedge over a gap that opens as l^2 / (2 R)", () => {
  const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

  it("meets at slope R - sqrt((slope R)^2 - 2 slope R l1), where slope R is twice the longest laminar length", () => {
    fc.assert(
      fc.property(between(0, 40), between(0.05, 1), between(0.01, 0.99), (curvature, slope, share) => {
        const reach = 2 * longestLaminarLength(curvature, slope);
        expect(reach).toBeGreaterThan(0);
        const length = (share * reach) / 2;
        const expected = reach - Math.sqrt(reach * reach - 2 * reach * length);
        expect(Math.abs((reattachmentDistance(length, curvature, slope) ?? Number.NaN) / expected - 1)).toBeLessThan(
          1e-6,
        );
      }),
    );
  });

  it("on a circle the laminar length is at most slope R / 2 with R the radius: l1/D below slope / 4 (curvature 2 / D)", () => {
    for (const slope of [0.1, 0.3, 0.6]) {
      expect(longestLaminarLength(2, slope)).toBeLessThanOrEqual(slope / 4 + 1e-12);
      expect(longestLaminarLength(2, slope)).toBeGreaterThan(slope / 10);
    }
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
