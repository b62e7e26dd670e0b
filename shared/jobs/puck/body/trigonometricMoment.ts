/**
 * Integral of cos^m(phi) sin^n(phi) from phi1 to phi2 in closed form, by the usual reduction on either power.
 * Source: Gradshteyn & Ryzhik (2007), Table of Integrals, 2.511.
 * @param m power of the cosine, a whole number 0 or more
 * @param n power of the sine, a whole number 0 or more
 * @param phi1 rad
 * @param phi2 rad
 */
export function trigonometricMoment(m: number, n: number, phi1: number, phi2: number): number {
  if (m >= 2) {
    const edge = (phi: number) => Math.cos(phi) ** (m - 1) * Math.sin(phi) ** (n + 1);
    return (edge(phi2) - edge(phi1) + (m - 1) * trigonometricMoment(m - 2, n, phi1, phi2)) / (m + n);
  }
  if (n >= 2) {
    const edge = (phi: number) => Math.cos(phi) ** (m + 1) * Math.sin(phi) ** (n - 1);
    return (edge(phi1) - edge(phi2) + (n - 1) * trigonometricMoment(m, n - 2, phi1, phi2)) / (m + n);
  }
  if (m === 0 && n === 0) return phi2 - phi1;
  if (m === 1 && n === 0) return Math.sin(phi2) - Math.sin(phi1);
  if (m === 0 && n === 1) return Math.cos(phi1) - Math.cos(phi2);
  return (Math.sin(phi2) ** 2 - Math.sin(phi1) ** 2) / 2;
}
