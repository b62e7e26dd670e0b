/**
 * A contact as it grows, lengths over the coat's thickness; shape [n] each, all rising. One curve serves
 * every size, since lengths are over the coat's thickness.
 */
export interface ContactCurve {
  readonly contactSize: Readonly<Float64Array>;
  readonly force: Readonly<Float64Array>;
  readonly approach: Readonly<Float64Array>;
  readonly peakPressure: Readonly<Float64Array>;
}

/** Of a contact over the coat's thickness: from where it is one of half-spaces to 1 % to where the coat is a thin film. */
const smallestSize = 0.02;
const largestSize = 8;
const sizeCount = 22;

/** Contact sizes over the coat's thickness that curves are solved at: from a half-space to a thin film. */
export const contactSizes: Readonly<Float64Array> = Float64Array.from(
  { length: sizeCount },
  (_, i) => smallestSize * (largestSize / smallestSize) ** (i / (sizeCount - 1)),
);
