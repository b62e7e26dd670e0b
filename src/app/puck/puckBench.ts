import type { FluidProperties } from "../../../shared/engine/fluid/fluidSpec";
import type { PuckResult } from "../../../shared/jobs/puck/puckcase/puckResult";
import type { PuckFigures, PuckSetting } from "../../../shared/jobs/puck/puckFigures";
import type { PuckJudgement } from "../../../shared/jobs/puck/rules/judgePuck";
import type { Problem } from "../../../shared/result";
import { freeName } from "../store/freeName";
import { type History, redo, startHistory, undo } from "../store/history";
import { Notifier } from "../store/notifier";
import { recordTyped } from "../store/typing";
import { demoPuck } from "./demoPuck";
import type { PuckInputs, PuckMake } from "./puckInputs";

/** Figures of a puck that can be made, with the inputs that they belong to. */
export interface MeasuredPuck {
  readonly inputs: PuckInputs;
  readonly fluid: FluidProperties;
  readonly setting: PuckSetting;
  readonly candidate: PuckFigures;
  readonly baseline: PuckFigures;
}

export interface JudgedPuck {
  readonly inputs: PuckInputs;
  readonly judgement: PuckJudgement;
}

/** Drag and motions with the inputs that they belong to. */
export interface SolvedPucks {
  readonly inputs: PuckInputs;
  readonly baseline: PuckResult;
  readonly candidate: PuckResult;
}

/** A puck kept for comparison. */
export interface PuckPin {
  readonly id: number;
  readonly make: PuckMake;
  /** null until it is solved; the inputs are those whose play and motions the result belongs to. */
  readonly result: PuckResult | null;
  readonly solvedFor: PuckInputs | null;
}

/** What the puck view works on and what is known of it. Last good results stay; each names its inputs. */
export interface PuckBench {
  readonly history: History<PuckInputs>;
  readonly pins: readonly PuckPin[];
  readonly measured: MeasuredPuck | null;
  /** Why the present puck has no figures; null when all is well. */
  readonly problem: Problem | null;
  readonly judged: JudgedPuck | null;
  readonly judgeProblem: Problem | null;
  readonly solved: SolvedPucks | null;
  readonly solveProblem: Problem | null;
  /** True while a newer solution is on its way. */
  readonly solving: boolean;
}

export function startPuckBench(inputs: PuckInputs): PuckBench {
  return {
    history: startHistory(inputs),
    pins: [],
    measured: null,
    problem: null,
    judged: null,
    judgeProblem: null,
    solved: null,
    solveProblem: null,
    solving: false,
  };
}

export const puckBench = new Notifier<PuckBench>(startPuckBench(demoPuck));

export function presentPuck(): PuckInputs {
  return puckBench.value.history.present;
}

/** Changes the inputs as one step of the history. */
export function changePuck(change: Partial<PuckInputs>): void {
  const { history } = puckBench.value;
  puckBench.patch({ history: recordTyped(history, { ...history.present, ...change }) });
}

export function changeCandidate(change: Partial<PuckMake>): void {
  changePuck({ candidate: { ...presentPuck().candidate, ...change } });
}

export function undoPuck(): void {
  puckBench.patch({ history: undo(puckBench.value.history) });
}

export function redoPuck(): void {
  puckBench.patch({ history: redo(puckBench.value.history) });
}

/** Pins beyond this would only hide each other. */
export const mostPuckPins = 6;

/** Keeps a puck for comparison under a name that no other shown puck has. */
export function pinPuck(make: PuckMake): void {
  const { pins, history } = puckBench.value;
  if (pins.length >= mostPuckPins) return;
  const id = 1 + Math.max(0, ...pins.map((pin) => pin.id));
  const { candidate, baseline } = history.present;
  const taken = [candidate, baseline, ...pins.map((pin) => pin.make)].map(({ spec }) => spec.name);
  const spec = { ...make.spec, name: freeName(make.spec.name, taken) };
  puckBench.patch({ pins: [...pins, { id, make: { ...make, spec }, result: null, solvedFor: null }] });
}

export function updatePuckPin(id: number, result: PuckResult, solvedFor: PuckInputs): void {
  const update = (pin: PuckPin) => (pin.id === id ? { ...pin, result, solvedFor } : pin);
  puckBench.patch({ pins: puckBench.value.pins.map(update) });
}

export function unpinPuck(id: number): void {
  puckBench.patch({ pins: puckBench.value.pins.filter((pin) => pin.id !== id) });
}
