import { SOLVER_NUMBERS } from "../constants/solverNumbers";
import type { SideLayer } from "../layer/sideLayer";
import type { SeparatedFlow } from "./separatedFlow";

/** A separated flow and the layer of one of its sides, followed to the place where the flow lets that side separate. */
export interface SideProbe {
  /** Where that is: distance along the side, in node steps, growing downstream. */
  readonly distance: number;
  readonly flow: SeparatedFlow;
  readonly layer: SideLayer;
}

/** Probes a side at a distance; null where there is no such flow. */
export type ProbeAt = (distance: number) => SideProbe | null;

/** Two probes of a side: its layer is still attached at the first and has separated at the second. */
export type Bracket = readonly [attached: SideProbe, separated: SideProbe];

/** A place where a layer separates where the flow lets it, as nearly as it could be found. */
export interface FoundSeparation {
  readonly probe: SideProbe;
  /** True when the layer changes its kind just here, so that the flow sits on the switch between the two. */
  readonly onSwitch: boolean;
}

/** A layer that separates this near to the assumed point (/ D) has found it; else the bracket is closed to this many node steps. */
export const RESIDUAL_TOLERANCE = 2e-5;
const POSITION_TOLERANCE = 1e-3;
const MOST_REFINEMENTS = 40;
/** A layer that separates further than this (/ D) ahead of the assumed point has not found it: the residual jumps there. */
const LARGEST_JUMP = SOLVER_NUMBERS.largestJump.value;

/** Whether a layer separates where the flow assumes it. */
export function separatesThere(layer: SideLayer): boolean {
  return layer.residual > -LARGEST_JUMP;
}

/** Whether two neighbouring probes hold a steady state between them: the layer passes from attached to separated. */
export function isBracket(before: SideProbe, after: SideProbe): boolean {
  return before.layer.residual > 0 && after.layer.residual <= 0;
}

/**
 * Closes a bracket by the Illinois form of regula falsi (Dowell & Jarratt 1971, BIT 11, 168), with a halving every
 * fourth time and wherever the layer changes its kind, since the residual jumps there. It aims at a layer that has just
 * separated, as only that reports where.
 */
export function closeBracket(probeAt: ProbeAt, [attached, separated]: Bracket): FoundSeparation {
  let [a, b] = [attached, separated];
  let [fa, fb] = [a.layer.residual, b.layer.residual];
  let kept: "a" | "b" | null = null;
  for (let i = 0; i < MOST_REFINEMENTS && b.distance - a.distance > POSITION_TOLERANCE; i++) {
    const smooth = a.layer.state === b.layer.state && i % 4 !== 3;
    const share = smooth ? Math.min(0.98, Math.max(0.02, (fa + RESIDUAL_TOLERANCE / 2) / (fa - fb))) : 0.5;
    const next = probeAt(a.distance + share * (b.distance - a.distance));
    if (next === null) break;
    if (next.layer.residual > 0) {
      [a, fa] = [next, next.layer.residual];
      if (kept === "b") fb /= 2;
      kept = "b";
    } else {
      [b, fb] = [next, next.layer.residual];
      if (kept === "a") fa /= 2;
      kept = "a";
    }
    if (a.layer.state === b.layer.state && b.layer.residual > -RESIDUAL_TOLERANCE) break;
  }
  return { probe: b, onSwitch: a.layer.state !== b.layer.state || !separatesThere(b.layer) };
}
