/**
 * What a number or form of the engine rests on. "fitted": by `npm run calibrate` to measurements; "chosen": by us, on data
 * or by judgement; "remembered": published, but taken from memory and not checked against the paper; "published": read in
 * its source.
 */
export type LedgerKind = "fitted" | "chosen" | "remembered" | "published";

/** A number that formulas read from here and nowhere else. */
export interface LedgerNumber {
  readonly name: string;
  readonly symbol: string;
  /** The one definition. */
  readonly value: number;
  /** "1" where it has none; lengths in the reference width D, speeds in the stream speed U. */
  readonly unit: string;
  readonly kind: LedgerKind;
  /** The data, source or judgement behind it. */
  readonly restsOn: string;
  /** Files that read it, from `shared`. */
  readonly usedIn: readonly string[];
}

/** A form that could have been another, or a set of numbers that is kept together in its formula. */
export interface LedgerForm {
  readonly name: string;
  readonly form: string;
  readonly kind: LedgerKind;
  readonly restsOn: string;
  /** Files and the functions or constants in them that hold it, from `shared`: "engine/wake/afterbody.ts#afterbodySuctionShare". */
  readonly usedIn: readonly string[];
}
