import type { SectionNodes } from "../geometry/sectionNodes";
import type { FloorPlane } from "./floorPlane";

/** What the mirror image in the floor adds to the matrices of the surface equation; row-major, shape [count * count] each. */
export interface FloorImageKernels {
  /** Tangential velocity at node m of the image of node n's vortex sheet, per unit of its strength g(n). */
  readonly vortices: Float64Array;
  /** Tangential velocity at node m of the image of node n's source, per unit of its strength v_n ds. */
  readonly sources: Float64Array;
}

/** Image nodes are laid at least this many to the distance from the nearest one: the sums are then right to exp(-8 pi). */
const NODES_PER_DISTANCE = 4;
const FINEST_DIVISION = 1024;

/**
 * Kernels of the mirror image: a vortex has an image of opposite sign, a source one of the same sign, so that no water
 * passes through the floor (Milne-Thomson, Theoretical Hydrodynamics, on images in a plane; Lewis 1991, Vortex Element
 * Methods, on ground effect). The sums over the image are trapezoidal; where the image is near, its nodes are first
 * divided, positions by the cubic that has the nodes' tangents, strengths by the polynomial through six nodes.
 */
export function floorImageKernels(nodes: SectionNodes, floor: FloorPlane): FloorImageKernels {
  const { count, x, y, tangentX, tangentY, ds } = nodes;
  const vortices = new Float64Array(count * count);
  const sources = new Float64Array(count * count);
  const divided = new Map<number, DividedImage>();
  for (let m = 0; m < count; m++) {
    const row = m * count;
    const division = divisionFor(nodes, floor, m);
    let image = divided.get(division);
    if (image === undefined) {
      image = divideImage(nodes, floor, division);
      divided.set(division, image);
    }
    for (let j = 0; j < division; j++) {
      const weights = image.weights[j];
      for (let n = 0; n < count; n++) {
        const dx = x[m] - image.x[n * division + j];
        const dy = y[m] - image.y[n * division + j];
        const factor = 1 / (division * 2 * Math.PI * (dx * dx + dy * dy));
        const vortex = -(dx * tangentY[m] - dy * tangentX[m]) * factor;
        const source = (dx * tangentX[m] + dy * tangentY[m]) * factor;
        for (let k = 0; k < weights.length; k++) {
          const column = (n + k + FIRST_NEIGHBOUR + count) % count;
          vortices[row + column] += vortex * weights[k] * ds[column];
          sources[row + column] += source * weights[k];
        }
      }
    }
  }
  return { vortices, sources };
}

/** Positions of the image's nodes, each step divided evenly, and the weights of the neighbours at each part of a step. */
interface DividedImage {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly weights: readonly Float64Array[];
}

const FIRST_NEIGHBOUR = -2;
const NEIGHBOURS = 6;

function divisionFor(nodes: SectionNodes, floor: FloorPlane, m: number): number {
  const { count, x, y, ds } = nodes;
  const [imageX, imageY] = mirrored(floor, x[m], y[m]);
  let nearest = Number.POSITIVE_INFINITY;
  // Seen from the image, so that only one point has to be mirrored.
  for (let n = 0; n < count; n++) nearest = Math.min(nearest, Math.hypot(imageX - x[n], imageY - y[n]) / ds[n]);
  let division = 1;
  while (division * nearest < NODES_PER_DISTANCE && division < FINEST_DIVISION) division *= 2;
  return division;
}

function divideImage(nodes: SectionNodes, floor: FloorPlane, division: number): DividedImage {
  const { count, x, y, tangentX, tangentY, ds } = nodes;
  const imageX = new Float64Array(count * division);
  const imageY = new Float64Array(count * division);
  for (let n = 0; n < count; n++) {
    const next = n + 1 === count ? 0 : n + 1;
    for (let j = 0; j < division; j++) {
      const u = j / division;
      const here = (1 + 2 * u) * (1 - u) * (1 - u);
      const slopeHere = u * (1 - u) * (1 - u) * ds[n];
      const slopeNext = -u * u * (1 - u) * ds[next];
      const px = here * x[n] + (1 - here) * x[next] + slopeHere * tangentX[n] + slopeNext * tangentX[next];
      const py = here * y[n] + (1 - here) * y[next] + slopeHere * tangentY[n] + slopeNext * tangentY[next];
      [imageX[n * division + j], imageY[n * division + j]] = mirrored(floor, px, py);
    }
  }
  const weights = Array.from({ length: division }, (_, j) => lagrangeWeights(j / division));
  return { x: imageX, y: imageY, weights };
}

/** Weights of the six nodes about a step at the share u of it; the node itself alone at u = 0. */
function lagrangeWeights(u: number): Float64Array {
  if (u === 0) {
    const own = new Float64Array(NEIGHBOURS);
    own[-FIRST_NEIGHBOUR] = 1;
    return own;
  }
  return Float64Array.from({ length: NEIGHBOURS }, (_, k) => {
    let weight = 1;
    for (let other = 0; other < NEIGHBOURS; other++) {
      if (other !== k) weight *= (u - (other + FIRST_NEIGHBOUR)) / (k - other);
    }
    return weight;
  });
}

/** Mirror image of a point in the floor, m. */
export function mirrored(floor: FloorPlane, x: number, y: number): [number, number] {
  const twice = 2 * (floor.upX * x + floor.upY * y - floor.level);
  return [x - twice * floor.upX, y - twice * floor.upY];
}
