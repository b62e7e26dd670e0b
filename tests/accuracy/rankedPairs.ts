import { rootMeanSquare } from "simple-statistics";
import type { SectionQuantity } from "../published/quantity";
import { groupBy } from "./groupBy";
import type { SectionDrag } from "./sectionDrags";

export type PairDifference = "corner radius" | "length/height" | "roughness" | "turbulence" | "shape" | "several";

export const pairDifferences: readonly PairDifference[] = [
  "corner radius",
  "length/height",
  "roughness",
  "turbulence",
  "shape",
  "several",
];

/** Two drag coefficients of one source at one Reynolds number that differ by more than `leastRatio`. */
export interface DragPair {
  readonly first: SectionDrag;
  readonly second: SectionDrag;
  readonly differs: PairDifference;
  /** Whether the engine puts the two in the published order; a missing answer is not right. */
  readonly right: boolean;
  /** ln of the engine's ratio over the published one; null without an answer. */
  readonly ratioError: number | null;
}

/** Measured drags nearer than this factor are not counted as different. */
export const leastRatio = 1.1;

/** All pairs of a source at one Reynolds number (or range of them) whose drags differ by more than `leastRatio`. */
export function rankedPairs(drags: readonly SectionDrag[]): DragPair[] {
  const alike = groupBy(drags, ({ source, quantity }) => `${source}|${quantity.kind}|${reynoldsKey(quantity)}`);
  return [...alike.values()].flatMap((members) =>
    members.flatMap((first, i) =>
      members.slice(i + 1).flatMap((second): DragPair[] => {
        const differs = difference(first.quantity, second.quantity);
        const published = Math.log(first.published / second.published);
        if (differs === null || Math.abs(published) <= Math.log(leastRatio)) return [];
        if (first.predicted === null || second.predicted === null) {
          return [{ first, second, differs, right: false, ratioError: null }];
        }
        const predicted = Math.log(first.predicted / second.predicted);
        return [{ first, second, differs, right: predicted * published > 0, ratioError: predicted - published }];
      }),
    ),
  );
}

export interface RankingFigures {
  readonly differs: PairDifference | "all";
  readonly pairs: number;
  readonly right: number;
  /** Root mean square of ln(engine's ratio / published ratio). */
  readonly rmsRatioError: number;
}

/** Figures of all pairs and of those that differ in one thing, empty ones left out. */
export function rankingFigures(pairs: readonly DragPair[]): RankingFigures[] {
  return (["all", ...pairDifferences] as const).flatMap((differs) => {
    const members = differs === "all" ? pairs : pairs.filter((pair) => pair.differs === differs);
    const errors = members.flatMap(({ ratioError }) => (ratioError === null ? [] : [ratioError]));
    if (errors.length === 0) return [];
    const right = members.filter((pair) => pair.right).length;
    return [{ differs, pairs: members.length, right, rmsRatioError: rootMeanSquare(errors) }];
  });
}

function reynoldsKey(quantity: SectionQuantity): string {
  return "reynolds" in quantity ? String(quantity.reynolds) : `${quantity.reynoldsFrom} ${quantity.reynoldsTo}`;
}

/** In what two bodies in their streams differ; null when in nothing. */
function difference(a: SectionQuantity, b: SectionQuantity): PairDifference | null {
  const found = new Set<PairDifference>();
  if (a.sandGrainRoughnessRatio !== b.sandGrainRoughnessRatio) found.add("roughness");
  if (a.turbulenceIntensity !== b.turbulenceIntensity) found.add("turbulence");
  if (a.section.shape !== b.section.shape || pointing(a) !== pointing(b)) found.add("shape");
  else {
    if (property(a, "lengthToHeight") !== property(b, "lengthToHeight")) found.add("length/height");
    if (corner(a) !== corner(b)) found.add("corner radius");
  }
  return found.size === 0 ? null : found.size === 1 ? [...found][0] : "several";
}

function property({ section }: SectionQuantity, name: string): number | null {
  return (section as unknown as Record<string, number | undefined>)[name] ?? null;
}

function corner(quantity: SectionQuantity): number | null {
  return property(quantity, "cornerRadiusToHeight") ?? property(quantity, "cornerRadiusToSide");
}

function pointing({ section }: SectionQuantity): string | null {
  return section.shape === "triangle" ? section.pointing : null;
}
