/** A value with the versions before and after it. Plain data; every function returns a new history. */
export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
}

const longestPast = 200;

export function startHistory<T>(present: T): History<T> {
  return { past: [], present, future: [] };
}

/** Adds a version; what had been undone is gone. */
export function record<T>(history: History<T>, present: T): History<T> {
  if (Object.is(present, history.present)) return history;
  return { past: [...history.past, history.present].slice(-longestPast), present, future: [] };
}

/** Replaces the present version without a new step, for the in-between states of one drag. */
export function amend<T>(history: History<T>, present: T): History<T> {
  return Object.is(present, history.present) ? history : { ...history, present };
}

export function undo<T>(history: History<T>): History<T> {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  return { past: history.past.slice(0, -1), present: before, future: [history.present, ...history.future] };
}

export function redo<T>(history: History<T>): History<T> {
  const [after, ...future] = history.future;
  if (after === undefined) return history;
  return { past: [...history.past, history.present], present: after, future };
}
