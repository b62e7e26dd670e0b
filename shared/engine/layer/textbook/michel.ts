/**
 * Momentum-thickness Reynolds number at natural transition in a quiet stream, Michel's (1951) criterion in the form of
 * Cebeci & Smith (1974), Analysis of Turbulent Boundary Layers: Re_theta = 1.174 (1 + 22400 / Re_x) Re_x^0.46.
 * @param reynoldsArc Re on the arc length from the stagnation point, valid from 1e5 to 6e7
 */
export function michelTransition(reynoldsArc: number): number {
  return 1.174 * (1 + 22400 / reynoldsArc) * reynoldsArc ** 0.46;
}
