import { normalQuantile } from "./normal";
import { randomDraws } from "./randomDraws";
import { type UncertainRange, valueInRange } from "./uncertainRange";

/**
 * What nobody knows, drawn once for all that is compared: in one draw a quantity of one name has the same value for every
 * one of them, so that differences between them are their own.
 */
export interface CommonDraws {
  /** The value of a named quantity in a draw; equal names give equal shares of their range. */
  value(name: string, range: UncertainRange, draw: number): number;
  /** Standard normal, shared as well. */
  normal(name: string, draw: number): number;
}

/** Shares nearer to the ends are not drawn, so that no normal draw is endless. */
const leastShare = 1e-6;

/**
 * @param draws how many
 * @param seed  whole number; equal seeds give equal draws
 */
export function commonDraws({ draws, seed }: { readonly draws: number; readonly seed: number }): CommonDraws {
  const known = new Map<string, Float64Array>();
  const sharesOf = (name: string) => {
    const found = known.get(name);
    if (found !== undefined) return found;
    // A stream of its own for every name: what is asked first does not matter.
    const own = randomDraws(seedOf(name, seed));
    const shares = Float64Array.from({ length: draws }, () => own.uniform());
    known.set(name, shares);
    return shares;
  };
  return {
    value: (name, range, draw) => valueInRange(range, sharesOf(name)[draw]),
    normal: (name, draw) => normalQuantile(Math.min(1 - leastShare, Math.max(leastShare, sharesOf(name)[draw]))),
  };
}

/** FNV-1a of the name, offset by the seed. Source: Fowler, Noll & Vo, as IETF draft-eastlake-fnv. */
function seedOf(name: string, seed: number): number {
  let hash = 0x811c9dc5 ^ seed;
  for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
  return hash | 0;
}
