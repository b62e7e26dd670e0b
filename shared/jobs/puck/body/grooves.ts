import { edgeReach } from "./outerShape";
import type { PuckSpec } from "./puckSpec";
import { combineSolids, emptySolid, type SolidFigures } from "./solidFigures";

/** Figures at unit density of everything that grooves take away, in closed form. The spec must have passed its checks. */
export function grooveFigures(spec: PuckSpec): SolidFigures {
  return combineSolids([
    [1, faceGrooves(spec)],
    [1, rimGrooves(spec)],
  ]);
}

/** Area of one face that its grooves take away, m^2. */
export function facePatternArea({ face }: PuckSpec): number {
  if (face.kind !== "radialGrooves") return 0;
  const slot = slotPlan(face.widthMetres, face.outerRadiusMetres, face.innerRadiusMetres);
  return face.number * slot.area;
}

/** Area and polar moment about the axis of a plan figure. */
interface PlanFigure {
  /** m^2. */
  readonly area: number;
  /** m^4. */
  readonly polarMoment: number;
}

/** Part of a disc of radius R with |y| <= w/2 and x > 0: from the line x = 0 to the circle. */
function stripInDisc(w: number, R: number): PlanFigure {
  const y = w / 2;
  const root = Math.sqrt(R * R - y * y);
  const angle = Math.asin(y / R);
  const rootIntegral = y * root + R * R * angle; // of sqrt(R^2 - y^2) over |y| <= w/2
  const cubedIntegral = (y / 4) * (5 * R * R - 2 * y * y) * root + (3 / 4) * R ** 4 * angle; // of (R^2 - y^2)^(3/2)
  const secondIntegral = (y / 4) * (2 * y * y - R * R) * root + (R ** 4 / 4) * angle; // of y^2 sqrt(R^2 - y^2)
  return { area: rootIntegral, polarMoment: cubedIntegral / 3 + secondIntegral };
}

function slotPlan(w: number, outer: number, inner: number): PlanFigure {
  const out = stripInDisc(w, outer);
  const within = stripInDisc(w, inner);
  return { area: out.area - within.area, polarMoment: out.polarMoment - within.polarMoment };
}

/** Prisms over a plan figure, repeated round the axis three times or more, between two heights. */
function repeatedPrism(number: number, plan: PlanFigure, z1: number, z2: number): SolidFigures {
  const area = number * plan.area;
  const polar = number * plan.polarMoment;
  return {
    volume: area * (z2 - z1),
    axialMoment: (area * (z2 * z2 - z1 * z1)) / 2,
    inertiaAxis: polar * (z2 - z1),
    inertiaDiameter: (polar / 2) * (z2 - z1) + (area * (z2 ** 3 - z1 ** 3)) / 3,
  };
}

function faceGrooves({ face, thicknessMetres }: PuckSpec): SolidFigures {
  if (face.kind !== "radialGrooves") return emptySolid;
  const h = thicknessMetres / 2;
  const plan = slotPlan(face.widthMetres, face.outerRadiusMetres, face.innerRadiusMetres);
  const top = repeatedPrism(face.number, plan, h - face.depthMetres, h);
  const bottom = repeatedPrism(face.number, plan, -h, face.depthMetres - h);
  return combineSolids([
    [face.side === "bottom" ? 0 : 1, top],
    [face.side === "top" ? 0 : 1, bottom],
  ]);
}

function rimGrooves(spec: PuckSpec): SolidFigures {
  const { rim } = spec;
  if (rim.kind !== "axialGrooves" && rim.kind !== "ringGrooves") return emptySolid;
  const R = spec.diameterMetres / 2;
  const half = spec.thicknessMetres / 2 - edgeReach(spec).axial;
  const floor = R - rim.depthMetres;
  const w = rim.widthMetres;
  if (rim.kind === "axialGrooves") {
    const strip = stripInDisc(w, R);
    const plan = {
      area: strip.area - floor * w,
      polarMoment: strip.polarMoment - (floor ** 3 * w) / 3 - (floor * w ** 3) / 12,
    };
    return repeatedPrism(rim.number, plan, -half, half);
  }
  const plan = { area: Math.PI * (R * R - floor * floor), polarMoment: (Math.PI / 2) * (R ** 4 - floor ** 4) };
  const pitch = (2 * half) / rim.number;
  const rings = Array.from({ length: rim.number }, (_, i) => {
    const middle = (i + 0.5) * pitch - half;
    return [1, repeatedPrism(1, plan, middle - w / 2, middle + w / 2)] as const;
  });
  return combineSolids(rings);
}
