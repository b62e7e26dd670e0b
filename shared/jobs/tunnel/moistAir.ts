/**
 * Density of moist air with 400 ppm of carbon dioxide, kg/m^3. Source: Picard, Davis, Glaeser & Fujii (2008), Metrologia
 * 45, 149-155 (CIPM-2007), eqs. 1-2 and A1; constants from memory. Made for 15 to 27 °C and 600 to 1100 hPa; the
 * correction for humidity, at most 1 or 2 %, holds well beyond.
 * @param relativeHumidity a fraction, 0 to 1
 */
export function moistAirDensity(temperatureCelsius: number, pressurePascals: number, relativeHumidity: number): number {
  const t = temperatureCelsius;
  const T = t + 273.15;
  const p = pressurePascals;
  const saturation = Math.exp(1.2378847e-5 * T * T - 1.9121316e-2 * T + 33.93711047 - 6.3431645e3 / T);
  const enhancement = 1.00062 + 3.14e-8 * p + 5.6e-7 * t * t;
  const xv = (relativeHumidity * enhancement * saturation) / p;
  const Z =
    1 -
    (p / T) *
      (1.58123e-6 -
        2.9331e-8 * t +
        1.1043e-10 * t * t +
        (5.707e-6 - 2.051e-8 * t) * xv +
        (1.9898e-4 - 2.376e-6 * t) * xv * xv) +
    (p / T) ** 2 * (1.83e-11 - 0.765e-8 * xv * xv);
  return ((3.48374e-3 * p) / (Z * T)) * (1 - 0.378 * xv);
}
