import type { DragBand } from "../../../shared/engine/trust/dragInterval";
import type { PuckDragRow, PuckIndex, PuckResult } from "../../../shared/jobs/puck/puckResult";
import { attitudeTexts } from "../plots/puckDragFigure";
import { changeText } from "./figureRows";

/** Three digits, without an exponent for the sizes that drag has. */
export function figure(value: number, digits = 3): string {
  return String(Number(value.toPrecision(digits)));
}

/** "0.52 (0.2 to 0.9)". */
export function bandText({ low, expected, high }: DragBand, factor = 1): string {
  return `${figure(expected * factor)} (${figure(low * factor)} to ${figure(high * factor)})`;
}

/** A change in whole per cent with its sign, "-32 %"; none on what rounds to nothing. */
export function percentText(value: number): string {
  const whole = Math.round(Math.abs(value));
  return `${whole === 0 ? "" : value < 0 ? "−" : "+"}${whole}\u00a0%`;
}

/** Drag of one attitude at one condition, as the table prints it. */
export interface AttitudeRow {
  readonly orientation: PuckDragRow["orientation"];
  readonly attitude: string;
  readonly coefficient: string;
  readonly area: string;
  readonly dragArea: string;
  readonly force: string;
  /** Best drag over the baseline's. */
  readonly change: string;
  readonly applicability: string;
}

export function attitudeRows(
  candidate: PuckResult,
  baseline: PuckResult,
  turbulencePercent: number,
  speed: number,
): AttitudeRow[] {
  const at = ({ drag }: PuckResult) =>
    drag.filter((row) => row.turbulencePercent === turbulencePercent && row.speedMetresPerSecond === speed);
  const others = at(baseline);
  return at(candidate).map((row) => {
    const other = others.find(
      ({ orientation, tiltDegrees, floorGapMetres }) =>
        orientation === row.orientation &&
        tiltDegrees === row.tiltDegrees &&
        (orientation !== "overFloor" || floorGapMetres === row.floorGapMetres),
    );
    return {
      orientation: row.orientation,
      attitude: attitudeText(row),
      coefficient: bandText(row.dragCoefficient),
      area: `${row.referenceArea}, ${figure(1e4 * row.referenceAreaSquareMetres, 4)} cm²`,
      dragArea: bandText(row.dragAreaSquareMetres, 1e4),
      force: bandText(row.dragNewtons),
      change:
        other === undefined ? "" : changeText(row.dragAreaSquareMetres.expected, other.dragAreaSquareMetres.expected),
      applicability: row.applicability,
    };
  });
}

function attitudeText({ orientation, tiltDegrees, floorGapMetres }: PuckDragRow): string {
  if (tiltDegrees !== null) return `tilted ${figure(tiltDegrees)}° between edge-on and face-on`;
  return floorGapMetres === null || floorGapMetres === 0
    ? `${attitudeTexts[orientation]}${floorGapMetres === 0 ? " on the floor" : ""}`
    : `edge-on, flat ${figure(1000 * floorGapMetres)} mm above the floor`;
}

/** The weighted index of one puck against the baseline, as text. */
export interface IndexRow {
  readonly name: string;
  readonly expected: string;
  readonly independent: string;
  readonly shared: string;
  readonly sentence: string;
  readonly verdict: PuckIndex["verdict"];
}

export function indexRows(pucks: readonly PuckResult[]): IndexRow[] {
  return pucks.flatMap(({ name, comparisons }) => {
    const [comparison] = comparisons;
    if (comparison === undefined) return [];
    const { index, indexWithCommonError, sentence, verdict } = comparison.overall;
    const spread = (band: DragBand) => `${percentText(100 * (band.low - 1))} to ${percentText(100 * (band.high - 1))}`;
    return [
      {
        name,
        expected: percentText(100 * (index.expected - 1)),
        independent: spread(index),
        shared: spread(indexWithCommonError),
        sentence,
        verdict,
      },
    ];
  });
}
