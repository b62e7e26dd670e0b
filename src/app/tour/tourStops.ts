import type { ResultRow } from "../../../shared/engine/section/resultRow";
import type { SectionState } from "../../../shared/engine/solution";
import { degreesOf } from "../../../shared/numerics/degreesAndPercent";

/** A stop on the drag curve of a circular cylinder. */
export interface TourStop {
  readonly key: string;
  readonly title: string;
  /** Where it is looked at: a Reynolds number on the diameter, or the one of the computed one-sided state. */
  readonly reynolds: number | "one-sided";
  /** ks / D; null for the wall of the whole tour. */
  readonly sandGrainRoughnessRatio: number | null;
  /** What is seen there, with the computed figures in it. */
  readonly words: (state: SectionState) => string;
  /** Published points that show it, by the names of their sources. */
  readonly sources: readonly string[];
}

/** The smooth wall and the quiet stream that the tour starts with. */
export const tourStart = { sandGrainRoughnessRatio: 1e-5, turbulenceIntensity: 0.001 } as const;

const angle = (radians: number) => `${degreesOf(radians).toFixed(0)}°`;
const cd = ({ dragCoefficient }: SectionState) => dragCoefficient.toFixed(2);

/** Separation angles of the side that leaves first, and of the other. */
function leaving({ upper, lower }: SectionState): readonly [string, string] {
  const [first, last] = [upper.separationAngle, lower.separationAngle].sort((a, b) => a - b);
  return [angle(first), angle(last)];
}

/** Six stops, from the broad wake of a laminar layer to a rough wall. */
export const tourStops: readonly TourStop[] = [
  {
    key: "laminar",
    title: "Laminar separation.",
    reynolds: 5e4,
    sandGrainRoughnessRatio: null,
    words: (state) =>
      `The layer stays laminar and leaves at ${leaving(state)[0]}, ahead of the widest point: a broad wake, low pressure behind, and Cd ${cd(state)}.`,
    sources: ["Wieselsberger 1922", "Delany and Sorensen 1953"],
  },
  {
    key: "gradual",
    title: "Gradual fall.",
    reynolds: 2.4e5,
    sandGrainRoughnessRatio: null,
    words: (state) =>
      `Transition in the free layer moves close to the wall. The engine still says Cd ${cd(state)} with laminar separation at ${leaving(state)[0]}; measured drag falls little by little here, each tunnel at its own speed.`,
    sources: ["Wieselsberger 1922", "Schewe 1983"],
  },
  {
    key: "oneSided",
    title: "One-sided.",
    reynolds: "one-sided",
    sandGrainRoughnessRatio: null,
    words: (state) =>
      state.oneSided
        ? `On one side the layer has come back to the wall and stays on to ${leaving(state)[1]}, on the other it leaves at ${leaving(state)[0]}: Cd ${cd(state)}, and a steady lift of ${Math.abs(state.liftCoefficient).toFixed(1)} pulls towards the side that holds on.`
        : `Here cylinders are seen with a bubble on one side alone. The engine has no such state in this stream: both sides leave at ${leaving(state)[0]}, Cd ${cd(state)}.`,
    sources: ["Schewe 1983"],
  },
  {
    key: "supercritical",
    title: "A bubble on both sides.",
    reynolds: 6e5,
    sandGrainRoughnessRatio: null,
    words: (state) =>
      `The layer leaves laminar, turns turbulent over a short bubble, comes back and stays on to ${leaving(state)[0]}: the narrowest wake and the least drag, Cd ${cd(state)}.`,
    sources: ["Schewe 1983", "Delany and Sorensen 1953", "Achenbach and Heinecke 1981"],
  },
  {
    key: "transcritical",
    title: "Transcritical.",
    reynolds: 4e6,
    sandGrainRoughnessRatio: null,
    words: (state) =>
      `Transition runs ahead of where a bubble would be: the layer is turbulent from well before the widest point, thicker, and leaves earlier, at ${leaving(state)[0]}. Cd rises again to ${cd(state)}.`,
    sources: ["Roshko 1961", "Achenbach and Heinecke 1981"],
  },
  {
    key: "rough",
    title: "A rough wall.",
    reynolds: 2e5,
    sandGrainRoughnessRatio: 5e-3,
    words: (state) =>
      `Grains of D/200 trip the layer long before the smooth cylinder's crisis, and thicken it: it leaves at ${leaving(state)[0]}, Cd ${cd(state)}. The crisis comes early, and the drag past it stays high.`,
    sources: ["Achenbach 1971", "Achenbach and Heinecke 1981"],
  },
];

/** Where a smooth cylinder is looked at when the curve has no one-sided state. */
const usualOneSided = 3.4e5;

/** The Reynolds number of a stop on a computed curve. */
export function stopReynolds({ reynolds }: TourStop, curve: readonly ResultRow[]): number {
  if (reynolds !== "one-sided") return reynolds;
  const found = curve.find(({ oneSided, branch }) => oneSided === true && branch === "rising");
  return found?.reynolds ?? usualOneSided;
}
