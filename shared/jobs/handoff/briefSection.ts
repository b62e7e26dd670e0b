import type { SectionSpec } from "../../engine/geometry/sectionSpec";
import type { SectionState } from "../../engine/solution";
import { traceDragCurve } from "../../engine/solve/dragCurve";
import { crisisFactor, dragBand } from "../../engine/trust/dragBand";
import type { DragBand } from "../../engine/trust/dragInterval";
import { statesNearby } from "../../engine/trust/nearbyStates";
import { describeSection } from "../../engine/trust/sectionDescription";
import { problem, type Result, success } from "../../result";
import type { PuckStream } from "../puck/puckcase/puckCase";
import { prepareStrip } from "../puck/solvedSections";

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
  { spec, width, sandGrainRoughness }: BriefSection,
  stream: PuckStream,
  speed: number,
  turbulencePercent: number,
): Result<SolvedBriefSection> {
  const section = prepareStrip(spec, panelCount);
  if (!section.ok) return section;
  const slower = stream.solvedSpeeds.filter((one) => one < speed);
  const conditions = [...slower, speed].map((one) => ({
    reynolds: (one * width) / stream.fluid.kinematicViscosity,
    sandGrainRoughnessRatio: sandGrainRoughness / width,
    turbulenceIntensity: turbulencePercent / 100,
  }));
  const outcomes = traceDragCurve(section.value, conditions);
  const last = outcomes.length - 1;
  const { rising, states, problem: fault } = outcomes[last];
  if (rising === null) return problem("handoff", fault?.message ?? "no steady state was found at the hand-off's speed");
  const state = states[rising];
  const description = describeSection(section.value.nodes, 0);
  const factor = crisisFactor(description, conditions[last]);
  const nearby = statesNearby(section.value, conditions, outcomes, last, factor);
  const { low, high, applicability, reason } = dragBand(description, state, conditions[last], nearby);
  return success({
    state,
    band: { low, best: state.dragCoefficient, high },
    applicability: reason === null ? applicability : `${applicability}. ${reason.replace(/\.$/, "")}`,
  });
}
