import type { Words } from "../section/answerWords";
import type { BoardRow } from "./puckBoard";

/** Shares of being the best from which two pucks count as contenders. */
const contender = 0.2;

/** What the board comes to: who has less drag than the baseline and how surely, and what is not decided. */
export function boardAnswer(rows: readonly BoardRow[]): readonly Words[] | null {
  const compared = rows.filter(({ role, study }) => role !== "baseline" && study?.comparison != null);
  if (compared.length === 0) return null;
  const best = compared.reduce((one, other) => (changeOf(other) < changeOf(one) ? other : one));
  const { change, probabilityLess } = best.study!.comparison!;
  const isLess = probabilityLess >= 0.5;
  const words: Words[] = [
    { text: best.spec.name, isStrong: true },
    { text: ` has ${isLess ? "less" : "more"} drag than the baseline in ` },
    { text: `${Math.round(100 * (isLess ? probabilityLess : 1 - probabilityLess))} of 100`, isStrong: true },
    {
      text: ` draws: ${percent(change.expected)}, in 9 of 10 between ${signed(change.low)} and ${signed(change.high)}. `,
    },
  ];
  const contenders = compared
    .filter(({ study }) => (study?.probabilityBest ?? 0) >= contender)
    .sort((a, b) => (b.study?.probabilityBest ?? 0) - (a.study?.probabilityBest ?? 0));
  if (contenders.length >= 2) {
    const names = contenders.map(({ spec }) => spec.name);
    const shares = contenders.map(({ study }) => Math.round(100 * (study?.probabilityBest ?? 0)));
    words.push({
      text: `Not decided between ${listed(names)}: the best in ${listed(shares.map(String))} of 100.`,
    });
  } else if (best.study!.comparison!.decided === "not decided") {
    words.push({ text: "Not decided: measure both before relying on it." });
  }
  return words;
}

function changeOf({ study }: BoardRow): number {
  return study?.comparison?.change.expected ?? Number.POSITIVE_INFINITY;
}

export function signed(value: number): string {
  const round = Math.round(value);
  return round === 0 ? "0" : `${round > 0 ? "+" : "−"}${Math.abs(round)}`;
}

export function percent(value: number): string {
  return `${signed(value)} %`;
}

function listed(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts[parts.length - 1]}`;
}
