/** Force against approach as an impact meets it: points with straight lines between them in logarithms. */
export interface ForceLaw {
  /** m, rising, shape [n]. */
  readonly approach: Readonly<Float64Array>;
  /** N. */
  readonly force: Readonly<Float64Array>;
  /** Pa, at the middle of the contact. */
  readonly peakPressure: Readonly<Float64Array>;
  /** Work done up to each point, J. */
  readonly work: Readonly<Float64Array>;
  /** Exponents of the force: below the first point, between points and beyond the last one; shape [n + 1]. */
  readonly exponents: Readonly<Float64Array>;
}

/**
 * @param firstExponent of the force below the first point: 3/2 for a Hertz contact of a sphere, 1 for a flat one
 */
export function forceLaw(
  approach: Readonly<Float64Array>,
  force: Readonly<Float64Array>,
  peakPressure: Readonly<Float64Array>,
  firstExponent: number,
): ForceLaw {
  const n = approach.length;
  const exponents = new Float64Array(n + 1).fill(firstExponent);
  const work = new Float64Array(n);
  work[0] = (force[0] * approach[0]) / (firstExponent + 1);
  for (let i = 1; i < n; i++) {
    exponents[i] = Math.log(force[i] / force[i - 1]) / Math.log(approach[i] / approach[i - 1]);
    work[i] = work[i - 1] + workFrom(approach[i - 1], force[i - 1], exponents[i], approach[i]);
  }
  exponents[n] = exponents[n - 1];
  return { approach, force, peakPressure, work, exponents };
}

/** Integral of force x (x / from)^exponent from one approach to another. */
function workFrom(from: number, force: number, exponent: number, to: number): number {
  return ((force * from) / (exponent + 1)) * ((to / from) ** (exponent + 1) - 1);
}

/** The piece an approach lies in: 0 below the first point, n beyond the last one. */
function pieceAt(values: Readonly<Float64Array>, value: number): number {
  let piece = 0;
  while (piece < values.length && values[piece] < value) piece++;
  return piece;
}

/** The point that a piece is counted from. */
function anchor(piece: number): number {
  return Math.max(0, piece - 1);
}

/** N. */
export function forceAt({ approach, force, exponents }: ForceLaw, at: number): number {
  const piece = pieceAt(approach, at);
  const from = anchor(piece);
  return force[from] * (at / approach[from]) ** exponents[piece];
}

/** Pa; by the same lines as the force. */
export function peakPressureAt(law: ForceLaw, at: number): number {
  const { approach, peakPressure } = law;
  const piece = Math.min(Math.max(1, pieceAt(approach, at)), Math.max(1, approach.length - 1));
  if (approach.length === 1) return (peakPressure[0] * forceAt(law, at)) / law.force[0];
  const exponent =
    Math.log(peakPressure[piece] / peakPressure[piece - 1]) / Math.log(approach[piece] / approach[piece - 1]);
  return peakPressure[piece - 1] * (at / approach[piece - 1]) ** exponent;
}

/** J. */
export function workAt({ approach, force, work, exponents }: ForceLaw, at: number): number {
  const piece = pieceAt(approach, at);
  if (piece === 0) return work[0] * (at / approach[0]) ** (exponents[0] + 1);
  const from = piece - 1;
  return work[from] + workFrom(approach[from], force[from], exponents[piece], at);
}

/** Approach at which that much work has been done, m. @param energy J, above 0 */
export function approachForWork({ approach, force, work, exponents }: ForceLaw, energy: number): number {
  const piece = pieceAt(work, energy);
  const exponent = exponents[piece] + 1;
  if (piece === 0) return approach[0] * (energy / work[0]) ** (1 / exponent);
  const from = piece - 1;
  return approach[from] * (1 + ((energy - work[from]) * exponent) / (force[from] * approach[from])) ** (1 / exponent);
}
