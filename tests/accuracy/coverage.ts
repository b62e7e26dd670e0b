import type { BandTable } from "../../shared/engine/trust/bandTable";
import { dragBand } from "../../shared/engine/trust/dragBand";
import type { Group } from "../published/publishedValue";
import type { AccuracyRow, StatedBand } from "./accuracyRow";
import { type BandPoint, pointNearby } from "./bandPoints";
import { groupBy } from "./groupBy";
import type { Half } from "./sourceSplit";

/** How many published drag coefficients of a group and half lie in the bands stated for them. */
export interface Coverage {
  readonly group: Group | "all";
  readonly half: Half;
  readonly count: number;
  readonly covered: number;
  /** Points whose band spans a drag crisis, and how many of those are covered. */
  readonly nearCrisis: number;
  readonly coveredNearCrisis: number;
}

/** The band that the engine states for a published drag coefficient. */
export function statedBand(point: BandPoint, table: BandTable): StatedBand {
  const { section, state, condition, value, half } = point;
  const { low, high, spansCrisis } = dragBand(section, state, condition, pointNearby(point, table), table);
  return { low, high, spansCrisis, half, covers: value.value >= low && value.value <= high };
}

/** Coverage of all groups together and of each, in the held-out half and in the half that the bands come from. */
export function coverages(rows: readonly AccuracyRow[]): Coverage[] {
  const banded = rows.flatMap(({ group, band }) => (band === null ? [] : [{ group, band }]));
  return (["held out", "fit"] as const).flatMap((half) => {
    const members = banded.filter(({ band }) => band.half === half);
    const groups = [...groupBy(members, ({ group }) => group)];
    const part = (group: Coverage["group"], bands: readonly StatedBand[]) => coverage(group, half, bands);
    return [part("all", bandsOf(members)), ...groups.map(([, group]) => part(group[0].group, bandsOf(group)))];
  });
}

function bandsOf(rows: readonly { readonly band: StatedBand }[]): StatedBand[] {
  return rows.map(({ band }) => band);
}

function coverage(group: Coverage["group"], half: Half, bands: readonly StatedBand[]): Coverage {
  const near = bands.filter(({ spansCrisis }) => spansCrisis);
  return {
    group,
    half,
    count: bands.length,
    covered: bands.filter(({ covers }) => covers).length,
    nearCrisis: near.length,
    coveredNearCrisis: near.filter(({ covers }) => covers).length,
  };
}
