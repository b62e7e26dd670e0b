/**
 * Check values of Cf = 0.246 * 10^(-0.678 H) * Re_theta^-0.268.
 * Source: Ludwieg and Tillmann (1949), Ing.-Arch. 17, 288-299 (NACA TM 1285); constants from memory, high confidence,
 * values computed from them. Grade A.
 */
export const ludwiegTillmannCheckValues: readonly {
  readonly shapeFactor: number;
  readonly momentumReynolds: number;
  readonly skinFriction: number;
}[] = (
  [
    [1.3, 2000, 0.004216],
    [1.4, 5000, 0.002821],
    [1.4, 1e4, 0.002343],
    [1.8, 5000, 0.001511],
    [2.4, 5000, 0.000592],
  ] as const
).map(([shapeFactor, momentumReynolds, skinFriction]) => ({ shapeFactor, momentumReynolds, skinFriction }));
