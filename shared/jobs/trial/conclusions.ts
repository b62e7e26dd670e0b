import { counted, listed, percentText, pText } from "./numberWords";
import type { BlockTestResult, PairResult, PuckStanding } from "./trialResult";

/** Fewer players than this make bootstrap bands too narrow to lean on; common practice, no source. */
const fewPlayers = 10;

/** What a ranking shows and what it does not, in plain sentences. */
export function rankingConclusions(
  about: string,
  players: number,
  test: BlockTestResult | null,
  standings: readonly PuckStanding[],
  pairs: readonly PairResult[],
  significanceLevel: number,
  rankings: number,
): string[] {
  if (test === null) return [];
  const level = percentText(significanceLevel);
  const family = rankings > 1 ? `, ${pText(test.familyP)} allowing for all ${rankings} rankings` : "";
  const p = `${test.name} p ${pText(test.pValue)}, ${test.pMethod === "exact" ? "exact" : "by permutation"}${family}`;
  const isShown = test.familyP <= significanceLevel;
  const allowing =
    rankings > 1 ? `all ${pairs.length} pairs and ${rankings} rankings` : `all ${counted(pairs.length, "pair")}`;
  const sentences = [
    isShown
      ? `${about}: the scores of ${counted(players, "player")} differ between the pucks by more than chance (${p}).`
      : `${about}: the scores of ${counted(players, "player")} show no difference between the pucks (${p}). That does not prove them equal: a difference too small for so few players would look the same.`,
  ];
  const shown = pairs.filter((pair) => pair.isShown);
  if (shown.length > 0) {
    sentences.push(
      `Shown pair by pair at ${level}: ${listed(shown.map(({ better, worse }) => `${better} over ${worse}`))}. The other ${counted(pairs.length - shown.length, "pair")} may be in either order.`,
    );
  } else if (pairs.every(({ smallestFamilyP }) => smallestFamilyP > significanceLevel)) {
    sentences.push(
      `No single pair can be shown at ${level}: even if all ${counted(players, "player")} agreed, the least p of a pair, allowing for ${allowing}, would be ${pText(pairs[0].smallestFamilyP)}.`,
    );
  } else if (!isShown) {
    sentences.push("Without a difference between the pucks as a whole, no single pair is claimed.");
  } else sentences.push(`No single pair is shown at ${level}, allowing for ${allowing}.`);
  const [first] = standings;
  if (first?.firstShare !== null && first !== undefined) {
    const cautions = [
      ...(players < fewPlayers ? ["With so few players this share and the bands are too sure of themselves."] : []),
      ...(isShown ? [] : ["Some puck always comes first; without a shown difference this share proves nothing."]),
    ];
    sentences.push(
      [
        `${first.code} is liked most, and is first in ${percentText(first.firstShare)} of the panels drawn from these players.`,
        ...cautions,
      ].join(" "),
    );
  }
  return sentences;
}
