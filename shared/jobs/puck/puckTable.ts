import { bandText, rangeText } from "../../tables/bandText";
import { type TextColumn, textTable } from "../../tables/textTable";
import { type Orientation, orientations } from "./drag/orientationIndex";
import { floorTables } from "./floorTable";
import type { MotionResult } from "./motion/puckMotion";
import type { PuckDragRow, PuckIndex, PuckResult } from "./puckResult";
import { statesTables } from "./statesTable";

/** The pucks of a case as text for people: figures, rules, drag, motions, and last of all the verdicts. */
export function puckTable(pucks: readonly PuckResult[]): string {
  const notes = [...new Set(pucks.flatMap((puck) => puck.notes))];
  return [
    "PUCKS",
    ...textTable(figureColumns, pucks),
    ...ruleLines(pucks),
    ...dragTables(pucks),
    ...statesTables(pucks),
    ...floorTables(pucks),
    ...motionTables(pucks),
    "",
    ...notes.map((note) => `Note: ${note}`),
    ...verdictLines(pucks),
    "",
  ].join("\n");
}

const figureColumns: readonly TextColumn<PuckResult>[] = [
  { title: "puck", unit: "", isText: true, cell: ({ name }) => name },
  { title: "", unit: "", isText: true, cell: ({ role }) => role },
  { title: "diameter", unit: "mm", cell: ({ figures }) => scaled(figures.diameterMetres, 1e3, 2) },
  { title: "thickness", unit: "mm", cell: ({ figures }) => scaled(figures.thicknessMetres, 1e3, 2) },
  { title: "edge r", unit: "mm", cell: ({ figures }) => scaled(figures.edgeRadiusMetres, 1e3, 2) },
  { title: "mass", unit: "kg", cell: ({ figures }) => scaled(figures.massKilograms, 1, 3) },
  { title: "weight*", unit: "N", cell: ({ figures }) => scaled(figures.weightInFluidNewtons, 1, 2) },
  { title: "cover", unit: "mm", cell: ({ figures }) => scaled(figures.coverMetres, 1e3, 2) },
  {
    title: "I axis",
    unit: "kg cm2",
    cell: ({ figures }) => scaled(figures.momentOfInertiaAxisKilogramSquareMetres, 1e4, 3),
  },
  {
    title: "I diam.",
    unit: "kg cm2",
    cell: ({ figures }) => scaled(figures.momentOfInertiaDiameterKilogramSquareMetres, 1e4, 3),
  },
  { title: "A edge-on", unit: "cm2", cell: ({ figures }) => scaled(figures.frontalAreaEdgeOnSquareMetres, 1e4, 2) },
  { title: "A face-on", unit: "cm2", cell: ({ figures }) => scaled(figures.frontalAreaFaceOnSquareMetres, 1e4, 2) },
  { title: "contact", unit: "cm2", cell: ({ figures }) => scaled(figures.floorContactAreaSquareMetres, 1e4, 2) },
];

const ruleWords = {
  pass: "inside, tolerances included",
  fail: "OUTSIDE",
  onlyIfMadeBetter: "inside only if made better than its tolerances",
  notDetermined: "not determined",
} as const;

function ruleLines(pucks: readonly PuckResult[]): string[] {
  const judged = pucks.flatMap(({ name, rules }) => (rules === null ? [] : [{ name, rules }]));
  if (judged.length === 0) return ["* weight less buoyancy"];
  const [{ rules: first }] = judged;
  const lines = ["* weight less buoyancy", "", `RULES: ${first.ruleSet}, ${first.date}. ${first.notice}`];
  for (const { name, rules } of judged) {
    const made =
      rules.made === null
        ? ""
        : `; ${percent(rules.made.share)} of ${rules.made.samples} made at random inside (95 % interval ${percent(rules.made.shareLow)} to ${percent(rules.made.shareHigh)})`;
    lines.push(`${name}: ${ruleWords[rules.verdict]}${made}`);
    for (const rule of rules.rules) if (rule.verdict !== "pass") lines.push(`  ${rule.message}`);
  }
  return lines;
}

interface DragLine {
  readonly name: string;
  readonly speed: number;
  readonly byOrientation: Readonly<Record<Orientation, PuckDragRow>>;
  readonly index: PuckIndex | null;
}

const dragColumns: readonly TextColumn<DragLine>[] = [
  { title: "puck", unit: "", isText: true, cell: ({ name }) => name },
  { title: "U", unit: "m/s", cell: ({ speed }) => String(Number(speed.toPrecision(4))) },
  { title: "Re (D)", unit: "", cell: ({ byOrientation }) => byOrientation.upright.reynoldsOnDiameter.toExponential(2) },
  ...orientations.flatMap((orientation): TextColumn<DragLine>[] => [
    {
      title: `Cd ${orientationWords(orientation)}`,
      unit: "expected (band)",
      cell: ({ byOrientation }) => bandText(byOrientation[orientation].dragCoefficient, 2),
    },
    {
      title: "drag",
      unit: "N",
      cell: ({ byOrientation }) => byOrientation[orientation].dragNewtons.expected.toFixed(2),
    },
  ]),
  { title: "index", unit: "over baseline", cell: ({ index }) => (index === null ? "-" : bandText(index.index, 2)) },
  {
    title: "shared errors",
    unit: "",
    cell: ({ index }) => (index === null ? "-" : rangeText(index.indexWithCommonError, 2)),
  },
];

function orientationWords(orientation: Orientation): string {
  return orientation === "faceOn" ? "face-on" : orientation;
}

/** One table per turbulence; tilts only stand in the JSON and CSV, gaps to the floor in a table of their own. */
function dragTables(pucks: readonly PuckResult[]): string[] {
  const turbulences = [...new Set(pucks.flatMap(({ drag }) => drag.map((row) => row.turbulencePercent)))];
  return turbulences.flatMap((turbulence) => {
    const lines = pucks.flatMap((puck) => dragLines(puck, turbulence));
    const title = `DRAG at turbulence ${turbulence} %. Cd upright and flat on the frontal area edge-on, face-on on the face area; upright and flat are edge-on to the stream, ${flatText(pucks)}. Index: orientation-weighted drag over the first baseline's.`;
    return ["", title, ...textTable(dragColumns, lines)];
  });
}

function flatText(pucks: readonly PuckResult[]): string {
  const gap = pucks.flatMap(({ drag }) => drag).find(({ orientation }) => orientation === "flat")?.floorGapMetres;
  if (gap === undefined || gap === null) return "both in open water";
  return gap === 0 ? "flat on the floor" : `flat ${Number((1000 * gap).toPrecision(4))} mm above the floor`;
}

function dragLines({ name, drag, comparisons }: PuckResult, turbulence: number): DragLine[] {
  const rows = drag.filter(({ turbulencePercent }) => turbulencePercent === turbulence);
  return [...new Set(rows.map((row) => row.speedMetresPerSecond))].flatMap((speed) => {
    const own = (orientation: Orientation) =>
      rows.find((row) => row.speedMetresPerSecond === speed && row.orientation === orientation);
    const [upright, flat, faceOn] = [own("upright"), own("flat"), own("faceOn")];
    if (upright === undefined || flat === undefined || faceOn === undefined) return [];
    const index = comparisons[0]?.conditions.find(
      (one) => one.turbulencePercent === turbulence && one.speedMetresPerSecond === speed,
    );
    return [{ name, speed, byOrientation: { upright, flat, faceOn }, index: index ?? null }];
  });
}

const figureWords: Readonly<Record<string, string>> = {
  distanceMetres: "distance, m",
  rangeMetres: "range, m",
  greatestHeightMetres: "height, m",
  timeSeconds: "time, s",
  endSpeedMetresPerSecond: "end speed, m/s",
  terminalSpeedMetresPerSecond: "terminal speed, m/s",
};

/** One table per motion and turbulence. */
function motionTables(pucks: readonly PuckResult[]): string[] {
  const all = pucks.flatMap(({ name, motions }) => motions.map((motion) => ({ name, motion })));
  const titles = [...new Set(all.map(({ motion }) => motionTitle(motion)))];
  return titles.flatMap((title) => {
    const rows = all.filter(({ motion }) => motionTitle(motion) === title);
    const keys = Object.keys(rows[0].motion.figures);
    const columns: TextColumn<(typeof rows)[number]>[] = [
      { title: "puck", unit: "", isText: true, cell: ({ name }) => name },
      ...keys.map((key) => ({
        title: figureWords[key] ?? key,
        unit: "expected (band)",
        cell: ({ motion }: (typeof rows)[number]) => bandText(motion.figures[key], 2),
      })),
      { title: "ends at", unit: "", isText: true, cell: ({ motion }) => motion.ended },
    ];
    return ["", title, ...textTable(columns, rows)];
  });
}

function motionTitle({ motion, name, turbulencePercent }: MotionResult): string {
  return `MOTION: ${motion}${name === null ? "" : `, ${name}`}, drag at turbulence ${turbulencePercent} %`;
}

function verdictLines(pucks: readonly PuckResult[]): string[] {
  const comparisons = pucks.flatMap((puck) => puck.comparisons.map((comparison) => ({ puck, comparison })));
  const failures = pucks.filter(({ problem }) => problem !== null);
  const lines = failures.map(({ name, problem }) => `FAILED: ${name}: ${problem}`);
  if (comparisons.length === 0) return lines;
  lines.push("", "VERDICTS, averaged over turbulences and index speeds");
  for (const { comparison } of comparisons)
    lines.push(`${comparison.overall.sentence} (baseline: ${comparison.baseline})`);
  lines.push(summarySentence(pucks));
  return lines;
}

/** How many candidates beat a baseline by more than the band, in one sentence. */
export function summarySentence(pucks: readonly PuckResult[]): string {
  const candidates = pucks.filter(({ role }) => role === "candidate");
  const beating = candidates.filter(({ comparisons }) => comparisons.some((one) => one.beatsBaselineByMoreThanBand));
  if (beating.length === 0) {
    return candidates.length === 1
      ? "The candidate is not shown to beat a baseline by more than the band."
      : `None of ${candidates.length} candidates is shown to beat a baseline by more than the band.`;
  }
  return `${beating.length} of ${candidates.length} candidates beat a baseline by more than the band: ${beating.map(({ name }) => name).join("; ")}.`;
}

function scaled(value: number | null, factor: number, digits: number): string {
  return value === null ? "-" : (value * factor).toFixed(digits);
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}
