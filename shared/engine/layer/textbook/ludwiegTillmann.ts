/**
 * Friction coefficient of a turbulent layer on a smooth wall, Cf = 0.246 * 10^(-0.678 H) Re_theta^-0.268.
 * Source: Ludwieg & Tillmann (1949), Ing.-Arch. 17, 288 (NACA TM 1285).
 * @param H shape factor
 * @param ReTheta momentum-thickness Reynolds number, above about 300
 */
export function ludwiegTillmannFriction(H: number, ReTheta: number): number {
  return 0.246 * 10 ** (-0.678 * H) * ReTheta ** -0.268;
}
