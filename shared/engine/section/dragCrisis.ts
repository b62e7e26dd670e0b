import { findSwitch } from "../../numerics/rootFinder";
import type { FlowCondition } from "../condition";
import type { SectionState } from "../solution";
import { solveCondition } from "../solve/solveCondition";
import { crisisFactor } from "../trust/dragBand";
import { describeSection } from "../trust/sectionDescription";
import type { PreparedShape } from "./prepareShape";

/** The drag crisis of a section at one roughness and turbulence. Reynolds numbers are on the width of that section. */
export interface SectionCrisis {
  /** Highest Reynolds number at which layers still separate laminar on both sides: where a rising speed leaves that state. */
  readonly rising: number;
  /** Lowest Reynolds number of any other state: where a falling speed returns. At most `rising`. */
  readonly falling: number;
  /** How far off published crises were from computed ones, as a factor above 1. */
  readonly factor: number;
}

/** Points of the search over the range, and the part of a step between them to which an end is found. */
const scanned = 17;
const stepTolerance = 1 / 16;

/**
 * Looks for the drag crisis of a section in a range of Reynolds numbers.
 * @param stream    roughness and turbulence
 * @param lowest    of the range, at least 1e3
 * @param highest   of the range, at most 1e8, above lowest
 * @returns null when the flow keeps one kind of separation over the range
 */
export function findDragCrisis(
  { section }: Pick<PreparedShape, "section">,
  stream: Omit<FlowCondition, "reynolds">,
  lowest: number,
  highest: number,
): SectionCrisis | null {
  if (!(lowest > 0 && highest > lowest))
    throw new RangeError(`Re from ${lowest} to ${highest}; it must rise from above 0.`);
  const at = (share: number) => lowest * (highest / lowest) ** share;
  const statesAt = (share: number) => solveCondition(section, { ...stream, reynolds: at(share) }).states;
  const steps = Array.from({ length: scanned }, (_, i) => i / (scanned - 1));
  const states = steps.map(statesAt);
  const lastLaminar = states.findLastIndex((found) => found.some(isSubcritical));
  const firstOther = states.findIndex((found) => found.some((state) => !isSubcritical(state)));
  if (lastLaminar < 0 || firstOther < 0 || lastLaminar === scanned - 1) return null;
  const rising = bracketed(steps[lastLaminar], steps[lastLaminar + 1], (share) => statesAt(share).some(isSubcritical));
  const falling =
    firstOther === 0
      ? steps[0]
      : bracketed(
          steps[firstOther - 1],
          steps[firstOther],
          (share) => !statesAt(share).some((one) => !isSubcritical(one)),
        );
  const description = describeSection(section.nodes, section.incidence, section.floor !== null);
  return {
    rising: at(Math.max(rising, falling)),
    falling: at(Math.min(rising, falling)),
    factor: crisisFactor(description, { ...stream, reynolds: at(rising) }),
  };
}

function isSubcritical({ regime }: SectionState): boolean {
  return regime === "subcritical";
}

/** Where a property that holds at `held` and not at `lost` ends. */
function bracketed(held: number, lost: number, holds: (share: number) => boolean): number {
  const { holding, failing } = findSwitch(holds, held, lost, stepTolerance * Math.abs(lost - held));
  return (holding + failing) / 2;
}
