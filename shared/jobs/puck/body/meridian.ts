import { trigonometricMoment } from "./trigonometricMoment";

/**
 * Half section of a body of revolution: a closed walk in the half-plane r >= 0 (distance from the axis, m) and z (along
 * the axis, m), the material on the left. A walk that starts and ends on the axis is closed along the axis.
 */
export type Meridian = readonly MeridianPiece[];

export type MeridianPiece = LinePiece | ArcPiece;

export interface LinePiece {
  readonly kind: "line";
  readonly r1: number;
  readonly z1: number;
  readonly r2: number;
  readonly z2: number;
}

/** r = centreR + radius cos(phi), z = centreZ + radius sin(phi), phi from phi1 to phi2 in rad. */
export interface ArcPiece {
  readonly kind: "arc";
  readonly centreR: number;
  readonly centreZ: number;
  readonly radius: number;
  readonly phi1: number;
  readonly phi2: number;
}

/** Integral of r^p z^q dz along a piece, in closed form; p and q are whole numbers 0 or more. */
export function pieceMoment(piece: MeridianPiece, p: number, q: number): number {
  return piece.kind === "line" ? lineMoment(piece, p, q) : arcMoment(piece, p, q);
}

/** Integral of r ds along a piece: 1/(2 pi) of the surface that it sweeps (Pappus). */
export function pieceSurfaceMoment(piece: MeridianPiece): number {
  if (piece.kind === "line") return ((piece.r1 + piece.r2) / 2) * Math.hypot(piece.r2 - piece.r1, piece.z2 - piece.z1);
  const { centreR, radius, phi1, phi2 } = piece;
  const turn = Math.sign(phi2 - phi1);
  return turn * radius * (centreR * (phi2 - phi1) + radius * (Math.sin(phi2) - Math.sin(phi1)));
}

/** Points along a piece, its first end included and its last left out; arcs in steps of at most arcStep rad. */
export function piecePoints(piece: MeridianPiece, arcStep: number): [number, number][] {
  if (piece.kind === "line") return [[piece.r1, piece.z1]];
  const { centreR, centreZ, radius, phi1, phi2 } = piece;
  const steps = Math.max(1, Math.ceil(Math.abs(phi2 - phi1) / arcStep));
  return Array.from({ length: steps }, (_, i) => {
    const phi = phi1 + ((phi2 - phi1) * i) / steps;
    return [centreR + radius * Math.cos(phi), centreZ + radius * Math.sin(phi)];
  });
}

/** Straight walk through points (r, z), m; repeated points are skipped. */
export function polyline(points: readonly (readonly [number, number])[]): LinePiece[] {
  const pieces: LinePiece[] = [];
  for (let i = 1; i < points.length; i++) {
    const [r1, z1] = points[i - 1];
    const [r2, z2] = points[i];
    if (r1 !== r2 || z1 !== z2) pieces.push({ kind: "line", r1, z1, r2, z2 });
  }
  return pieces;
}

/** With r = r1 + a u and z = z1 + b u, u in [0, 1], the integrand is a polynomial in u. */
function lineMoment({ r1, z1, r2, z2 }: LinePiece, p: number, q: number): number {
  let sum = 0;
  for (let i = 0; i <= p; i++) {
    for (let j = 0; j <= q; j++) {
      const term = binomial(p, i) * r1 ** (p - i) * (r2 - r1) ** i * binomial(q, j) * z1 ** (q - j) * (z2 - z1) ** j;
      sum += term / (i + j + 1);
    }
  }
  return sum * (z2 - z1);
}

function arcMoment({ centreR, centreZ, radius, phi1, phi2 }: ArcPiece, p: number, q: number): number {
  let sum = 0;
  for (let i = 0; i <= p; i++) {
    for (let j = 0; j <= q; j++) {
      const factor = binomial(p, i) * centreR ** (p - i) * binomial(q, j) * centreZ ** (q - j) * radius ** (i + j + 1);
      sum += factor === 0 ? 0 : factor * trigonometricMoment(i + 1, j, phi1, phi2);
    }
  }
  return sum;
}

function binomial(n: number, k: number): number {
  let value = 1;
  for (let i = 1; i <= k; i++) value = (value * (n - k + i)) / i;
  return value;
}
