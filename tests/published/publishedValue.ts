import type { Quantity } from "./quantity";

/** A: may gate the build. B: may gate it with the wide scatter given beside it. C: shown beside results, never a gate. */
export type Grade = "A" | "B" | "C";

/** How a value came into this folder. "From memory" means that no copy was at hand when it was written down. */
export type HowObtained =
  | "public copy"
  | "public copy of a digitised figure"
  | "from memory, high confidence"
  | "from memory, medium confidence"
  | "from memory, low confidence"
  | "computed from the stated formula"
  | "computed by an independent numerical solution";

/** Half-width of the source's own scatter or reading error, in the unit of the value or as a fraction of it. */
export type Scatter = { readonly absolute: number } | { readonly relative: number };

/** Families that are averaged together in the accuracy table. */
export type Group =
  | "smooth cylinder"
  | "rough cylinder"
  | "turbulence effect"
  | "ellipses"
  | "rectangles over length/height"
  | "rounded rectangles over corner radius"
  | "short and axial cylinders"
  | "boundary-layer flows"
  | "wake closure"
  | "fluids";

/** One published number: what it is of, what it is, and how far it can be trusted. */
export interface PublishedValue {
  readonly group: Group;
  readonly quantity: Quantity;
  /** In the unit that the quantity's kind states. */
  readonly value: number;
  readonly scatter: Scatter;
  readonly grade: Grade;
  readonly howObtained: HowObtained;
  readonly remark?: string;
}

export interface PublishedSource {
  /** Author and year, unique among the sources. */
  readonly name: string;
  /** Author (year), title or journal, volume, page, table or figure. */
  readonly citation: string;
  /** What to keep in mind about the whole source: apparatus, corrections, disagreement with others. */
  readonly remark?: string;
  readonly values: readonly PublishedValue[];
}

/** What the values of a source, or of a part of it, have in common. */
export type CommonPart = Omit<PublishedValue, "quantity" | "value" | "remark">;

/** Half-width of the scatter in the unit of the value. */
export function scatterHalfWidth(value: PublishedValue): number {
  return "absolute" in value.scatter ? value.scatter.absolute : value.scatter.relative * Math.abs(value.value);
}

/** Attaches what is common to one quantity and its value. */
export function published(common: CommonPart, quantity: Quantity, value: number, remark?: string): PublishedValue {
  return remark === undefined ? { ...common, quantity, value } : { ...common, quantity, value, remark };
}
