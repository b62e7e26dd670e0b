/** ks+ up to which a wall is hydraulically smooth. */
export const SMOOTH_KS_PLUS = 2.25;

/**
 * Downward shift of the logarithmic velocity profile over sand-grain roughness, Delta U+.
 * Source: Cebeci & Bradshaw (1977), Momentum Transfer in Boundary Layers, after Ioselevich & Pilipenko (1974):
 * (B - 8.5 + ln(ks+)/kappa) sin(0.4258 (ln ks+ - 0.811)) between ks+ 2.25 and 90, zero below, the fully rough line above.
 * @param ksPlus ks u_tau / nu, at least 0
 */
export function roughnessFunction(ksPlus: number): number {
  if (!(ksPlus > SMOOTH_KS_PLUS)) return 0;
  const logarithm = Math.log(ksPlus);
  const fullyRough = 5.2 - 8.5 + logarithm / 0.41;
  return ksPlus >= 90 ? fullyRough : fullyRough * Math.sin(0.4258 * (logarithm - 0.811));
}
