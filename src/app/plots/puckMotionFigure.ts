import type { Data } from "plotly.js-dist-min";
import type { MotionCurve, MotionResult } from "../../../shared/jobs/puck/motion/puckMotion";
import type { PuckResult } from "../../../shared/jobs/puck/puckResult";
import type { Palette } from "../style/palette";
import type { UnitChoice } from "../units/units";
import { figureLayout, type PlotFigure } from "./plotFigure";
import { type BandEdge, bandTrace } from "./puckBand";
import { puckStyle } from "./puckStyle";

export type MotionKind = MotionResult["motion"];

/** What a motion's plot can show over time, and the path that a flick takes. */
export const motionViews = {
  speed: "speed over time",
  distance: "distance over time",
  height: "height over time",
  path: "path through the water",
} as const;

export type MotionView = keyof typeof motionViews;

const motionTitles: Readonly<Record<MotionKind, string>> = {
  slide: "Slide along the floor",
  flick: "Flick through the water",
  sink: "Sink to the floor",
};

/** A motion's heading: its own name behind its kind's, unless that says the same. */
export function motionTitle(motion: MotionKind, name: string): string {
  return name === motion ? motionTitles[motion] : `${motionTitles[motion]}, ${name}`;
}

/** The views that say something of a motion, the first one shown first. */
export const viewsOf: Readonly<Record<MotionKind, readonly MotionView[]>> = {
  slide: ["speed", "distance"],
  flick: ["path", "speed", "height"],
  sink: ["speed", "height"],
};

export interface PuckMotionInput {
  readonly pucks: readonly Pick<PuckResult, "name" | "motions">[];
  readonly motion: MotionKind;
  /** Which motion of that kind. */
  readonly name: string;
  readonly view: MotionView;
  readonly turbulencePercent: number;
  readonly lengthUnit: UnitChoice;
  readonly speedUnit: UnitChoice;
}

/** One motion of several pucks: the run with the expected values, and the band between least and most resistance. */
export function puckMotionFigure(input: PuckMotionInput, palette: Palette): PlotFigure {
  const { motion, view, lengthUnit, speedUnit } = input;
  const data: Data[] = [];
  const rows: (string | number | null)[][] = [];
  const xs: number[] = [];
  const ys: number[] = [];
  const points = (curve: MotionCurve): BandEdge => {
    const lengths = (values: readonly number[]) => values.map((value) => lengthUnit.fromSi(value));
    const speeds = () => curve.speedMetresPerSecond.map((value) => speedUnit.fromSi(value));
    const x = view === "path" ? lengths(curve.distanceMetres) : curve.timeSeconds;
    const y = view === "speed" ? speeds() : lengths(view === "distance" ? curve.distanceMetres : curve.heightMetres);
    return { x, y };
  };
  input.pucks.forEach((puck, i) => {
    const style = puckStyle(palette, i);
    const own = puck.motions.find(
      (one) => one.name === input.name && one.motion === motion && one.turbulencePercent === input.turbulencePercent,
    );
    if (own === undefined || own.curves === null) return;
    const expected = points(own.curves.expected);
    const least = points(own.curves.leastResistance);
    const most = points(own.curves.mostResistance);
    data.push(bandTrace(puck.name, most, least, style.color, input.pucks.length), {
      type: "scatter",
      mode: "lines",
      name: puck.name,
      x: [...expected.x],
      y: [...expected.y],
      hovertemplate: "%{x:.3g}<br>%{y:.3g}<extra>%{fullData.name}</extra>",
      line: { color: style.color, dash: style.dash, width: 2.5 },
    });
    for (const edge of [expected, least, most]) {
      xs.push(...edge.x);
      ys.push(...edge.y);
    }
    const runs = [
      ["expected values", own.curves.expected],
      ["least resistance", own.curves.leastResistance],
      ["most resistance", own.curves.mostResistance],
    ] as const;
    for (const [run, curve] of runs) {
      curve.timeSeconds.forEach((time, k) => {
        rows.push([
          puck.name,
          run,
          time,
          lengthUnit.fromSi(curve.distanceMetres[k]),
          lengthUnit.fromSi(curve.heightMetres[k]),
          speedUnit.fromSi(curve.speedMetresPerSecond[k]),
        ]);
      });
    }
  });
  const [yName, yUnit] =
    view === "speed" ? ["speed", speedUnit.symbol] : [view === "distance" ? "distance" : "height", lengthUnit.symbol];
  return {
    key: `puck-${input.name.toLowerCase().replace(/[^a-z0-9]+/g, "-")}`,
    title: `${motionTitle(motion, input.name)}: ${motionViews[view]}`,
    caption: `Lines: expected values; bands: from the least to the most resistance that the bands of drag and friction allow. ${motionNotes[motion]}`,
    data,
    layout: figureLayout(
      palette,
      { title: view === "path" ? `distance (${lengthUnit.symbol})` : "time (s)", values: xs, fromZero: true },
      { title: `${yName} (${yUnit})`, values: ys, fromZero: motion !== "sink" || view === "speed" },
    ),
    table: {
      columns: [
        "puck",
        "run",
        "time, s",
        `distance, ${lengthUnit.symbol}`,
        `height, ${lengthUnit.symbol}`,
        `speed, ${speedUnit.symbol}`,
      ],
      rows,
    },
  };
}

const motionNotes: Readonly<Record<MotionKind, string>> = {
  slide: "The puck does not spin, tip or leave the floor.",
  flick:
    "For a flick the band's edges are two runs, not a proven bound; moments that would turn the puck are left out.",
  sink: "Heights from the start downwards. A real puck may flutter or tumble, which is not modelled.",
};
