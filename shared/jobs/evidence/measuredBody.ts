import type { PreparedShape } from "../../engine/section/prepareShape";
import { type StudiedCurve, studiedCurve } from "../../engine/section/studyBodies";
import { describeSection, type SectionDescription } from "../../engine/trust/sectionDescription";
import { type Cause, sectionCauses } from "./causes";
import { type CurveStream, curveSolver } from "./curveSolver";
import type { FlowSettings } from "./flowSettings";
import type { MeasuredConditions } from "./measurement";
import { type PredictedPoint, predictAt, type SectionPrediction, type WantedPoint } from "./predictAt";

/** Predictions in the order of the wanted points; null where the engine finds no state or the walls are too near. */
export type Predictor = (
  settings: FlowSettings,
  wanted: readonly WantedPoint[],
  withBands: boolean,
) => (PredictedPoint | null)[];

/** A measured design, solved as far as it does not depend on the stream. */
export interface MeasuredBody {
  readonly predict: Predictor;
  /** m; what Reynolds numbers are on. */
  readonly width: number;
  /** What decides to which designs an offset may be carried; null where it is carried to none. */
  readonly description: SectionDescription | null;
  /** The same curve as common draws need it, and its free drag at each Reynolds number; null of a puck. */
  readonly studied: ((settings: FlowSettings, reynoldsNumbers: readonly number[]) => StudiedMeasurement | null) | null;
  /** The causes of a disagreement that can be tested on it. */
  readonly causes: (conditions: MeasuredConditions, base: FlowSettings) => readonly Cause[];
}

export interface StudiedMeasurement extends StudiedCurve {
  readonly stream: CurveStream;
  /** Cd of the endless section in a free stream; null where there is no state. */
  readonly freeDrag: readonly (number | null)[];
}

/** A section as a measured design: its predictions lack nothing, and it has a description. */
export interface MeasuredSection extends MeasuredBody {
  readonly predict: (...asked: Parameters<Predictor>) => (SectionPrediction | null)[];
  readonly description: SectionDescription;
}

export function measuredSection(shape: PreparedShape): MeasuredSection {
  const { section, referenceWidth: width } = shape;
  const solve = curveSolver(shape);
  const description = describeSection(section.nodes, section.incidence, section.floor !== null);
  return {
    predict: (settings, wanted, withBands) => predictAt(solve, description, settings, wanted, withBands),
    width,
    description,
    studied: ({ turbulenceIntensity, sandGrainRoughnessRatio }, reynoldsNumbers) => {
      const stream = { turbulenceIntensity, sandGrainRoughnessRatio };
      const solved = solve(stream, reynoldsNumbers, true);
      const inOrder = [...new Set(solved)].sort((a, b) => a.condition.reynolds - b.condition.reynolds);
      const curve = studiedCurve(shape, inOrder);
      if (curve === null) return null;
      const freeDrag = solved.map(({ outcome: { rising, states } }) =>
        rising === null ? null : states[rising].dragCoefficient,
      );
      return { ...curve, stream, freeDrag };
    },
    causes: (conditions, base) => sectionCauses(conditions, base, width),
  };
}
