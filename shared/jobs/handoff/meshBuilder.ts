import earcut from "earcut";

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

/** A mesh while it grows. */
export interface MeshBuilder {
  readonly positions: number[];
  readonly triangles: number[];
}

export function addVertex({ positions }: MeshBuilder, x: number, y: number, z: number): number {
  positions.push(x, y, z);
  return positions.length / 3 - 1;
}

/** A quadrilateral as two triangles, in the order of its corners, or the other way round when flipped. */
export function addQuad(
  { triangles }: MeshBuilder,
  corners: readonly [number, number, number, number],
  flipped = false,
) {
  const [a, b, c, d] = flipped ? [...corners].reverse() : corners;
  triangles.push(a, b, c, a, c, d);
}

/**
 * A plane face at one height with holes, triangulated between its own vertices alone by the library earcut, so that it
 * shares every edge of its boundary with its neighbours.
 * @param outer vertex numbers, counter-clockwise seen from above
 * @param holes likewise
 * @param facesUp whether the face looks up the axis
 */
export function addPlaneFace(
  { positions, triangles }: MeshBuilder,
  outer: readonly number[],
  holes: readonly (readonly number[])[],
  facesUp: boolean,
): void {
  const vertices = [...outer, ...holes.flat()];
  const starts: number[] = [];
  let start = outer.length;
  for (const hole of holes) {
    starts.push(start);
    start += hole.length;
  }
  const plane = vertices.flatMap((vertex) => [positions[3 * vertex], positions[3 * vertex + 1]]);
  const found = earcut(plane, starts);
  let area = 0;
  for (let t = 0; t < found.length; t += 3) {
    const [ax, ay, bx, by, cx, cy] = [0, 1, 2].flatMap((k) => [plane[2 * found[t + k]], plane[2 * found[t + k] + 1]]);
    area += (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
  }
  const isFlipped = area > 0 !== facesUp;
  for (let t = 0; t < found.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => vertices[found[t + k]]);
    if (isFlipped) triangles.push(c, b, a);
    else triangles.push(a, b, c);
  }
}
