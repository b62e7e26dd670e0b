import type { DragBand } from "../../engine/trust/dragInterval";
import { type TextColumn, textTable } from "../../tables/textTable";
import { blockageMethodWords } from "./blockage";
import type { TunnelPlan } from "./plannedTest";
import type { PredictedCrisis } from "./predictedDrag";
import type { SimilarityRow } from "./similarity";
import type { TunnelPoint, TunnelResult } from "./tunnelResult";
import { wakeMethodWords } from "./wakeSurvey";

/** A tunnel test as text for people. Lines end in a line feed. */
export function tunnelTable(result: TunnelResult): string {
  const { similarity: similar } = result;
  return [
    `TUNNEL TEST: ${result.model}`,
    `Tunnel: ${result.facility}. Coefficients on the ${result.referenceArea} (${short(result.referenceAreaSquareMetres * 1e4)} cm2), Re on the ${result.referenceLength} (${short(result.referenceLengthMetres * 1e3)} mm), at the model's size.`,
    ...result.cautions.map((caution) => `Caution: ${caution}`),
    "",
    "Equal Reynolds numbers",
    `Tunnel speed = ${short(similar.speedRatio)} x speed at full size; roughness of the model ${short(similar.modelSandGrainRoughnessMetres * 1e6)} um for equal ks/D; turbulence ${short(similar.fullScaleTurbulencePercent)} % to match, the tunnel has ${short(similar.tunnelTurbulencePercent)} %; blockage ${short(100 * similar.blockageRatio)} %.`,
    ...similar.crisesAtFullScaleTurbulence.map((crisis) => crisisLine(crisis, "at full size")),
    ...similar.crisesAtTunnelTurbulence.map((crisis) => crisisLine(crisis, "in the tunnel")),
    ...textTable(similarityColumns, similar.rows),
    ...similar.warnings.map((warning) => `Warning: ${warning}`),
    ...rowWarnings(similar.rows),
    ...(result.plan === null ? [] : planLines(result.plan)),
    ...reductionLines(result),
    ...wakeLines(result),
    ...tapLines(result),
    ...(result.notes.length === 0 ? [] : ["", ...result.notes.map((note) => `Note: ${note}`)]),
    ...result.problems.map((problem) => `Problem: ${problem}`),
    "",
  ].join("\n");
}

const similarityColumns: readonly TextColumn<SimilarityRow>[] = [
  { title: "U full", unit: "m/s", cell: (row) => short(row.fullScaleSpeedMetresPerSecond) },
  { title: "Re", unit: "", cell: (row) => row.fullScaleReynolds.toExponential(2) },
  { title: "U equal Re", unit: "m/s", cell: (row) => short(row.wantedSpeedMetresPerSecond) },
  { title: "U tunnel", unit: "m/s", cell: (row) => short(row.tunnelSpeedMetresPerSecond) },
  { title: "Re tunnel", unit: "", cell: (row) => row.tunnelReynolds.toExponential(2) },
  { title: "Mach", unit: "", cell: (row) => (row.mach === null ? "-" : row.mach.toFixed(3)) },
  { title: "q", unit: "Pa", cell: (row) => short(row.dynamicPressurePascals) },
  { title: "Cd expected", unit: "expected (band)", cell: (row) => band(row.predictedDragCoefficient) },
  { title: "force", unit: "N, expected (band)", cell: (row) => band(row.expectedForceNewtons) },
  {
    title: "steps",
    unit: "of balance",
    cell: (row) => (row.resolutionSteps === null ? "-" : short(row.resolutionSteps)),
  },
];

function crisisLine({ of, rising, falling, factor }: PredictedCrisis, where: string): string {
  return `Drag crisis of the ${of} ${where}: Re ${rising.toExponential(2)} rising, ${falling.toExponential(2)} falling, within a factor ${short(factor)}.`;
}

/** Each warning once, with the speeds that it is for. */
function rowWarnings(rows: readonly SimilarityRow[]): string[] {
  const found = new Map<string, number[]>();
  for (const { warnings, fullScaleSpeedMetresPerSecond } of rows) {
    for (const warning of warnings) found.set(warning, [...(found.get(warning) ?? []), fullScaleSpeedMetresPerSecond]);
  }
  return [...found].map(
    ([warning, speeds]) => `Warning (${speeds.map(short).join(", ")} m/s at full size): ${warning}`,
  );
}

function planLines(plan: TunnelPlan): string[] {
  return [
    "",
    `Plan: ${plan.runs.length} runs, about ${short(plan.minutes / 60)} h, order ${plan.order}${plan.order === "randomised" ? ` (seed ${plan.seed})` : ""}; the run sheet comes by "npm run sheets"`,
    ...textTable(
      [
        { title: "U", unit: "m/s", cell: (row) => short(row.speedMetresPerSecond) },
        { title: "Re", unit: "", cell: (row) => row.reynolds.toExponential(2) },
        { title: "force", unit: "N, expected (band)", cell: (row) => band(row.expectedForceNewtons) },
        { title: "repeats", unit: "", cell: (row) => String(row.repeats) },
        {
          title: "half-width",
          unit: "% of mean",
          cell: (row) => (row.halfWidthPercent === null ? "-" : short(row.halfWidthPercent)),
        },
      ],
      plan.speeds,
    ),
    ...plan.notes.map((note) => `Note: ${note}`),
  ];
}

function reductionLines({ reduction }: TunnelResult): string[] {
  if (reduction === null) return [];
  const [first] = reduction.points;
  const coverage = first === undefined ? "" : `${short(100 * first.firstOrder.coverage)} %`;
  return [
    "",
    `Reduced runs: ${reduction.zeroCount} zeros (largest step ${short(reduction.largestZeroStepNewtons)} N), ${reduction.tareReadings} readings of the support, blockage ${short(100 * reduction.blockageRatio)} %, reported with ${blockageMethodWords[reduction.correction]}; U is expanded (${coverage})`,
    ...textTable(pointColumns, reduction.points),
    ...Object.entries(reduction.ranges).map(
      ([method, { isInRange, reason }]) =>
        `${blockageMethodWords[method as keyof typeof blockageMethodWords]}: ${isInRange === null ? "no meaning here" : isInRange ? "in its range" : "outside its range"}: ${reason}.`,
    ),
    "Uncertainty by share of the variance, %",
    ...shareLines(reduction.points),
    ...reduction.notes.map((note) => `Note: ${note}`),
  ];
}

const pointColumns: readonly TextColumn<TunnelPoint>[] = [
  { title: "speed", unit: "", isText: true, cell: ({ direction }) => direction },
  { title: "U", unit: "m/s", cell: (row) => short(row.speedMetresPerSecond) },
  { title: "n", unit: "", cell: (row) => String(row.repeats) },
  { title: "net force", unit: "N", cell: (row) => short(row.netForceNewtons) },
  { title: "Re", unit: "", cell: (row) => row.reynolds.toExponential(3) },
  { title: "Cd", unit: "", cell: (row) => row.dragCoefficient.toFixed(4) },
  { title: "U(Cd)", unit: "", cell: (row) => row.firstOrder.expandedUncertainty.toFixed(4) },
  { title: "nu eff", unit: "", cell: (row) => degreesText(row.firstOrder.effectiveDegreesOfFreedom) },
  {
    title: "Monte Carlo",
    unit: "",
    cell: ({ monteCarlo }) =>
      monteCarlo === null ? "-" : `${monteCarlo.low.toFixed(4)}-${monteCarlo.high.toFixed(4)}`,
  },
  { title: "no corr.", unit: "Cd", cell: (row) => corrected(row, "none") },
  { title: "Maskell", unit: "Cd", cell: (row) => corrected(row, "maskell") },
  { title: "Allen & V.", unit: "Cd", cell: (row) => corrected(row, "allenVincenti") },
  { title: "predicted", unit: "expected (band)", cell: (row) => band(row.predictedDragCoefficient) },
];

function corrected({ corrections }: TunnelPoint, wanted: string): string {
  return corrections.find(({ method }) => method === wanted)?.dragCoefficient.toFixed(4) ?? "-";
}

/** A table of shares: one line for every part, one column for every point. */
function shareLines(points: readonly TunnelPoint[]): string[] {
  if (points.length === 0) return [];
  const names = points[0].firstOrder.parts.map(({ key, name }) => ({
    key,
    name: key === "repeatability" ? "scatter of repeats" : name,
  }));
  const rows = [
    ...names.map(({ key, name }) => ({
      name,
      shares: points.map(({ firstOrder }) => firstOrder.parts.find((part) => part.key === key)?.share ?? 0),
    })),
    { name: "correlations", shares: points.map(({ firstOrder }) => firstOrder.correlationShare) },
  ].filter(({ shares }) => shares.some((share) => share !== 0));
  return textTable(
    [
      { title: "part", unit: "U, m/s", isText: true, cell: ({ name }) => name },
      ...points.map(
        ({ speedMetresPerSecond, direction }, i): TextColumn<(typeof rows)[number]> => ({
          title: direction,
          unit: short(speedMetresPerSecond),
          cell: ({ shares }) => (100 * shares[i]).toFixed(1),
        }),
      ),
    ],
    rows,
  );
}

function wakeLines({ wakeSurvey }: TunnelResult): string[] {
  if (wakeSurvey === null) return [];
  return [
    "",
    `Wake survey, ${wakeSurvey.points} stations: drag per span on the width`,
    ...wakeSurvey.drags.map(
      ({ method, dragCoefficient, uncertainty }) =>
        `  ${wakeMethodWords[method].padEnd(24)}Cd ${dragCoefficient.toFixed(4)} ± ${uncertainty.expandedUncertainty.toFixed(4)}`,
    ),
    ...wakeSurvey.notes.map((note) => `Note: ${note}`),
  ];
}

function tapLines({ pressureTaps }: TunnelResult): string[] {
  if (pressureTaps === null) return [];
  const { pressureDrag: drag } = pressureTaps;
  return [
    "",
    "Pressure taps",
    ...textTable(
      [
        { title: "tap", unit: "", isText: true, cell: ({ name }) => name },
        { title: "arc", unit: "/ perimeter", cell: ({ arcShare }) => arcShare.toFixed(4) },
        { title: "Cp", unit: "", cell: ({ measured }) => measured.toFixed(3) },
        { title: "U(Cp)", unit: "", cell: ({ expandedUncertainty }) => expandedUncertainty.toFixed(3) },
        { title: "predicted", unit: "", cell: ({ predicted }) => predicted?.toFixed(3) ?? "-" },
        { title: "residual", unit: "", cell: ({ residual }) => residual?.toFixed(3) ?? "-" },
      ],
      pressureTaps.taps,
    ),
    `Drag of the pressures ${drag.value.toFixed(4)}${pressureTaps.isCovered ? ` ± ${drag.expandedUncertainty.toFixed(4)}` : ""}; predicted ${pressureTaps.predictedDrag?.toFixed(4) ?? "-"}, read at the same taps ${pressureTaps.predictedDragAtTaps?.toFixed(4) ?? "-"}.`,
    ...pressureTaps.notes.map((note) => `Note: ${note}`),
  ];
}

function degreesText(degrees: number | null): string {
  return degrees === null || degrees > 999 ? "inf" : String(degrees);
}

function band(value: DragBand | null): string {
  return value === null ? "-" : `${short(value.expected)} (${short(value.low)}-${short(value.high)})`;
}

function short(value: number): string {
  return String(Number(value.toPrecision(3)));
}
