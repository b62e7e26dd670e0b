import type { RandomDraws } from "../../statistics/randomDraws";
import { type RankCorrelation, rankCorrelations } from "../../statistics/rankCorrelation";
import { counted, pText } from "./numberWords";
import type { DragPreference, RankingResult } from "./trialResult";

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
  return {
    meaning,
    pucks,
    spearman,
    kendall,
    sentences: [
      shownSentence(spearman, pucks.length, significanceLevel),
      limitSentence(spearman, pucks.length, significanceLevel),
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

function limitSentence({ smallestP, coefficient, pValue }: RankCorrelation, count: number, level: number): string {
  if (smallestP > level) {
    return `${count} pucks cannot prove a connection at all: in perfect order the two-sided p would still be ${pText(smallestP)}. Five pucks are the least that can reach 0.05.`;
  }
  const isPerfect = Math.abs(coefficient) > 1 - 1e-9;
  const needed =
    isPerfect || pValue <= level ? "" : " A weaker connection than a nearly perfect order needs more pucks.";
  return `The least p that ${counted(count, "puck")} in such an order of ties can give is ${pText(smallestP)}; players add nothing to it, only pucks do.${needed}`;
}
