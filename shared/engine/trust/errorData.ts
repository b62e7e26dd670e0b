import type { ErrorParameters } from "./errorCovariance";
import type { ErrorPoint } from "./errorPoint";
import { conditionLevel, type LevelDatum, type LevelProcess } from "./levelProcess";

/** What the engine's errors are known from, as it is written to a file. */
export interface ErrorData {
  /** The day that the parameters were fitted on. */
  readonly fittedOn: string;
  readonly parameters: ErrorParameters;
  /**
   * One measured error a line: regime, shape, ln Re, log10 ks/D, ln(1 + Tu / 0.1 %), ln(length/height), corner
   * radius/height, ln(measured Cd / the engine's), scatter, source.
   */
  readonly measured: string;
}

const columns = 9;

/** The lines of `measured`, with as many digits as matter. */
export function measuredLines(data: readonly LevelDatum[]): string {
  return data
    .map(({ point, error, scatter, source }) =>
      [
        point.regime,
        point.shape,
        ...[point.logReynolds, point.logRoughness, point.turbulence, point.logLengthToHeight],
        ...[point.cornerRadiusToHeight, error, scatter],
        source,
      ]
        .map((value) => (typeof value === "number" ? String(Number(value.toFixed(4))) : value))
        .join(" "),
    )
    .join("\n");
}

/** The level process of the written data. */
export function checkedLevel({ parameters, measured }: ErrorData): LevelProcess {
  const data = measured
    .trim()
    .split("\n")
    .map((line): LevelDatum => {
      const cells = line.split(" ");
      const [logReynolds, logRoughness, turbulence, logLengthToHeight, cornerRadiusToHeight, error, scatter] = cells
        .slice(2, columns)
        .map(Number);
      const point: ErrorPoint = {
        regime: cells[0] as ErrorPoint["regime"],
        shape: cells[1] as ErrorPoint["shape"],
        ...{ logReynolds, logRoughness, turbulence, logLengthToHeight, cornerRadiusToHeight },
      };
      return { point, error, scatter, source: cells.slice(columns).join(" ") };
    });
  return conditionLevel(data, parameters);
}
