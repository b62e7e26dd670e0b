/** Why something could not be computed: a code for programs, a message a person can act on, and where it arose. */
export interface Problem {
  /** For programs: a word that stays the same when the message is reworded. */
  readonly code: string;
  /** For people: quantity, value, allowed range, what to do. */
  readonly message: string;
  /** Path of the input that caused it, for instance "section.edgeRadiusMetres". */
  readonly field?: string;
}

/** A value, or the reason why there is none. Plain data, so that it crosses a worker boundary whole. */
export type Result<T> =
  | {
      /** True: the value is there. */
      readonly ok: true;
      /** What was asked for. */
      readonly value: T;
    }
  | {
      /** False: there is a problem in place of the value. */
      readonly ok: false;
      /** Why there is no value. */
      readonly problem: Problem;
    };

export function success<T>(value: T): Result<T> {
  return { ok: true, value };
}

export function problem(
  code: string,
  message: string,
  field?: string,
): { readonly ok: false; readonly problem: Problem } {
  return { ok: false, problem: field === undefined ? { code, message } : { code, message, field } };
}
