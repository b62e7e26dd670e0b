import type { DragBand } from "../../../shared/engine/trust/dragInterval";
import { type FigureKey, figureCatalogue, figureKeys } from "../../../shared/jobs/puck/body/figureCatalogue";
import { dimensionTable } from "../../../shared/jobs/puck/body/puckDimension";
import type { FigureSensitivity } from "../../../shared/jobs/tradeoff/sensitivity";
import type { DragSensitivity } from "../../../shared/jobs/tradeoff/tradeoffMember";
import { percentText } from "./dragTexts";
import { changeText, shownFigure } from "./figureRows";

/** How one figure answers to one dimension, as the table prints it. */
export interface SensitivityRow {
  readonly dimension: string;
  readonly figure: string;
  readonly elasticity: string;
  readonly madeSmaller: string;
  readonly madeLarger: string;
}

/** The rows that say something: those whose figure changes by more than a hundredth of a per cent. */
export function sensitivityRows(rows: readonly FigureSensitivity[], figures: readonly string[]): SensitivityRow[] {
  return rows
    .filter((row) => figures.includes(row.figure))
    .filter(({ elasticity, nominal, madeSmaller, madeLarger }) => {
      const moves = (value: number | null) => value !== null && Math.abs(value - nominal) > 1e-4 * Math.abs(nominal);
      return (elasticity !== null && Math.abs(elasticity) > 1e-4) || moves(madeSmaller) || moves(madeLarger);
    })
    .map(({ dimension, figure, nominal, elasticity, madeSmaller, madeLarger }) => {
      const made = (value: number | null) => {
        if (value === null) return "cannot be made";
        const change = changeText(value, nominal);
        return `${shown(figure, value)}${change === "" ? "" : ` (${change})`}`;
      };
      return {
        dimension: dimensionTable[dimension].label,
        figure: figureCatalogue[figure as FigureKey].label,
        elasticity: elasticity === null ? "–" : `${Number(elasticity.toPrecision(3))} %`,
        madeSmaller: made(madeSmaller),
        madeLarger: made(madeLarger),
      };
    });
}

/** The drag index against the baseline, by how wrong each dimension is made. */
export function dragSensitivityRows(rows: readonly DragSensitivity[], nominalIndex: number): SensitivityRow[] {
  const made = (band: DragBand | null) =>
    band === null
      ? "cannot be made"
      : `${percentText(100 * (band.expected - 1))} (${percentText(100 * (band.low - 1))} to ${percentText(100 * (band.high - 1))})`;
  return rows.map(({ dimension, nominalMetres, slope, madeSmaller, madeLarger }) => ({
    dimension: dimensionTable[dimension].label,
    figure: "drag index",
    elasticity: slope === null ? "–" : `${Number(((slope * nominalMetres) / nominalIndex).toPrecision(3))} %`,
    madeSmaller: made(madeSmaller),
    madeLarger: made(madeLarger),
  }));
}

function shown(figure: string, value: number): string {
  return (figureKeys as readonly string[]).includes(figure)
    ? shownFigure(figure as FigureKey, value)
    : String(Number(value.toPrecision(4)));
}
