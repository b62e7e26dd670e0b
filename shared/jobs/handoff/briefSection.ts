import type { SectionSpec } from "../../engine/geometry/sectionSpec";
import { solveStreams } from "../../engine/section/solveStreams";
import type { SectionState } from "../../engine/solution";
import type { DragBand } from "../../engine/trust/dragInterval";
import { problem, type Result, success } from "../../result";
import { type PuckStream, prepareStrip } from "../puck/public";

/** A section of a puck at its true size. */
export interface BriefSection {
  readonly spec: SectionSpec;
  /** Across the stream, m. */
  readonly width: number;
  /** Equivalent sand-grain sandGrainRoughness, m. */
  readonly sandGrainRoughness: number;
}

export interface SolvedBriefSection {
  readonly state: SectionState;
  readonly band: DragBand;
  readonly applicability: string;
}

/** Panels of a section that is handed on: finer than for a search, since it is solved once. */
const panelCount = 240;

/**
 * The state of a section at one speed, as a speed that rose slowly through the case's speeds meets it.
 * @param speed m/s, above 0
 */
export function solveBriefSection(
  { spec, sandGrainRoughness }: BriefSection,
  { fluid, solvedSpeeds }: PuckStream,
  speed: number,
  turbulenceIntensity: number,
): Result<SolvedBriefSection> {
  const shape = prepareStrip(spec, panelCount);
  if (!shape.ok) return shape;
  const slower = solvedSpeeds.filter((one) => one < speed);
  const streams = [...slower, speed].map((one) => ({ speed: one, fluid, sandGrainRoughness, turbulenceIntensity }));
  const solved = solveStreams(shape.value, streams, "last");
  const { outcome, bands } = solved[solved.length - 1];
  const { rising, states, problem: fault } = outcome;
  if (rising === null) return problem("handoff", fault?.message ?? "no steady state was found at the hand-off's speed");
  const state = states[rising];
  const { low, high, applicability, reason } = bands[rising];
  return success({
    state,
    band: {
      low: Math.min(low, state.dragCoefficient),
      expected: state.dragCoefficient,
      high: Math.max(high, state.dragCoefficient),
    },
    applicability: reason === null ? applicability : `${applicability}. ${reason.replace(/\.$/, "")}`,
  });
}
