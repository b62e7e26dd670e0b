/** What of a row or state names its regime. */
export interface NamedRegime {
  readonly regime: string | null;
  readonly attached?: boolean | null;
  readonly settled?: boolean | null;
}

/**
 * A regime in the trade's words, with what a reader must know of the answer beside it: layers that stay attached to the
 * tail, and answers that are not settled. Null without a regime.
 */
export function regimeInWords({ regime, attached, settled }: NamedRegime): string | null {
  if (regime === null) return null;
  return `${regime}${attached ? ", attached flow" : ""}${settled === false ? ", not settled" : ""}`;
}
