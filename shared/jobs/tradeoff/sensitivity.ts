import { problem, type Result, success } from "../../result";
import {
  type DimensionKey,
  dimensionKeys,
  dimensionOf,
  type FigureKey,
  figureKeys,
  type PuckDesign,
  type PuckSpec,
  puckFigures,
  withDimension,
} from "../puck/public";

/** Any further number that follows from a puck, for instance its drag area edge-on from solved sections. */
export interface ExtraFigure {
  readonly key: string;
  readonly of: (spec: PuckSpec) => Result<number>;
}

export interface FigureSensitivity {
  readonly dimension: DimensionKey;
  readonly figure: FigureKey | string;
  readonly nominal: number;
  /** Change of the figure per metre of the dimension, by a central difference. */
  readonly slope: number;
  /** Per cent of the figure per per cent of the dimension; null where either is 0. */
  readonly elasticity: number | null;
  /** Figure with the dimension made `off` too small and too large; null where that puck cannot be made. */
  readonly madeSmaller: number | null;
  readonly madeLarger: number | null;
}

/** Step of the central difference as a share of the dimension. */
const stepShare = 1e-5;

/**
 * How every figure answers to every dimension, and what happens when it is made `off` metres wrong (0.5 mm is 5e-4).
 * The core keeps its size: this is the making of one design, not the choice of another.
 */
export function puckSensitivity(
  design: PuckDesign,
  off: number,
  extraFigures: readonly ExtraFigure[] = [],
): Result<FigureSensitivity[]> {
  if (!(off > 0)) return problem("tradeoff", `off by ${off} m must be above 0`, "off");
  const nominal = allFigures(design.spec, design, extraFigures);
  if (!nominal.ok) return nominal;
  const rows: FigureSensitivity[] = [];
  for (const dimension of dimensionKeys) {
    const size = dimensionOf(design.spec, dimension);
    if (size === null) continue;
    const at = (value: number) => {
      const figures = allFigures(withDimension(design.spec, dimension, value), design, extraFigures);
      return figures.ok ? figures.value : null;
    };
    const step = stepShare * (size === 0 ? design.spec.thicknessMetres : size);
    const [below, above, smaller, larger] = [size - step, size + step, size - off, size + off].map(at);
    for (const [figure, value] of nominal.value) {
      const low = below?.get(figure) ?? value;
      const high = above?.get(figure) ?? value;
      // At the limit of what can be made only one side exists: the difference is then one-sided.
      const width = (below === null ? 0 : step) + (above === null ? 0 : step);
      const slope = width > 0 ? (high - low) / width : 0;
      rows.push({
        dimension,
        figure,
        nominal: value,
        slope,
        elasticity: size === 0 || value === 0 ? null : (slope * size) / value,
        madeSmaller: smaller?.get(figure) ?? null,
        madeLarger: larger?.get(figure) ?? null,
      });
    }
  }
  return success(rows);
}

function allFigures(
  spec: PuckSpec,
  design: PuckDesign,
  extraFigures: readonly ExtraFigure[],
): Result<Map<string, number>> {
  const figures = puckFigures(spec, design.setting);
  if (!figures.ok) return figures;
  const values = new Map<string, number>();
  for (const key of figureKeys) {
    const value = figures.value[key];
    if (value !== null) values.set(key, value);
  }
  for (const { key, of } of extraFigures) {
    const value = of(spec);
    if (!value.ok) return value;
    values.set(key, value.value);
  }
  return success(values);
}
