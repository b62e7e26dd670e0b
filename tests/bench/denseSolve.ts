import { LuDecomposition, Matrix } from "ml-matrix";
import { vorticityMatrix } from "../../shared/engine/flow/surfaceKernels";
import { gradeNodes } from "../../shared/engine/geometry/gradedNodes";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import { solveByGmres } from "../../shared/numerics/gmres";
import { factorInPlace, solveFactored } from "../../shared/numerics/lu";
import { requireValue } from "./requireValue";
import { type Timing, timeOf } from "./timing";

export interface DenseSolve extends Timing {
  readonly what: string;
  readonly timesFasterThanLibrary: number;
  readonly libraryMilliseconds: number;
  /** Our own factorization and one right side, for comparison with both. */
  readonly ownFactorizationMilliseconds: number;
  /** Largest difference from the library's solution, over the largest value of it. */
  readonly differenceFromLibrary: number;
}

/**
 * One right side of the full panel equation of a rounded rectangle at 10 degrees, matrix already there: the engine's
 * iterative solver against the library's LU, both from the same matrix in the same run. The engine itself factors up to
 * 640 unknowns, because many right sides follow there, and iterates above.
 */
export function denseSolve(panels: number): DenseSolve {
  const contour = requireValue(
    buildContour({ family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.006 }),
  );
  const nodes = requireValue(gradeNodes(contour, panels));
  const matrix = vorticityMatrix(nodes).data;
  const incidence = (10 * Math.PI) / 180;
  const rightSide = nodes.tangentX.map(
    (tangent, i) => -(Math.cos(incidence) * tangent + Math.sin(incidence) * nodes.tangentY[i]),
  );
  const rows = Array.from({ length: panels }, (_, i) => matrix.slice(i * panels, (i + 1) * panels));
  const libraryMatrix = new Matrix(rows);
  const libraryRight = Matrix.columnVector(rightSide);
  const libraryRepeats = panels > 1000 ? 3 : 7;

  const library = timeOf(() => new LuDecomposition(libraryMatrix).solve(libraryRight), libraryRepeats, 1);
  const ownFactorization = timeOf(
    () => solveFactored(factorInPlace(Float64Array.from(matrix), panels), rightSide),
    libraryRepeats,
    1,
  );
  const timing = timeOf(() => requireValue(solveByGmres(matrix, rightSide)), 15, 3);

  const expected = new LuDecomposition(libraryMatrix).solve(libraryRight).to1DArray();
  const found = requireValue(solveByGmres(matrix, rightSide));
  const largest = expected.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  const difference = expected.reduce((most, value, i) => Math.max(most, Math.abs(value - found[i])), 0);
  return {
    ...timing,
    what: `one right side of the ${panels} x ${panels} panel equation, iterative, against the library's LU; without assembly`,
    timesFasterThanLibrary: library.medianMilliseconds / timing.medianMilliseconds,
    libraryMilliseconds: library.medianMilliseconds,
    ownFactorizationMilliseconds: ownFactorization.medianMilliseconds,
    differenceFromLibrary: difference / largest,
  };
}
