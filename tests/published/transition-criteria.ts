/**
 * Michel's criterion in the form of Cebeci and Smith (1974): Re_theta = 1.174 (1 + 22400 / Re_x) Re_x^0.46 for 1e5 <= Re_x <= 6e7.
 * Constants from memory, high confidence; Re_x and Re_theta computed from them. Grade A.
 */
export const michelCheckValues: readonly (readonly [number, number])[] = [
  [3e5, 417],
  [5e5, 513],
  [1e6, 691],
  [3e6, 1128],
  [1e7, 1953],
];

/**
 * Mack (1977), JPL Publ. 77-15: N = -8.43 - 2.4 ln Tu, Tu a fraction from 0.0007 to 0.0298; turbulence intensity and N.
 * Constants from memory, high confidence; values computed from them. Grade A.
 */
export const mackCheckValues: readonly (readonly [number, number])[] = [
  [0.0007, 9.0],
  [0.001, 8.15],
  [0.002, 6.49],
  [0.005, 4.29],
  [0.01, 2.62],
  [0.02, 0.96],
];

/**
 * Abu-Ghannam and Shaw (1980), J. Mech. Eng. Sci. 22, 213-228: Re_theta at the start of transition on a plate without
 * pressure gradient, 163 + exp(6.91 - Tu), Tu in per cent; turbulence in per cent and Re_theta.
 * Constants from memory, high confidence; values computed from them. Grade A.
 */
export const abuGhannamShawCheckValues: readonly (readonly [number, number])[] = [
  [0.1, 1070],
  [0.5, 771],
  [1, 532],
  [2, 299],
  [3, 213],
  [5, 170],
];
