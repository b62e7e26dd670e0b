/**
 * Shear parameter S and shape factor H over lambda = theta^2 U' / nu.
 * Source: Thwaites (1949), Aeronautical Quarterly 1, 245-280; from memory, high confidence. Grade A.
 */
export const thwaitesTable: readonly {
  readonly gradientParameter: number;
  readonly shearParameter: number;
  readonly shapeFactor: number;
}[] = (
  [
    [0.25, 0.5, 2.0],
    [0.2, 0.463, 2.07],
    [0.14, 0.404, 2.18],
    [0.12, 0.382, 2.23],
    [0.1, 0.359, 2.28],
    [0.08, 0.333, 2.34],
    [0.064, 0.313, 2.39],
    [0.048, 0.291, 2.44],
    [0.032, 0.268, 2.49],
    [0.016, 0.244, 2.55],
    [0, 0.22, 2.61],
    [-0.016, 0.195, 2.67],
    [-0.032, 0.168, 2.75],
    [-0.04, 0.153, 2.81],
    [-0.048, 0.138, 2.87],
    [-0.052, 0.13, 2.9],
    [-0.056, 0.122, 2.94],
    [-0.06, 0.113, 2.99],
    [-0.064, 0.104, 3.04],
    [-0.068, 0.095, 3.09],
    [-0.072, 0.085, 3.15],
    [-0.076, 0.072, 3.22],
    [-0.08, 0.056, 3.3],
    [-0.084, 0.038, 3.39],
    [-0.088, 0.015, 3.49],
    [-0.09, 0, 3.55],
  ] as const
).map(([gradientParameter, shearParameter, shapeFactor]) => ({ gradientParameter, shearParameter, shapeFactor }));

/** Constants of the method: theta^2 = 0.45 nu / U^6 * integral of U^5, 0.075 nu / U' at stagnation, separation at -0.09. */
export const thwaitesConstants = { integral: 0.45, stagnation: 0.075, separation: -0.09 } as const;
