import { describe, expect, it } from "vitest";
import { completeElliptic } from "../../shared/numerics/ellipticIntegrals";

describe("completeElliptic(m)", () => {
  // Abramowitz & Stegun (1964), table 17.1 (from memory), modular angles 0, 30, 45, 60 degrees: m = sin^2.
  it.each([
    [0, Math.PI / 2, Math.PI / 2],
    [0.25, 1.68575035481, 1.46746220933],
    [0.5, 1.8540746773, 1.35064388105],
    [0.75, 2.1565156475, 1.21105602757],
  ])("m %d: K and E of Abramowitz & Stegun 1964, table 17.1, within 1e-10", (m, K, E) => {
    const found = completeElliptic(m);
    expect(Math.abs(found.K - K)).toBeLessThan(1e-10);
    expect(Math.abs(found.E - E)).toBeLessThan(1e-10);
  });

  it("keeps Legendre's relation E K' + E' K - K K' = pi/2 to 1e-13 and ends for every m below 1", () => {
    for (const m of [1e-15, 1e-9, 0.01, 0.1, 0.3, 0.5, 0.9, 0.9999]) {
      const { K, E } = completeElliptic(m);
      const other = completeElliptic(1 - m);
      expect(Math.abs(E * other.K + other.E * K - K * other.K - Math.PI / 2)).toBeLessThan(1e-13 * other.K);
    }
    expect(completeElliptic(1 - Number.EPSILON / 2).K).toBeGreaterThan(19);
  });
});
