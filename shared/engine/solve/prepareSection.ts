import { problem, type Result, success } from "../../result";
import { CALIBRATED, type CalibratedConstants } from "../constants/calibrated";
import { type SectionFlow, sectionFlow } from "../flow/sectionFlow";
import type { SectionNodes } from "../geometry/sectionNodes";
import { integralMethod } from "../layer/layerMethod";
import { vortexStreetTable } from "../wake/vortexStreet";
import type { PreparedSection } from "./preparedSection";
import { type FlowClosure, type SeparatedFlow, separatedFlow } from "./separatedFlow";
import { type SeparationTable, separationTable } from "./separationTable";
import { laminarFixedFlows } from "./symmetricFixedPoints";
import { twoSidedFlow } from "./twoSidedFlow";

/** Separation points are scanned between these shares of the way from nose to tail, in node steps. */
const FIRST_SCANNED_SHARE = 0.08;
const LAST_SCANNED_SHARE = 0.985;
/** One street serves every body. */
const STREET = vortexStreetTable();
const MOST_SCANNED = 48;

/**
 * Prepares a section: factors the panel equation and tabulates the wake over its separation points. A whole drag curve
 * is then only boundary-layer marches.
 * @param incidence rad, in (-pi/2, pi/2) for a section with its nose to the stream; any angle is accepted up to pi
 * @param constants the calibrated constants, the engine's own by default
 * @param floorGapRatio gap / D between the section's lowest point and a floor along the stream, 0 when it lies on it; no floor when left out, see floorNotes.ts
 * @param splitterPlate whether a long thin plate along the stream parts the wake, as the floor does that of a section and its mirror image in contact
 * @param layerMethod of its boundary layers, the engine's own by default; the constants were calibrated with that one
 * @returns a problem "incidence-out-of-range", "floor-gap" or "no-wake" when no separation point gives a wake that closes
 */
export function prepareSection(
  nodes: SectionNodes,
  incidence: number,
  constants: CalibratedConstants = CALIBRATED,
  floorGapRatio?: number,
  splitterPlate = false,
  layerMethod = integralMethod,
): Result<PreparedSection> {
  if (!(Math.abs(incidence) <= Math.PI)) {
    return problem(
      "incidence-out-of-range",
      `incidence is ${incidence} rad; it must lie between -pi and pi.`,
      "incidence",
    );
  }
  const flow = sectionFlow(nodes, incidence, floorGapRatio, splitterPlate);
  if (!flow.ok) return flow;
  const symmetric = flow.value.operator.folded;
  const wakes = symmetric ? symmetricWakes(flow.value, { street: STREET, constants, layerMethod }) : [];
  if (symmetric && wakes.length === 0) {
    return problem(
      "no-wake",
      "no separation point on this section gives a wake whose drag agrees with its vortex street.",
    );
  }
  let full: SectionFlow | null = symmetric ? null : flow.value;
  const fullFlow = (): SectionFlow => {
    if (full === null) {
      const unfolded = sectionFlow({ ...nodes, mirrorSymmetric: false }, incidence, undefined, splitterPlate);
      if (!unfolded.ok) throw new Error(unfolded.problem.message);
      full = unfolded.value;
    }
    return full;
  };
  let table: SeparationTable | null = null;
  const section: PreparedSection = {
    nodes,
    incidence,
    referenceWidth: flow.value.referenceWidth,
    symmetric,
    constants,
    street: STREET,
    layerMethod,
    flow: flow.value,
    floor: flow.value.floor,
    fullFlow,
    table: () => {
      table ??= separationTable(fullFlow(), (lower, upper) => twoSidedFlow(fullFlow(), section, lower, upper));
      return table;
    },
    wakes,
    laminarFlows: [],
  };
  return success(symmetric ? { ...section, laminarFlows: laminarFixedFlows(section) } : section);
}

function symmetricWakes(flow: SectionFlow, closure: FlowClosure): SeparatedFlow[] {
  const half = flow.nodes.count / 2;
  const scanned = Math.min(MOST_SCANNED, half - 2);
  const wakes: SeparatedFlow[] = [];
  for (let i = 0; i <= scanned; i++) {
    const lower = half * (FIRST_SCANNED_SHARE + ((LAST_SCANNED_SHARE - FIRST_SCANNED_SHARE) * i) / scanned);
    const solved = separatedFlow(flow, closure, lower, flow.nodes.count - lower);
    if (solved !== null) wakes.push(solved);
  }
  return wakes;
}
