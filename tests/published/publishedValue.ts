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

/**
 * The source's own scatter or reading error: its half-width, in the unit of the value or as a fraction of it, or how far
 * below and above the value the truth may lie, as fractions of it (a bound of a design table lies to one side).
 */
export type Scatter =
  | { readonly absolute: number }
  | { readonly relative: number }
  | { readonly relativeBelow: number; readonly relativeAbove: number };

/** What a source is: its own measurements, a summary of others', a design rule, or a formula or computation. */
export type SourceNature = "measurement" | "handbook" | "design code" | "theory";

/** What is known of the tunnel or tank that a source's bodies stood in. */
export interface Facility {
  /** Frontal area of the body over that of the stream. */
  readonly blockageRatio: number | null;
  readonly blockageCorrected: boolean | null;
  /** Span of the body over its diameter. */
  readonly lengthToDiameter: number | null;
  readonly howKnown: HowObtained;
  readonly remark?: string;
}

/** Families that are averaged together in the accuracy table. */
export type Group =
  | "smooth cylinder"
  | "rough cylinder"
  | "turbulence effect"
  | "ellipses"
  | "rectangles over length/height"
  | "rounded rectangles over corner radius"
  | "triangles and polygons"
  | "round noses with a flat rear"
  | "splitter plate"
  | "wheels and thin discs"
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
  /**
   * Why the value is shown but in no figure that judges the engine: the engine reads it from this very table, it is
   * another reading of values that are counted, or nothing was measured.
   */
  readonly shownOnly?: string;
}

export interface PublishedSource {
  /** Author and year, unique among the sources. */
  readonly name: string;
  readonly nature: SourceNature;
  /**
   * The experiment that the values go back to, where another source of this folder goes back to it too: sources of one
   * experiment are fitted, held out and left out together.
   */
  readonly experiment?: string;
  readonly facility?: Facility;
  /** Author (year), title or journal, volume, page, table or figure. */
  readonly citation: string;
  /** What to keep in mind about the whole source: apparatus, corrections, disagreement with others. */
  readonly remark?: string;
  readonly values: readonly PublishedValue[];
}

/** What the values of a source, or of a part of it, have in common. */
export type CommonPart = Omit<PublishedValue, "quantity" | "value" | "remark">;

/** Lowest and highest value that the source's own scatter allows. */
export function scatterRange({ value, scatter }: PublishedValue): readonly [number, number] {
  const size = Math.abs(value);
  if ("absolute" in scatter) return [value - scatter.absolute, value + scatter.absolute];
  if ("relative" in scatter) return [value - scatter.relative * size, value + scatter.relative * size];
  return [value - scatter.relativeBelow * size, value + scatter.relativeAbove * size];
}

/** Half-width of the scatter in the unit of the value. */
export function scatterHalfWidth(value: PublishedValue): number {
  const [low, high] = scatterRange(value);
  return (high - low) / 2;
}

/** The experiment that a source's values go back to. */
export function experimentOf({ experiment, name }: PublishedSource): string {
  return experiment ?? name;
}

/** Attaches what is common to one quantity and its value. */
export function published(common: CommonPart, quantity: Quantity, value: number, remark?: string): PublishedValue {
  return remark === undefined ? { ...common, quantity, value } : { ...common, quantity, value, remark };
}
