import type { RandomDraws } from "../../statistics/randomDraws";
import { type RankCorrelation, rankCorrelations } from "../../statistics/rankCorrelation";
import { counted, percentText, pText } from "./numberWords";
import type { DragPreference, RankingResult } from "./trialResult";

/** No trial has more pucks. */
const mostPucks = 30;

/**
 * Whether the order of drags goes with the order of liking, by rank correlation, with what so few pucks can show.
 * @param drags one per code, any unit, null where not known
 */
export function dragPreference(
  meaning: string,
  codes: readonly string[],
  drags: readonly (number | null)[],
  ranking: RankingResult,
  significanceLevel: number,
  draws: RandomDraws,
): DragPreference {
  const pucks = codes.flatMap((code, j) => {
    const meanRank = ranking.standings.find((one) => one.code === code)?.meanRank ?? null;
    const drag = drags[j];
    return drag === null || meanRank === null ? [] : [{ code, drag, meanRank }];
  });
  const found = rankCorrelations(
    pucks.map(({ drag }) => drag),
    // Rounded, so that equal mean ranks are equal; negative, so that more liked is more.
    pucks.map(({ meanRank }) => -Number(meanRank.toFixed(9))),
    draws,
  );
  if (!found.ok) {
    const { code, message } = found.problem;
    const reason =
      code === "few-items" ? `${pucks.length} pucks have both values; a rank correlation needs 3` : message;
    return { meaning, pucks, spearman: null, kendall: null, sentences: [`No test: ${reason}.`] };
  }
  const { spearman, kendall } = found.value;
  const hasTies = [pucks.map(({ drag }) => drag), pucks.map(({ meanRank }) => Number(meanRank.toFixed(9)))].some(
    (values) => new Set(values).size < values.length,
  );
  return {
    meaning,
    pucks,
    spearman,
    kendall,
    sentences: [
      shownSentence(spearman, pucks.length, significanceLevel),
      limitSentence(spearman, pucks.length, significanceLevel, hasTies),
    ],
  };
}

function shownSentence({ coefficient, pValue }: RankCorrelation, count: number, level: number): string {
  const rho = `Spearman's rho ${coefficient.toFixed(2)}, p ${pText(pValue)}`;
  const direction =
    coefficient < 0
      ? "less drag goes with more liking"
      : coefficient > 0
        ? "more drag goes with more liking"
        : "drag and liking have no common order";
  if (pValue <= level) {
    return `Among these ${count} pucks ${direction} by more than chance (${rho}). That is no proof that drag is the cause: pucks that differ in drag differ in edge, mass and feel as well.`;
  }
  return `Among these ${count} pucks ${direction}, but no more than chance could do (${rho}).`;
}

/** The fewest pucks, all of different drag and liking, whose perfect order reaches the level: 2 of n! orders are perfect. */
function leastPucks(level: number): string {
  let count = 3;
  for (let orders = 6; 2 / orders > level && count < mostPucks; orders *= count) count++;
  return `Without ties ${counted(count, "puck")} are the least that can.`;
}

function limitSentence({ smallestP }: RankCorrelation, count: number, level: number, hasTies: boolean): string {
  if (smallestP > level) {
    const ties = hasTies ? " with these ties" : "";
    return `${counted(count, "puck")}${ties} cannot show a connection at ${percentText(level)}: even in perfect order the two-sided p would be ${pText(smallestP)}. ${leastPucks(level)}`;
  }
  const ties = hasTies ? " with these ties" : "";
  return `The least p that ${counted(count, "puck")}${ties} can give is ${pText(smallestP)}; players add nothing to it, only pucks do.`;
}
