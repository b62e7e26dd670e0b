/**
 * Check values of H1(H) and of the entrainment F(H1).
 * F = 0.0306 (H1 - 3)^-0.6169; H1 = 3.3 + 0.8234 (H - 1.1)^-1.287 up to H = 1.6, 3.3 + 1.5501 (H - 0.6778)^-3.064 above
 * (the fits do not meet: 5.309 and 5.287 at 1.6). Source: Head (1958), ARC R&M 3152, with the fits of Cebeci and
 * Bradshaw (1977); constants from memory, high confidence, values computed from them. Grade A.
 */
export const headCheckValues: readonly {
  readonly shapeFactor: number;
  readonly headShapeFactor: number;
  readonly entrainment: number;
}[] = (
  [
    [1.3, 9.834, 0.00935],
    [1.4, 7.178, 0.01267],
    [1.5, 5.978, 0.01561],
    [1.8, 4.389, 0.02499],
    [2.0, 3.959, 0.03141],
    [2.4, 3.593, 0.04224],
    [2.8, 3.455, 0.04977],
  ] as const
).map(([shapeFactor, headShapeFactor, entrainment]) => ({ shapeFactor, headShapeFactor, entrainment }));
