/** ks+ up to which a wall is hydraulically smooth. */
export const SMOOTH_KS_PLUS = 2.25;

/**
 * Downward shift of the logarithmic velocity profile over sand-grain roughness, Delta U+: zero up to ks+ 2.25, the
 * fully rough line 5.5 - 8.5 + ln(ks+)/0.4 of Nikuradse (1933), VDI-Forschungsheft 361, from 90, and between the two
 * that line times sin(0.4258 (ln ks+ - 0.811)) (Ioselevich & Pilipenko 1974, as in Cebeci & Bradshaw 1977).
 * @param ksPlus ks u_tau / nu, at least 0
 */
export function roughnessFunction(ksPlus: number): number {
  if (!(ksPlus > SMOOTH_KS_PLUS)) return 0;
  const logarithm = Math.log(ksPlus);
  const fullyRough = 5.5 - 8.5 + logarithm / 0.4;
  return ksPlus >= 90 ? fullyRough : fullyRough * Math.sin(0.4258 * (logarithm - 0.811));
}
