import { Dopri } from "dopri";
import { findSwitch } from "../../../numerics/rootFinder";
import { problem, type Result, success } from "../../../result";

/** Rate of change of a state; writes into the last argument. */
export type Rates = (time: number, state: readonly number[], rates: number[]) => void;

/** Ends the motion where its value passes from above 0 to 0 or below. */
export interface StopEvent {
  readonly name: string;
  readonly value: (state: readonly number[]) => number;
}

export interface IntegratedMotion {
  /** State at any time from 0 to end. */
  readonly stateAt: (time: number) => number[];
  readonly end: number;
  /** The event that ended it, "time" when none did. */
  readonly ended: string;
}

/** Per step, relative and absolute; leaves the energy balance far inside 1e-6. */
const tolerance = 1e-11;

/** Parts of the duration that are looked at one after the other, so that work after an event is not done for long. */
const parts = 16;

/** Points between two steps at which an event is looked for. */
const probes = 4;

/**
 * Integrates a motion from time 0 until an event or the end of its duration, by the Dormand-Prince pair 5(4) with dense
 * output (library dopri; Hairer, Norsett & Wanner 1993, Solving Ordinary Differential Equations I, II.5).
 * The rates must stay defined a little beyond each event, where the step that passes it ends.
 * @param duration s, above 0
 */
export function integrateMotion(
  rates: Rates,
  start: readonly number[],
  duration: number,
  events: readonly StopEvent[],
): Result<IntegratedMotion> {
  if (!(duration > 0)) return problem("duration", `duration is ${duration} s; it must be above 0`, "duration");
  if (!start.every(Number.isFinite))
    return problem("start", "the start of the motion has a value that is not a number");
  const already = events.find((event) => event.value(start) <= 0);
  if (already !== undefined) return success({ stateAt: () => [...start], end: 0, ended: already.name });
  const pieces: { from: number; to: number; solution: (times: number[]) => number[][] }[] = [];
  const stateAt = (time: number) => {
    const piece = pieces.find(({ to }) => time <= to) ?? pieces[pieces.length - 1];
    return piece.solution([Math.min(Math.max(time, piece.from), piece.to)])[0];
  };
  let state = [...start];
  try {
    for (let part = 0; part < parts; part++) {
      const from = (duration * part) / parts;
      const to = (duration * (part + 1)) / parts;
      const solver = new Dopri(rates, start.length, { rtol: tolerance, atol: tolerance, maxSteps: 100_000 });
      solver.initialise(from, state);
      const solution = solver.run(to);
      pieces.push({ from, to, solution });
      const found = firstEvent(solution, stepTimes(solver.steps(), from, to), events);
      if (found !== null) return success({ stateAt, end: found.time, ended: found.name });
      state = solution([to])[0];
      if (!state.every(Number.isFinite)) return problem("motion", `the motion has no finite value after ${from} s`);
    }
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return problem("motion", `the motion could not be integrated: ${reason}`);
  }
  return success({ stateAt, end: duration, ended: "time" });
}

function stepTimes(steps: readonly number[], from: number, to: number): number[] {
  const ends = [from, ...steps.filter((time) => time > from && time < to), to];
  return ends.slice(1).flatMap((end, i) => {
    const begin = ends[i];
    return Array.from({ length: probes }, (_, j) => begin + ((end - begin) * (j + 1)) / probes);
  });
}

function firstEvent(
  solution: (times: number[]) => number[][],
  times: readonly number[],
  events: readonly StopEvent[],
): { readonly time: number; readonly name: string } | null {
  const states = solution([...times]);
  const index = states.findIndex((state) => events.some((event) => event.value(state) <= 0));
  if (index < 0) return null;
  const crossings = events
    .filter((event) => event.value(states[index]) <= 0)
    .map((event) => {
      const before = index === 0 ? times[0] - (times[1] - times[0]) : times[index - 1];
      const isAhead = (time: number) => event.value(solution([time])[0]) > 0;
      return { time: findSwitch(isAhead, before, times[index]).failing, name: event.name };
    });
  return crossings.reduce((first, crossing) => (crossing.time < first.time ? crossing : first));
}
