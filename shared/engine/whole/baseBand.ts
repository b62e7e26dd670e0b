import { WHOLE_NUMBERS } from "../constants/wholeNumbers";

const WIDE = WHOLE_NUMBERS.wideBasePressure.value;
const ACROSS = WHOLE_NUMBERS.acrossBasePressure.value;
const PER_LENGTH = WHOLE_NUMBERS.lengthBasePressure.value;
const LONGEST = WHOLE_NUMBERS.longestAcross.value;
const AFTERBODY = WHOLE_NUMBERS.afterbodyRelief.value;
const LONGEST_AFTERBODY = WHOLE_NUMBERS.longestAfterbody.value;
const POWER = WHOLE_NUMBERS.narrowingPower.value;
const WIDE_ERROR = WHOLE_NUMBERS.wideBaseError.value;
const ACROSS_ERROR = WHOLE_NUMBERS.acrossBaseError.value;
const NARROWED_ERROR = WHOLE_NUMBERS.narrowedBaseError.value;

/** What the base pressure behind a body depends on; no published relation closes a three-dimensional one. */
export interface BasePlace {
  /** How far the body is met across its axis: cos^2 of the tilt with flat ends, 0 along the axis and of round bodies. */
  readonly across: number;
  /** Thickness or length along the axis over the diameter. */
  readonly lengthRatio: number;
  /** Shadow of the surface behind the separation line over that of the body, 0 to 1. */
  readonly baseShare: number;
  /** Length of the body that stands in its own wake over the diameter, where the flow leaves the front edge face-on; else 0. */
  readonly afterbody?: number;
}

/** Base pressure that is expected, and what one standard deviation of each shared uncertainty adds to it. */
export interface BaseBand {
  readonly expected: number;
  /** Of all wide wakes, of bodies met across their axis, and of narrowed wakes. */
  readonly wide: number;
  readonly across: number;
  readonly narrowed: number;
}

/**
 * Base pressure by regime, with its uncertainty in three parts that all bodies share, so that they cancel between like
 * ones. A wake that narrows behind a late separation keeps the eighth power of its base's share of the shadow.
 */
export function baseBand({ across, lengthRatio, baseShare, afterbody = 0 }: BasePlace): BaseBand {
  const relief = AFTERBODY * Math.min(LONGEST_AFTERBODY, afterbody);
  const wide = WIDE + relief - across * (ACROSS + PER_LENGTH * Math.min(LONGEST, lengthRatio));
  const kept = Math.min(1, baseShare) ** POWER;
  return {
    expected: wide * kept,
    wide: WIDE_ERROR * kept,
    across: ACROSS_ERROR * across * kept,
    narrowed: NARROWED_ERROR * (1 - kept),
  };
}

/** Speed on the separation line / U. */
export function speedRatioOf(Cpb: number): number {
  return Math.sqrt(Math.max(LEAST_SQUARE, 1 - Cpb));
}

/** Base pressures above stagnation have no flow. */
const LEAST_SQUARE = 0.25;
