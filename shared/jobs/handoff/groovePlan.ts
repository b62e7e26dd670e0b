import type { PuckFace, RimTexture } from "../puck/public";

export type FaceGrooves = Extract<PuckFace, { readonly kind: "radialGrooves" }>;
export type RimGrooves = Extract<RimTexture, { readonly kind: "axialGrooves" }>;

/** Direction of each of several equally spaced grooves, rad; the first lies along x. */
export function grooveAngles(number: number): number[] {
  return Array.from({ length: number }, (_, i) => (2 * Math.PI * i) / number);
}

/** Half the angle that a groove's width takes at a radius, rad. */
export function halfAngle(width: number, radius: number): number {
  return Math.asin(width / 2 / radius);
}

/** A point at a radius and an angle, m. */
export function polar(radius: number, angle: number): [number, number] {
  return [radius * Math.cos(angle), radius * Math.sin(angle)];
}

/**
 * Inner end of a face groove in plan: an arc about the axis, from its right corner (seen outwards) to its left one.
 * @param deviation greatest distance of the chords from the arc, m
 */
export function innerArc({ widthMetres, innerRadiusMetres: a }: FaceGrooves, angle: number, deviation: number) {
  return arcPoints(a, angle, halfAngle(widthMetres, a), deviation);
}

/** Outer end of a face groove in plan, from its right corner to its left one. */
export function outerArc({ widthMetres, outerRadiusMetres: b }: FaceGrooves, angle: number, deviation: number) {
  return arcPoints(b, angle, halfAngle(widthMetres, b), deviation);
}

function arcPoints(radius: number, angle: number, half: number, deviation: number): [number, number][] {
  const steps = Math.max(1, Math.ceil((2 * half) / Math.sqrt((8 * deviation) / radius)));
  return Array.from({ length: steps + 1 }, (_, i) => polar(radius, angle - half + (2 * half * i) / steps));
}

/** Corners of the floor of a rim groove in plan, right one first. */
export function rimFloorCorners(
  { widthMetres, depthMetres }: RimGrooves,
  radius: number,
  angle: number,
): [[number, number], [number, number]] {
  const floor = radius - depthMetres;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const y = widthMetres / 2;
  return [
    [floor * c + y * s, floor * s - y * c],
    [floor * c - y * s, floor * s + y * c],
  ];
}
