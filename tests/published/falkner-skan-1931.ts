/** One similar layer of f''' + f f'' + beta (1 - f'^2) = 0, eta = y sqrt((m + 1) U / (2 nu x)), m = beta / (2 - beta). */
export interface SimilarLayer {
  readonly beta: number;
  /** Exponent of U ~ x^m. */
  readonly m: number;
  readonly wallCurvature: number;
  /** delta* and theta in units of eta. */
  readonly displacementThickness: number;
  readonly momentumThickness: number;
  readonly shapeFactor: number;
  /** Energy thickness over momentum thickness. */
  readonly energyShapeFactor: number;
  /** lambda = theta^2 U' / nu. */
  readonly gradientParameter: number;
  /** S = theta tau_w / (mu U). */
  readonly shearParameter: number;
}

/**
 * Similar boundary layers. Equation: Falkner and Skan (1931), Phil. Mag. 12, 865-896; solved by collocation to 1e-7,
 * and agreeing with the classic values f''(0) = 0.4696 (beta 0), 1.2326 (beta 1) and separation at beta = -0.19884
 * (Hartree 1937). Grade A.
 */
export const similarLayers: readonly SimilarLayer[] = (
  [
    [2, Number.POSITIVE_INFINITY, 1.68722, 0.49743, 0.23078, 2.1554, 1.6375, 0.10652, 0.38938],
    [1.0, 1, 1.232588, 0.6479, 0.29234, 2.2162, 1.6257, 0.08546, 0.36034],
    [0.8, 0.66667, 1.120268, 0.69868, 0.31185, 2.2405, 1.6214, 0.0778, 0.34935],
    [0.6, 0.42857, 0.995836, 0.76397, 0.33591, 2.2743, 1.6155, 0.0677, 0.33451],
    [0.4, 0.25, 0.854421, 0.85263, 0.36669, 2.3252, 1.6072, 0.05378, 0.31331],
    [0.2, 0.11111, 0.686708, 0.98416, 0.40823, 2.4108, 1.5946, 0.03333, 0.28034],
    [0.1, 0.05263, 0.587035, 1.08032, 0.43546, 2.4809, 1.5853, 0.01896, 0.25563],
    [0, 0, 0.4696, 1.21678, 0.4696, 2.5911, 1.5726, 0, 0.22052],
    [-0.05, -0.02439, 0.400323, 1.31236, 0.49046, 2.6758, 1.5641, -0.01203, 0.19634],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: a displacement thickness that happens to be near log2(e)
    [-0.1, -0.04762, 0.31927, 1.4427, 0.51504, 2.8011, 1.5533, -0.02653, 0.16444],
    [-0.14, -0.06542, 0.239736, 1.5959, 0.53856, 2.9633, 1.542, -0.04061, 0.12911],
    [-0.16, -0.07407, 0.19078, 1.70665, 0.55219, 3.0907, 1.5349, -0.04879, 0.10535],
    [-0.18, -0.08257, 0.128636, 1.87158, 0.56771, 3.2967, 1.5263, -0.05801, 0.07303],
    [-0.19, -0.08676, 0.0857, 2.00676, 0.57652, 3.4808, 1.521, -0.06315, 0.04941],
    [-0.195, -0.08884, 0.05517, 2.11705, 0.58136, 3.6415, 1.5179, -0.06591, 0.03207],
    [-0.198, -0.09008, 0.02509, 2.24077, 0.5845, 3.8337, 1.5158, -0.06764, 0.01467],
    [-0.19883, -0.09043, 0.00236, 2.34708, 0.58542, 4.009, 1.5151, -0.06814, 0.00138],
  ] as const
).map(
  ([
    beta,
    m,
    wallCurvature,
    displacementThickness,
    momentumThickness,
    shapeFactor,
    energyShapeFactor,
    gradientParameter,
    shearParameter,
  ]) => ({
    beta,
    m,
    wallCurvature,
    displacementThickness,
    momentumThickness,
    shapeFactor,
    energyShapeFactor,
    gradientParameter,
    shearParameter,
  }),
);

/** Blasius (1908), Z. Math. Phys. 56: Cf sqrt(Re_x) = 0.66411, theta / x sqrt(Re_x) = 0.66411, delta* / x sqrt(Re_x) = 1.72079. */
export const blasiusPlate = { friction: 0.66411, momentumThickness: 0.66411, displacementThickness: 1.72079 } as const;
