import { piecePoints } from "../puck/meridian";
import { checkOuterShape, outerMeridian } from "../puck/outerShape";
import type { PuckSpec } from "../puck/puckSpec";
import { problem, type Result, success } from "../result";

/** A closed surface of triangles, counter-clockwise seen from outside, every vertex shared. */
export interface TriangleMesh {
  readonly name: string;
  /** x, y, z of each vertex, m, shape [3 vertices]; z along the puck's axis. */
  readonly positions: Float64Array;
  /** Three vertex numbers per triangle, shape [3 triangles]. */
  readonly triangles: Uint32Array;
  /** What the mesh leaves out. */
  readonly notes: readonly string[];
}

/** Most triangles of one mesh. */
const mostTriangles = 2_000_000;

/**
 * The outside of a puck, within `deviation` of its surface, as a mesh of revolution. The recess is in it; grooves and
 * the core are not, and the notes say so.
 * @param deviation greatest distance between mesh and surface, m; 1e-5 is usual for a workshop
 */
export function puckMesh(spec: PuckSpec, deviation: number): Result<TriangleMesh> {
  const checked = checkOuterShape(spec);
  if (!checked.ok) return checked;
  const R = spec.diameterMetres / 2;
  if (!(deviation > 0 && deviation < R / 4)) {
    return problem("mesh", `deviation is ${deviation} m; it must be above 0 and below ${R / 4} m`, "deviation");
  }
  const around = Math.max(12, Math.ceil((2 * Math.PI) / Math.sqrt((8 * deviation) / R)));
  const radius = spec.edge.kind === "radius" && spec.edge.radiusMetres > 0 ? spec.edge.radiusMetres : R;
  const meridian = outerMeridian(spec).flatMap((piece) => piecePoints(piece, Math.sqrt((8 * deviation) / radius)));
  const rings = meridian.filter(([r]) => r > 0);
  if (2 * around * (rings.length + 1) > mostTriangles) {
    return problem(
      "mesh",
      `deviation ${deviation} m needs more than ${mostTriangles} triangles; allow more`,
      "deviation",
    );
  }
  const top = spec.thicknessMetres / 2 - recessDepth(spec, "top");
  const bottom = recessDepth(spec, "bottom") - spec.thicknessMetres / 2;
  const positions = new Float64Array(3 * (2 + rings.length * around));
  positions.set([0, 0, bottom], 0);
  positions.set([0, 0, top], 3);
  rings.forEach(([r, z], i) => {
    for (let k = 0; k < around; k++) {
      const phi = (2 * Math.PI * k) / around;
      positions.set([r * Math.cos(phi), r * Math.sin(phi), z], 3 * (2 + i * around + k));
    }
  });
  const triangles: number[] = [];
  const at = (ring: number, k: number) => 2 + ring * around + (k % around);
  for (let k = 0; k < around; k++) {
    triangles.push(0, at(0, k + 1), at(0, k));
    for (let i = 0; i + 1 < rings.length; i++) {
      triangles.push(at(i, k), at(i, k + 1), at(i + 1, k + 1), at(i, k), at(i + 1, k + 1), at(i + 1, k));
    }
    triangles.push(1, at(rings.length - 1, k), at(rings.length - 1, k + 1));
  }
  return success({ name: spec.name, positions, triangles: Uint32Array.from(triangles), notes: leftOut(spec) });
}

/** Enclosed volume, m^3: sum of the signed tetrahedra from the origin (Gauss's theorem). */
export function meshVolume({ positions: p, triangles }: Pick<TriangleMesh, "positions" | "triangles">): number {
  let volume = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]];
    volume +=
      (p[a] * (p[b + 1] * p[c + 2] - p[b + 2] * p[c + 1]) +
        p[a + 1] * (p[b + 2] * p[c] - p[b] * p[c + 2]) +
        p[a + 2] * (p[b] * p[c + 1] - p[b + 1] * p[c])) /
      6;
  }
  return volume;
}

function recessDepth({ face }: PuckSpec, side: "top" | "bottom"): number {
  return face.kind === "recess" && (face.side === side || face.side === "both") ? face.depthMetres : 0;
}

function leftOut({ face, rim, core }: PuckSpec): string[] {
  const notes: string[] = [];
  if (face.kind === "radialGrooves") notes.push("The radial grooves of the faces are not in this solid.");
  if (rim.kind === "axialGrooves" || rim.kind === "ringGrooves") {
    notes.push("The grooves of the rim are not in this solid.");
  }
  if (core.kind !== "none") notes.push("This is the outside; the core is not a body of its own in it.");
  return notes;
}
