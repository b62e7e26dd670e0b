import { edgeReach, grooveMeridian, type PuckSpec } from "../puck/public";
import { grooveAngles, halfAngle, polar, rimFloorCorners } from "./groovePlan";
import { mirroredVertices, type Outline, type OutlineVertex } from "./outline";

/** A line of the plan besides its circle. */
export interface PlanLine {
  readonly outline: Outline;
  /** True when material lies over it, seen from above: drawn dashed. */
  readonly isHidden: boolean;
}

/**
 * The profile in a section through the grooves of faces and rim, both halves through one of each as is usual for parts
 * with an odd number of them; null without such grooves. Rings round the rim are in every profile.
 */
export function grooveProfileOutline(spec: PuckSpec): Outline | null {
  if (spec.face.kind !== "radialGrooves" && spec.rim.kind !== "axialGrooves") return null;
  return { name: `${spec.name}, profile through grooves`, vertices: mirroredVertices(grooveMeridian(spec)) };
}

/** Recess and grooves as closed outlines in plan, exact arcs, seen from above. */
export function planLines(spec: PuckSpec): PlanLine[] {
  return [...recessLines(spec), ...faceGrooveLines(spec), ...rimGrooveLines(spec)];
}

function recessLines({ face, name }: PuckSpec): PlanLine[] {
  if (face.kind !== "recess") return [];
  const r = face.diameterMetres / 2;
  const vertices = [
    { x: r, y: 0, bulge: 1 },
    { x: -r, y: 0, bulge: 1 },
  ];
  return [{ outline: { name: `${name}, recess`, vertices }, isHidden: face.side === "bottom" }];
}

function faceGrooveLines({ face, name }: PuckSpec): PlanLine[] {
  if (face.kind !== "radialGrooves") return [];
  const { number, widthMetres, innerRadiusMetres: a, outerRadiusMetres: b, side } = face;
  const [inner, outer] = [halfAngle(widthMetres, a), halfAngle(widthMetres, b)];
  return grooveAngles(number).map((angle) => ({
    outline: {
      name: `${name}, face groove`,
      vertices: [
        vertex(polar(b, angle - outer), Math.tan(outer / 2)),
        vertex(polar(b, angle + outer), 0),
        vertex(polar(a, angle + inner), -Math.tan(inner / 2)),
        vertex(polar(a, angle - inner), 0),
      ],
    },
    isHidden: side === "bottom",
  }));
}

function rimGrooveLines(spec: PuckSpec): PlanLine[] {
  const { rim, name } = spec;
  if (rim.kind !== "axialGrooves") return [];
  const R = spec.diameterMetres / 2;
  const half = halfAngle(rim.widthMetres, R);
  return grooveAngles(rim.number).map((angle) => {
    const [right, left] = rimFloorCorners(rim, R, angle);
    return {
      outline: {
        name: `${name}, rim groove`,
        vertices: [
          vertex(polar(R, angle - half), Math.tan(half / 2)),
          vertex(polar(R, angle + half), 0),
          vertex(left, 0),
          vertex(right, 0),
        ],
      },
      // Grooves that end below an edge lie under it.
      isHidden: edgeReach(spec).axial > 0,
    };
  });
}

function vertex([x, y]: readonly [number, number], bulge: number): OutlineVertex {
  return { x, y, bulge };
}
