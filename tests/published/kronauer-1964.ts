/**
 * Street whose drag is stationary in the spacing ratio at a given speed lag e = u / U: spacing ratio h / a and Cd d / a.
 * Source: Kronauer (1964), as used by Bearman (1967), J. Fluid Mech. 28, 625-641; the condition
 * (1 - 2e)(sinh p cosh p - p) = 2 e coth p, p = pi h / a, was derived again and solved. Grade A.
 */
export const kronauerStreets: readonly {
  readonly speedLag: number;
  readonly spacingRatio: number;
  readonly dragOnSpacing: number;
}[] = (
  [
    [0.05, 0.2056, 0.0749],
    [0.1, 0.2527, 0.1516],
    [0.15, 0.2899, 0.2238],
    [0.2, 0.3243, 0.2884],
    [0.25, 0.3592, 0.3427],
  ] as const
).map(([speedLag, spacingRatio, dragOnSpacing]) => ({ speedLag, spacingRatio, dragOnSpacing }));
