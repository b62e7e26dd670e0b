import { publishedSmoothCylinderCurves } from "../../../../shared/engine/reference/smoothCylinderCurve";
import type { ResultRow } from "../../../../shared/engine/section/resultRow";
import type { MeasuredCorrection } from "../../../../shared/jobs/evidence/carriedCorrection";
import type { LiveCurves } from "../../../../workers/solverApi";
import { carriedCurves } from "../../compare/carriedFigures";
import { type CurveGroup, curvesOverReynolds, curvesOverRoughness } from "../../plots/curveRow";
import { dragCurveFigure } from "../../plots/dragCurveFigure";
import { type LayerQuantity, layerFigure } from "../../plots/layerFigure";
import type { PlotFigure } from "../../plots/plotFigure";
import { type OverlaidState, pressureFigure } from "../../plots/pressureFigure";
import { separationRoughnessFigure } from "../../plots/separationRoughnessFigure";
import { strouhalFigure } from "../../plots/strouhalFigure";
import type { PositionMeasure } from "../../plots/surfacePosition";
import { thinned } from "../../plots/thinned";
import { type Pin, risingState, type Solved } from "../../section/solved";
import type { Palette } from "../../style/palette";

export const presentName = "this design";

/** Curves of a case beyond this number would only hide each other. */
const mostCaseCurves = 12;
const mostReynoldsNumbers = 6;

interface SolvedBench {
  readonly solved: Solved | null;
  readonly pins: readonly Pin[];
}

interface CurveBench {
  readonly curves: LiveCurves | null;
  readonly pins: readonly Pin[];
}

/** The present design and the pins, as the surface plots overlay them. */
export function overlaidStates({ solved, pins }: SolvedBench): OverlaidState[] {
  const named: (readonly [string, Solved])[] = [
    ...(solved === null ? [] : [[presentName, solved] as const]),
    ...pins.flatMap((pin) => (pin.solved === null ? [] : [[pin.name, pin.solved] as const])),
  ];
  return named.flatMap(([name, { solution }]) => {
    const state = risingState(solution);
    if (state === null) return [];
    return [
      { name, state, points: solution.nodes, incidence: solution.incidence, referenceWidth: solution.referenceWidth },
    ];
  });
}

export function boardPressure(bench: SolvedBench, measure: PositionMeasure, palette: Palette): PlotFigure | null {
  const overlaid = overlaidStates(bench);
  return overlaid.length > 0 ? pressureFigure(overlaid, measure, palette) : null;
}

export function boardLayer(bench: SolvedBench, quantity: LayerQuantity, palette: Palette): PlotFigure | null {
  const overlaid = overlaidStates(bench);
  return overlaid.length > 0 ? layerFigure(overlaid, quantity, palette) : null;
}

export function boardDragCurve(
  bench: SolvedBench & CurveBench,
  caseRows: readonly ResultRow[],
  palette: Palette,
  correction: MeasuredCorrection | null = null,
): PlotFigure {
  const { solved } = bench;
  const own = bench.curves ? branches(presentName, bench.curves.overReynolds) : [];
  const carried = correction === null || solved === null ? [] : carriedCurves(correction, solved, own);
  const state = solved === null ? null : risingState(solved.solution);
  return dragCurveFigure(
    {
      curves: [...overReynolds(bench, caseRows), ...carried],
      published: publishedSmoothCylinderCurves,
      workingPoint:
        solved === null || state === null
          ? null
          : {
              name: presentName,
              reynolds: solved.solution.condition.reynolds,
              dragCoefficient: state.dragCoefficient,
            },
    },
    palette,
  );
}

export function boardStrouhal(bench: CurveBench, caseRows: readonly ResultRow[], palette: Palette): PlotFigure | null {
  const curves = overReynolds(bench, caseRows);
  return curves.length > 0 ? strouhalFigure(curves, palette) : null;
}

export function boardSeparation(
  bench: CurveBench,
  caseRows: readonly ResultRow[],
  palette: Palette,
): PlotFigure | null {
  const rising = caseRows.filter((row) => row.branch === "rising");
  const curves: CurveGroup[] = [
    ...(bench.curves ? [{ name: presentName, rows: bench.curves.overRoughness }] : []),
    ...bench.pins.flatMap((pin) => (pin.curves ? [{ name: pin.name, rows: pin.curves.overRoughness }] : [])),
    ...thinned(curvesOverRoughness(rising), mostReynoldsNumbers),
  ];
  return curves.length > 0 ? separationRoughnessFigure(curves, palette) : null;
}

/** The live curve and the pins' first, then those of the case. */
function overReynolds(bench: CurveBench, caseRows: readonly ResultRow[]): CurveGroup[] {
  return [
    ...(bench.curves ? branches(presentName, bench.curves.overReynolds) : []),
    ...bench.pins.flatMap((pin) => (pin.curves ? branches(pin.name, pin.curves.overReynolds) : [])),
    ...thinned(curvesOverReynolds(caseRows), mostCaseCurves).map(({ name, rows }) => ({ name: `case: ${name}`, rows })),
  ];
}

function branches(name: string, rows: readonly ResultRow[]): CurveGroup[] {
  const falling = rows.filter((row) => row.branch === "falling");
  return [
    { name, rows: rows.filter((row) => row.branch === "rising") },
    ...(falling.length > 0 ? [{ name: `${name}, falling speed`, rows: falling }] : []),
  ];
}
