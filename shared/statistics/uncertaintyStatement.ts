import { coverageFactor } from "./studentT";
import type { InputDistribution } from "./uncertainInput";

/** How a plus-minus is meant: what one reads on a certificate, in a manual or in an own estimate. */
export const statementKinds = ["standard", "normal95", "rectangular", "triangular", "arcsine"] as const;
export type StatementKind = (typeof statementKinds)[number];

/** An uncertainty as a person states it. */
export interface UncertaintyStatement {
  /** 0 or more, in the unit of the key that it stands under. */
  readonly plusMinus: number;
  /** "standard": one standard deviation; "normal95": a 95 % interval, by Student's t where its degrees of freedom are given; the others: half the width of the distribution. */
  readonly kind: StatementKind;
  /** Of the statement itself, above 0; taken as endless when left out. */
  readonly degreesOfFreedom?: number;
}

/**
 * Divisor from plus-minus to standard uncertainty. Source: JCGM 100:2008, 4.3.4 (1.96; Student's t where the degrees of
 * freedom are few, G.3), 4.3.7, 4.3.9; arcsine JCGM 101:2008, 6.4.6.
 */
const divisors: Readonly<Record<Exclude<StatementKind, "normal95">, number>> = {
  standard: 1,
  rectangular: Math.sqrt(3),
  triangular: Math.sqrt(6),
  arcsine: Math.sqrt(2),
};

const distributions: Readonly<Record<StatementKind, InputDistribution>> = {
  standard: "normal",
  normal95: "normal",
  rectangular: "rectangular",
  triangular: "triangular",
  arcsine: "arcsine",
};

/** A statement in the terms of a budget. */
export interface StatedUncertainty {
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  readonly distribution: InputDistribution;
}

/**
 * @param scale factor to the unit of the budget, for instance 0.01 from per cent
 */
export function statedUncertainty(
  { plusMinus, kind, degreesOfFreedom = Number.POSITIVE_INFINITY }: UncertaintyStatement,
  scale = 1,
): StatedUncertainty {
  if (!(plusMinus >= 0)) throw new RangeError(`plus-minus is ${plusMinus}; it must be 0 or more.`);
  const isStudent = (kind === "standard" || kind === "normal95") && Number.isFinite(degreesOfFreedom);
  const divisor = kind === "normal95" ? coverageFactor(0.95, degreesOfFreedom) : divisors[kind];
  return {
    standardUncertainty: (plusMinus * scale) / divisor,
    degreesOfFreedom,
    distribution: isStudent ? "studentT" : distributions[kind],
  };
}
