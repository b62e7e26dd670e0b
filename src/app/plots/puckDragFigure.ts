import type { Data } from "plotly.js-dist-min";
import type { DragBand } from "../../../shared/engine/trust/dragInterval";
import type { PuckDragRow, PuckResult } from "../../../shared/jobs/puck/puckResult";
import type { Palette } from "../style/palette";
import type { UnitChoice } from "../units/units";
import { figureLayout, type PlotFigure } from "./plotFigure";
import { bandTrace } from "./puckBand";
import { puckStyle } from "./puckStyle";

/** What the drag plot can show; the coefficient is on the area that its rows name. */
export const puckDragQuantities = {
  area: {
    label: "drag area",
    unit: "cm²",
    of: (row: PuckDragRow): DragBand => scaled(row.dragAreaSquareMetres, 1e4),
  },
  coefficient: { label: "drag coefficient Cd", unit: "–", of: (row: PuckDragRow): DragBand => row.dragCoefficient },
  force: { label: "drag", unit: "N", of: (row: PuckDragRow): DragBand => row.dragNewtons },
} as const;

export type PuckDragQuantity = keyof typeof puckDragQuantities;

export const attitudeTexts: Readonly<Record<PuckDragRow["orientation"], string>> = {
  upright: "edge-on, upright in open water",
  flat: "edge-on, lying flat",
  faceOn: "face-on",
  tilted: "tilted",
  overFloor: "edge-on, flat at the gaps asked for",
};

export interface PuckDragInput {
  readonly pucks: readonly Pick<PuckResult, "name" | "drag">[];
  readonly orientation: PuckDragRow["orientation"];
  readonly turbulencePercent: number;
  readonly quantity: PuckDragQuantity;
  readonly speedUnit: UnitChoice;
}

/** Drag of several pucks over speed in one attitude, expected values with their bands. */
export function puckDragFigure(input: PuckDragInput, palette: Palette): PlotFigure {
  const { orientation, turbulencePercent, speedUnit } = input;
  const quantity = puckDragQuantities[input.quantity];
  const data: Data[] = [];
  const rows: (string | number | null)[][] = [];
  const areas = new Set<string>();
  const highest: number[] = [];
  input.pucks.forEach((puck, i) => {
    const style = puckStyle(palette, i);
    const own = puck.drag.filter(
      (row) => row.orientation === orientation && row.turbulencePercent === turbulencePercent,
    );
    const variants = [...new Set(own.map(variantText))];
    for (const variant of variants) {
      const lines = own.filter((row) => variantText(row) === variant);
      const name = variants.length === 1 ? puck.name : `${puck.name}, ${variant}`;
      const x = lines.map((row) => speedUnit.fromSi(row.speedMetresPerSecond));
      const bands = lines.map(quantity.of);
      if (lines.length > 1) {
        data.push(
          bandTrace(
            name,
            { x, y: bands.map(({ low }) => low) },
            { x, y: bands.map(({ high }) => high) },
            style.color,
            input.pucks.length * variants.length,
          ),
        );
      }
      data.push({
        type: "scatter",
        mode: "lines+markers",
        name,
        x,
        y: bands.map(({ expected }) => expected),
        hovertemplate: `%{x:.3g} ${speedUnit.symbol}<br>%{y:.3g} ${quantity.unit}<extra>%{fullData.name}</extra>`,
        line: { color: style.color, dash: style.dash, width: 2.5 },
        marker: { color: style.color, symbol: style.symbol, size: 7 },
      });
      lines.forEach((row, k) => {
        const { low, expected, high } = bands[k];
        areas.add(row.referenceArea);
        highest.push(high);
        rows.push([name, x[k], row.reynoldsOnDiameter, expected, low, high, row.referenceArea, row.applicability]);
      });
    }
  });
  const onArea = [...areas].join(", ");
  return {
    key: `puck-drag-${orientation}`,
    title: `Drag ${attitudeTexts[orientation]}`,
    caption: `${input.quantity === "coefficient" ? `Cd on the ${onArea}, which differs from puck to puck.` : "Drag area is drag over dynamic pressure: it compares pucks whose reference areas differ."} Bands hold the spread of the methods and sources; turbulence ${Number(turbulencePercent.toPrecision(3))} %.`,
    data,
    layout: figureLayout(
      palette,
      { title: `speed (${speedUnit.symbol})`, values: rows.map((row) => row[1] as number), fromZero: true },
      { title: `${quantity.label} (${quantity.unit})`, values: highest, fromZero: true },
    ),
    table: {
      columns: [
        "puck",
        `speed, ${speedUnit.symbol}`,
        "Reynolds number on the diameter",
        `${quantity.label}, ${quantity.unit}`,
        "lower bound",
        "upper bound",
        "reference area",
        "applicability",
      ],
      rows,
    },
  };
}

function scaled({ low, expected, high }: DragBand, factor: number): DragBand {
  return { low: low * factor, expected: expected * factor, high: high * factor };
}

/** What tells rows of one attitude, puck and speed apart: the tilt or the gap to the floor. */
function variantText({ tiltDegrees, floorGapMetres }: PuckDragRow): string {
  if (tiltDegrees !== null) return `${Number(tiltDegrees.toPrecision(3))}°`;
  return floorGapMetres === null ? "" : `gap ${Number((1000 * floorGapMetres).toPrecision(3))} mm`;
}
