import { type Problem, problem } from "../../result";

/** Shortest and longest length accepted, m. */
export const shortestLength = 1e-5;
export const longestLength = 1e4;
/** Smallest radius of a rounded corner as a fraction of the section's smaller dimension. */
export const smallestRadiusRatio = 0.01;
/** Range of length / height. */
export const smallestSlenderness = 0.05;
export const largestSlenderness = 20;

/** Relative excess over a limit that is put down to rounding of the input. */
const slack = 1e-9;

/** A length as text in millimetres, at most six digits: "18 mm". */
export function millimetres(length: number): string {
  return `${Number((length * 1000).toPrecision(6))} mm`;
}

/** "edgeRadius" as words: "edge radius". */
export function fieldWords(field: string): string {
  return field.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

/** The first of several checks that failed, or null when all is well. */
export function firstProblem(...checks: readonly (Problem | null)[]): Problem | null {
  return checks.find((check) => check !== null) ?? null;
}

/** Checks that every named length of a section is a finite number of a sensible size, m. */
export function checkLengths(lengths: Readonly<Record<string, number>>): Problem | null {
  for (const [field, value] of Object.entries(lengths)) {
    if (value >= shortestLength * (1 - slack) && value <= longestLength * (1 + slack)) continue;
    const range = `it must be from ${millimetres(shortestLength)} to ${millimetres(longestLength)}`;
    return problem("dimension-out-of-range", `${fieldWords(field)} is ${given(value)}; ${range}`, field).problem;
  }
  return null;
}

function given(length: number): string {
  return Number.isFinite(length) ? millimetres(length) : `${length}`;
}

/** Checks length / height. */
export function checkSlenderness(length: number, height: number): Problem | null {
  const ratio = length / height;
  if (ratio >= smallestSlenderness * (1 - slack) && ratio <= largestSlenderness * (1 + slack)) return null;
  return problem(
    "slenderness-out-of-range",
    `length / height is ${Number(ratio.toPrecision(4))}; it must be from ${smallestSlenderness} to ${largestSlenderness}`,
    "length",
  ).problem;
}

/** A largest allowed length and what it is, for instance { value: 0.015, words: "half the height" }. */
export interface Limit {
  readonly value: number;
  readonly words: string;
}

/** The smaller of limits. */
export function smallestLimit(...limits: readonly Limit[]): Limit {
  return limits.reduce((a, b) => (b.value < a.value ? b : a));
}

/** Checks one length against its own largest value, m. */
export function checkAtMost(field: string, value: number, limit: Limit): Problem | null {
  if (value <= limit.value * (1 + slack)) return null;
  const message = `${fieldWords(field)} ${millimetres(value)} exceeds ${limit.words}, ${millimetres(limit.value)}`;
  return problem("dimension-too-large", message, field).problem;
}

/** Checks one length against a smallest value, m. */
export function checkAtLeast(field: string, value: number, limit: Limit): Problem | null {
  if (value >= limit.value * (1 - slack)) return null;
  const message = `${fieldWords(field)} ${millimetres(value)} is below ${limit.words}, ${millimetres(limit.value)}`;
  return problem("dimension-too-small", message, field).problem;
}

/** Checks a corner radius: at least 1 % of the smaller dimension, at most the limit, m. */
export function checkRadius(field: string, radius: number, smallerDimension: number, limit: Limit): Problem | null {
  const smallest = smallestRadiusRatio * smallerDimension;
  if (!(radius > 0 && Number.isFinite(radius))) {
    const range = `it must be from ${millimetres(smallest)} to ${millimetres(limit.value)}`;
    return problem("dimension-out-of-range", `${fieldWords(field)} is ${given(radius)}; ${range}`, field).problem;
  }
  return firstProblem(
    checkAtMost(field, radius, limit),
    checkAtLeast(field, radius, {
      value: smallest,
      words: `${smallestRadiusRatio * 100} % of the smaller dimension, the smallest radius allowed`,
    }),
  );
}

/** Half the smaller of length and height as a limit. */
export function halfSmaller(length: number, height: number): Limit {
  return smallestLimit(
    { value: height / 2, words: "half the height" },
    { value: length / 2, words: "half the length" },
  );
}
