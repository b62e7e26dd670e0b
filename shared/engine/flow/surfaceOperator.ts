import type { NdArray } from "ndarray";
import { solveByGmres } from "../../numerics/gmres";
import { factorInPlace, type LuFactors, solveFactored } from "../../numerics/lu";
import { problem, type Result, success } from "../../result";
import type { SectionNodes } from "../geometry/sectionNodes";
import { vorticityMatrix } from "./surfaceKernels";

/** Above this many unknowns factoring takes seconds, and a few products with the matrix per right side are the better deal. */
const LARGEST_FACTORED_SIZE = 1300;

/** Solver of the surface-vorticity equation of one section, ready for any number of right sides. */
export interface SurfaceOperator {
  /** True when only flows antisymmetric in g about the x axis (no circulation) can be asked for. */
  readonly folded: boolean;
  /**
   * Surface velocity (counter-clockwise, = vortex sheet strength g) for a tangential onset velocity and circulation.
   * @param tangentialOnset velocity along the tangent at the nodes, m/s, shape [count]
   * @param circulation counter-clockwise circulation around the section, m^2/s; must be 0 on a folded operator
   */
  solve(tangentialOnset: Readonly<Float64Array>, circulation: number): Float64Array;
}

/**
 * Prepares the equation of a section. The matrix depends on the shape alone, so this is done once per shape.
 * @param symmetricFlow true for a mirror-symmetric section at zero incidence: half of the unknowns remain
 * @param imageVortices what a mirror image adds to the matrix, see floorImage.ts; null in an unbounded stream
 */
export function surfaceOperator(
  nodes: SectionNodes,
  symmetricFlow: boolean,
  imageVortices: Readonly<Float64Array> | null = null,
): Result<SurfaceOperator> {
  if (symmetricFlow && !nodes.mirrorSymmetric)
    return problem("asymmetric-section", "A symmetric flow needs a section that is its own mirror image.");
  const full = vorticityMatrix(nodes);
  if (imageVortices !== null) for (let i = 0; i < imageVortices.length; i++) full.data[i] += imageVortices[i];
  const matrix = symmetricFlow ? foldAntisymmetric(full) : full.data;
  const size = Math.round(Math.sqrt(matrix.length));
  // Near a floor the equation is no longer well conditioned, and iteration would be slow.
  const system = new PanelSystem(matrix, size, imageVortices === null ? LARGEST_FACTORED_SIZE : size);
  return success(symmetricFlow ? new FoldedOperator(nodes.count, size, system) : new FullOperator(nodes, system));
}

// Classes rather than closures: every new shape then runs the code that the compiler knows from the last one.

/** For flows antisymmetric in g, from the unknowns of one side. */
class FoldedOperator implements SurfaceOperator {
  readonly folded = true;

  constructor(
    private readonly count: number,
    private readonly size: number,
    private readonly system: PanelSystem,
  ) {}

  solve(tangentialOnset: Readonly<Float64Array>, circulation: number): Float64Array {
    if (circulation !== 0) throw new RangeError(`circulation is ${circulation}; a folded operator takes only 0.`);
    const { count, size } = this;
    const rightSide = new Float64Array(size);
    for (let i = 0; i < size; i++) rightSide[i] = -tangentialOnset[i + 1];
    const half = this.system.solve(rightSide);
    const velocity = new Float64Array(count);
    for (let i = 0; i < size; i++) {
      velocity[i + 1] = half[i];
      velocity[count - 1 - i] = -half[i];
    }
    return velocity;
  }
}

class FullOperator implements SurfaceOperator {
  readonly folded = false;

  constructor(
    private readonly nodes: SectionNodes,
    private readonly system: PanelSystem,
  ) {}

  solve(tangentialOnset: Readonly<Float64Array>, circulation: number): Float64Array {
    const filled = circulation / this.nodes.perimeter;
    return this.system.solve(tangentialOnset.map((onset) => -onset + filled));
  }
}

/** Rows and columns 1 .. count/2-1 of the matrix for g(mirror node) = -g(node); both nodes on the axis carry no g. */
function foldAntisymmetric(full: NdArray<Float64Array>): Float64Array {
  const count = full.shape[0];
  const half = count / 2 - 1;
  const folded = new Float64Array(half * half);
  for (let i = 0; i < half; i++) {
    const row = (i + 1) * count;
    for (let j = 0; j < half; j++) folded[i * half + j] = full.data[row + j + 1] - full.data[row + count - 1 - j];
  }
  return folded;
}

/** Equations that are solved for many right sides, factored or by iteration. */
class PanelSystem {
  private readonly factors: LuFactors | null;

  constructor(
    private readonly matrix: Float64Array,
    size: number,
    largestFactored: number,
  ) {
    this.factors = size <= largestFactored ? factorInPlace(matrix, size) : null;
  }

  solve(rightSide: Float64Array): Float64Array {
    if (this.factors !== null) return solveFactored(this.factors, rightSide);
    const solved = solveByGmres(this.matrix, rightSide, { maximumSteps: 200 });
    if (!solved.ok) throw new Error(solved.problem.message);
    return solved.value;
  }
}
