/**
 * Head's entrainment relations, the plainer of the two turbulent methods.
 * Source: Head (1958), ARC R&M 3152; the fit of H1(H) is by Cebeci & Bradshaw (1977), Momentum Transfer in Boundary Layers.
 */

/** Entrainment coefficient F = 0.0306 (H1 - 3)^-0.6169 in d(Ue theta H1)/ds = Ue F; H1 above 3. */
export function headEntrainment(H1: number): number {
  return 0.0306 * (H1 - 3) ** -0.6169;
}

/** Head's shape factor H1 = (delta - delta*) / theta of H, for H above 1.1; it jumps from 5.309 to 5.287 at H = 1.6. */
export function headShapeFactor(H: number): number {
  return H <= 1.6 ? 3.3 + 0.8234 * (H - 1.1) ** -1.287 : 3.3 + 1.5501 * (H - 0.6778) ** -3.064;
}

/** H of H1, the inverse of {@link headShapeFactor}, for H1 above 3.3. */
export function shapeFactorOfHead(H1: number): number {
  return H1 >= 5.3 ? 1.1 + ((H1 - 3.3) / 0.8234) ** (-1 / 1.287) : 0.6778 + ((H1 - 3.3) / 1.5501) ** (-1 / 3.064);
}
