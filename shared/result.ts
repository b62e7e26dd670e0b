/** Why something could not be computed: a code for programs, a message a person can act on, and where it arose. */
export interface Problem {
  readonly code: string;
  readonly message: string;
  /** Path of the input that caused it, for instance "section.edgeRadiusMetres". */
  readonly field?: string;
}

/** A value, or the reason why there is none. Plain data, so that it crosses a worker boundary whole. */
export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

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
