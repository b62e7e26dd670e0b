import { alignedLines, type TextColumn } from "./alignedLines";
import { causeSentence } from "./causeText";
import type { CarriedRow, ComparisonResult, ComparisonRow, SetResult } from "./comparisonResult";
import type { MeasurementKind } from "./measurement";
import type { RegimeBias } from "./regimeBias";

export const kindWords: Readonly<Record<MeasurementKind, string>> = {
  tunnelTest: "tunnel test",
  flowComputation: "flow computation",
  publishedCurve: "published curve",
};

/** What the columns of residuals mean; said once per output. */
export const residualNote =
  "Residual = measured - predicted Cd; En = residual / root of both expanded uncertainties squared (k = 2), beyond 1 the two disagree; U of the measurement is expanded (k = 2), the prediction's band holds nine in ten published values.";

/** Prediction against measurement as text for people. Lines end in a line feed. */
export function comparisonTable({ sets, carried, cautions }: ComparisonResult): string {
  return [
    "Prediction against measurement",
    residualNote,
    ...cautions.map((caution) => `Caution: ${caution}`),
    ...sets.flatMap(setLines),
    ...carriedLines(carried),
    "",
  ].join("\n");
}

function setLines(set: SetResult): string[] {
  return [
    "",
    `${set.name} | ${kindWords[set.kind]} | ${set.section}`,
    `Source: ${set.source}`,
    ...(set.note === null ? [] : [set.note]),
    `Stated on: ${set.referenceText}. Shown: ${set.shownOn}. Predicted at ${settingsText(set)}.`,
    ...set.remarks,
    ...(set.problem === null ? [] : [`Problem: ${set.problem}`]),
    ...alignedLines(set.rows, rowColumns),
    set.verdict,
    ...(set.biases.length === 0
      ? []
      : ["", "Bias by regime of the prediction", ...alignedLines(set.biases, biasColumns)]),
    ...(set.causes.length === 0
      ? []
      : ["", "Likely causes", ...set.causes.map((cause) => `  ${causeSentence(cause)}`)]),
    ...factorLines(set),
  ];
}

/** The settings of a prediction on one line. */
export function settingsText({ settings, design }: Pick<SetResult, "settings" | "design">): string {
  const { turbulencePercent, sandGrainRoughnessRatio, lengthToWidth, blockageRatio } = settings;
  return [
    `Tu ${short(turbulencePercent)} %`,
    `ks/D ${short(sandGrainRoughnessRatio)}`,
    ...(design === "puck"
      ? []
      : [lengthToWidth === null ? "endless" : `free ends, length/width ${short(lengthToWidth)}`]),
    blockageRatio === 0 ? "no walls" : `blockage ${short(100 * blockageRatio)} % in the values`,
  ].join(", ");
}

const rowColumns: readonly TextColumn<ComparisonRow>[] = [
  { title: "Re", cell: (row) => short(row.reynolds, 4) },
  { title: "speed", isText: true, cell: (row) => row.direction ?? "-" },
  { title: "Cd meas.", cell: (row) => row.measuredDragCoefficient.toFixed(3) },
  { title: "U", cell: (row) => row.measuredExpandedUncertainty?.toFixed(3) ?? "-" },
  { title: "Cd pred.", cell: (row) => row.predictedDragCoefficient?.toFixed(3) ?? "-" },
  {
    title: "band",
    cell: (row) =>
      row.predictedLow === null || row.predictedHigh === null
        ? "-"
        : `${row.predictedLow.toFixed(2)}-${row.predictedHigh.toFixed(2)}`,
  },
  { title: "regime", isText: true, cell: (row) => row.regime ?? "-" },
  { title: "residual", cell: (row) => signed(row.residual, 3) },
  { title: "%", cell: (row) => signed(row.residualPercent, 1) },
  { title: "En", cell: (row) => signed(row.normalisedError, 2) },
  { title: "S meas.", cell: (row) => row.measuredStrouhal?.toFixed(3) ?? "-" },
  {
    title: "S pred.",
    cell: (row) => (row.measuredStrouhal === null ? "-" : (row.predictedStrouhal?.toFixed(3) ?? "-")),
  },
  { title: "Cp base meas.", cell: (row) => row.measuredBasePressureCoefficient?.toFixed(2) ?? "-" },
  {
    title: "pred.",
    cell: (row) =>
      row.measuredBasePressureCoefficient === null ? "-" : (row.predictedBasePressureCoefficient?.toFixed(2) ?? "-"),
  },
  { title: "sep. meas. deg", cell: (row) => row.measuredSeparationAngleDegrees?.toFixed(0) ?? "-" },
  {
    title: "pred.",
    cell: (row) =>
      row.measuredSeparationAngleDegrees === null ? "-" : (row.predictedSeparationAngleDegrees?.toFixed(0) ?? "-"),
  },
  {
    title: "",
    isText: true,
    cell: (row) =>
      row.predictedDragCoefficient === null ? "NOT PREDICTED" : row.exceedsBothBands ? "beyond both bands" : "",
  },
];

const biasColumns: readonly TextColumn<RegimeBias>[] = [
  { title: "regime", isText: true, cell: ({ regime }) => regime },
  { title: "points", cell: ({ count }) => String(count) },
  { title: "bias %", cell: ({ bias }) => signed(100 * bias, 1) },
  {
    title: "95 % of the bias",
    cell: ({ low, high }) =>
      low === null || high === null ? "-" : `${signed(100 * low, 1)} to ${signed(100 * high, 1)}`,
  },
  { title: "scatter %", cell: ({ scatter }) => (scatter === null ? "-" : (100 * scatter).toFixed(1)) },
];

function factorLines({ factors, factorsLeftOut }: SetResult): string[] {
  if (factors.length === 0) return [];
  return [
    "",
    "Measured / predicted, that can be carried to designs of the same family",
    ...factors.map(
      ({ regime, factor, expandedUncertainty, count, exceedingCount, from, to }) =>
        `  ${regime}: ${factor.toFixed(3)} ± ${expandedUncertainty.toFixed(3)} (k = 2), ${count} points, Re ${short(from)} to ${short(to)}${exceedingCount === 0 ? "" : `; ${exceedingCount} beyond both bands: look for the cause first`}`,
    ),
    ...factorsLeftOut.map((reason) => `  ${reason}`),
  ];
}

const carriedColumns: readonly TextColumn<CarriedRow>[] = [
  { title: "section", isText: true, cell: ({ section }) => section },
  { title: "Re", cell: ({ reynolds }) => short(reynolds, 4) },
  { title: "branch", isText: true, cell: ({ branch }) => branch },
  { title: "Cd", cell: ({ dragCoefficient }) => dragCoefficient.toFixed(3) },
  { title: "corrected", cell: ({ correctedDragCoefficient }) => correctedDragCoefficient?.toFixed(3) ?? "-" },
  {
    title: "band",
    cell: ({ correctedLow: low, correctedHigh: high }) =>
      low === null || high === null ? "-" : `${low.toFixed(2)}-${high.toFixed(2)}`,
  },
  { title: "", isText: true, cell: ({ label }) => label },
];

function carriedLines(rows: readonly CarriedRow[]): string[] {
  return rows.length === 0
    ? []
    : [
        "",
        "What the measurement teaches of the case's sections (expected, 5 % and 95 %)",
        ...alignedLines(rows, carriedColumns),
      ];
}

function signed(value: number | null, digits: number): string {
  if (value === null) return "-";
  const text = value.toFixed(digits);
  if (Number(text) === 0) return text.replace("-", "");
  return value > 0 ? `+${text}` : text;
}

/** Plain between 0.001 and 99 999, else with an exponent. */
function short(value: number, digits = 3): string {
  if (value === 0) return "0";
  const size = Math.abs(value);
  if (size >= 1e-3 && size < 1e5) return String(Number(value.toPrecision(digits)));
  return value
    .toExponential(digits - 1)
    .replace("e+", "e")
    .replace(/\.?0+e/, "e");
}
