import type { PuckResult } from "../../../shared/jobs/puck/puckResult";
import { freeName } from "../store/freeName";
import { Notifier } from "../store/notifier";
import { Bench, type BenchState } from "../view/bench";
import { demoPuck } from "./demoPuck";
import { mostPuckPins, nothingKnown, type PuckAnswers, type PuckPin } from "./puckAnswers";
import type { PuckInputs, PuckMake } from "./puckInputs";
import { noTradeoff, type TradeoffBench } from "./tradeoffState";

/** What the puck view works on and what is known of it. */
export interface PuckState extends BenchState<PuckInputs>, PuckAnswers {}

export const puckBench = new Bench<PuckInputs, PuckState>(demoPuck, nothingKnown);

/** The search for a trade-off. */
export const tradeoffBench = new Notifier<TradeoffBench>(noTradeoff);

export function changeCandidate(change: Partial<PuckMake>): void {
  puckBench.change({ candidate: { ...puckBench.present.candidate, ...change } });
}

/** Keeps a puck for comparison under a name that no other shown puck has. */
export function pinPuck(make: PuckMake): void {
  const { pins } = puckBench.value;
  if (pins.length >= mostPuckPins) return;
  const id = 1 + Math.max(0, ...pins.map((pin) => pin.id));
  const spec = { ...make.spec, name: freeName(make.spec.name, takenNames()) };
  puckBench.patch({ pins: [...pins, { id, make: { ...make, spec }, result: null, solvedFor: null }] });
}

export function updatePuckPin(id: number, result: PuckResult, solvedFor: PuckInputs): void {
  const update = (pin: PuckPin) => (pin.id === id ? { ...pin, result, solvedFor } : pin);
  puckBench.patch({ pins: puckBench.value.pins.map(update) });
}

export function unpinPuck(id: number): void {
  puckBench.patch({ pins: puckBench.value.pins.filter((pin) => pin.id !== id) });
}

/** Works on a kept puck; the present candidate is kept in its place, so that nothing is lost. */
export function workOnPin(id: number): void {
  const pin = puckBench.value.pins.find((one) => one.id === id);
  if (pin === undefined) return;
  const { candidate } = puckBench.present;
  unpinPuck(id);
  pinPuck(candidate);
  puckBench.change({ candidate: pin.make });
}

/** Works on another puck under a name that no shown puck has; the present candidate is pinned, so that nothing is lost. */
export function workOnPuck(make: PuckMake): void {
  const { candidate } = puckBench.present;
  const spec = { ...make.spec, name: freeName(make.spec.name, takenNames()) };
  puckBench.change({ candidate: { ...make, spec } });
  pinPuck(candidate);
}

/** Measures everything against the candidate as it is now; the former baseline is kept among the pins. */
export function makeBaseline(): void {
  const { candidate, baseline } = puckBench.present;
  const spec = { ...candidate.spec, name: `${candidate.spec.name}, changed` };
  puckBench.change({ baseline: candidate, candidate: { ...candidate, spec } });
  pinPuck(baseline);
}

function takenNames(): string[] {
  const { candidate, baseline } = puckBench.present;
  return [candidate, baseline, ...puckBench.value.pins.map((pin) => pin.make)].map(({ spec }) => spec.name);
}
