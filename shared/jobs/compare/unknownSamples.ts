import { fractionOf, radiansOf } from "../../numerics/degreesAndPercent";
import { randomDraws } from "../../statistics/randomDraws";
import { shuffledOrder } from "../../statistics/shuffle";
import type { UnknownDocument } from "./unknownDocument";

/** One equally likely way that what is not known may be. null: as the case says. SI units and radians. */
export interface UnknownSample {
  /** A fraction. */
  readonly turbulenceIntensity: number | null;
  /** m */
  readonly sandGrainRoughness: number | null;
  readonly sandGrainRoughnessRatio: number | null;
  /** m/s */
  readonly speed: number | null;
  readonly reynolds: number | null;
  /** rad */
  readonly incidence: number | null;
  /** Shares of play on any scale; those left out are as the case says. */
  readonly shares: { readonly upright?: number; readonly flat?: number; readonly faceOn?: number };
  /** What each size is off by, m, by its key; of every design by itself. */
  readonly sizes: (design: number) => Readonly<Record<string, number>>;
}

/** Everything as the case says. */
export const knownInputs: UnknownSample = {
  turbulenceIntensity: null,
  sandGrainRoughness: null,
  sandGrainRoughnessRatio: null,
  speed: null,
  reynolds: null,
  incidence: null,
  shares: {},
  sizes: () => ({}),
};

const standardSamples = 12;

type Range = { readonly from: number; readonly to: number };

/**
 * Equally likely samples of what is not known, common to all designs but for the sizes, which each is made with by
 * itself. In each input every one of as many equal parts holds one sample.
 * Source: McKay, Beckman & Conover (1979), Technometrics 21, 239.
 */
export function unknownSamples(document: UnknownDocument | undefined, seed: number): readonly UnknownSample[] {
  if (document === undefined) return [knownInputs];
  const { samples: count = standardSamples } = document;
  const draws = randomDraws(seed);
  const shares = () => {
    const order = shuffledOrder(draws, count);
    return Float64Array.from(order, (slice) => (slice + draws.uniform()) / count);
  };
  const even = (range: Range | undefined) => {
    if (range === undefined) return null;
    return shares().map((share) => range.from + share * (range.to - range.from));
  };
  const even10 = (range: Range | undefined) =>
    range === undefined ? null : even({ from: Math.log(range.from), to: Math.log(range.to) })!.map(Math.exp);
  const turbulence = even(document.turbulencePercent);
  const roughness = even10(document.sandGrainRoughnessMetres);
  const roughnessRatio = even10(document.sandGrainRoughnessRatio);
  const speed = even(document.speedMetresPerSecond);
  const reynolds = even(document.reynoldsNumber);
  const incidence = even(document.incidenceDegrees);
  const { upright, flat, faceOn } = document.orientationShares ?? {};
  const play = { upright: even(upright), flat: even(flat), faceOn: even(faceOn) };
  const tolerances = Object.entries(document.tolerances ?? {});
  // Every design gets its own order of the slices, made when it is first asked for.
  const made = new Map<number, Readonly<Record<string, Float64Array>>>();
  const sizesOf = (design: number) => {
    const known = made.get(design);
    if (known !== undefined) return known;
    const own = randomDraws(seed + 1 + design);
    const columns = Object.fromEntries(
      tolerances.map(([key, half]) => {
        const order = shuffledOrder(own, count);
        return [key, Float64Array.from(order, (slice) => half * ((2 * (slice + own.uniform())) / count - 1))];
      }),
    );
    made.set(design, columns);
    return columns;
  };
  return Array.from({ length: count }, (_, s): UnknownSample => {
    const at = (column: Float64Array | null) => column?.[s] ?? null;
    const percent = at(turbulence);
    const degrees = at(incidence);
    return {
      turbulenceIntensity: percent === null ? null : fractionOf(percent),
      sandGrainRoughness: at(roughness),
      sandGrainRoughnessRatio: at(roughnessRatio),
      speed: at(speed),
      reynolds: at(reynolds),
      incidence: degrees === null ? null : radiansOf(degrees),
      shares: Object.fromEntries(
        Object.entries(play).flatMap(([key, column]) => (column === null ? [] : [[key, column[s]]])),
      ),
      sizes: (design) => Object.fromEntries(Object.entries(sizesOf(design)).map(([key, column]) => [key, column[s]])),
    };
  });
}

/** Keys of the inputs that are not known, for results. */
export function unknownKeys(document: UnknownDocument | undefined): string[] {
  return Object.entries(document ?? {}).flatMap(([key, value]) =>
    key === "samples" || value === undefined ? [] : [key],
  );
}
