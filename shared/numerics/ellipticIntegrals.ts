/**
 * Complete elliptic integrals of the first and second kind, K and E, of the parameter m = k^2, by the arithmetic-geometric
 * mean, to rounding. Source: Abramowitz & Stegun (1964), 17.6.3 and 17.6.4.
 * @param m in [0, 1)
 */
export function completeElliptic(m: number): { readonly K: number; readonly E: number } {
  return completeEllipticOfComplement(1 - m);
}

/**
 * K and E of the parameter 1 - m1, from the complementary parameter itself: near m1 = 0 no digit is lost.
 * @param m1 in (0, 1]
 */
export function completeEllipticOfComplement(m1: number): { readonly K: number; readonly E: number } {
  const m = 1 - m1;
  let a = 1;
  let b = Math.sqrt(m1);
  let c = Math.sqrt(m);
  let power = 0.5;
  let sum = power * c * c;
  // The gap between the means is squared from step to step: what is left here is below rounding.
  while (c > 1e-9 * a) {
    const mean = (a + b) / 2;
    c = (a - b) / 2;
    b = Math.sqrt(a * b);
    a = mean;
    power *= 2;
    sum += power * c * c;
  }
  const K = Math.PI / (2 * a);
  return { K, E: K * (1 - sum) };
}
