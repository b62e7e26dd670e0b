import { type TextColumn, textTable } from "../../tables/textTable";
import { pText } from "./numberWords";
import type { BlockTestResult, PairResult, PuckStanding, RankingResult, TrialResult } from "./trialResult";

/** A trial as text for people: plan, rankings with what they show, order, players, drag, power. */
export function trialTable(result: TrialResult): string {
  const nameOf = new Map(result.pucks.map(({ code, name }) => [code, name === null ? code : `${code} ${name}`]));
  const named = (code: string) => nameOf.get(code) ?? code;
  return [
    "PLAYER TRIAL",
    ...result.cautions.map((caution) => `Caution: ${caution}`),
    `Plan: ${result.plan.sentence}`,
    ...(result.scores === null
      ? ["No scores yet."]
      : [
          `Scores: ${result.scores.scored} of ${result.scores.wanted}${result.scores.missing === 0 ? "" : `, ${result.scores.missing} missing`}; "${result.scale.question}" ${result.scale.lowest} (${result.scale.lowestMeans}) to ${result.scale.highest} (${result.scale.highestMeans}).`,
        ]),
    ...result.rankings.flatMap((ranking) => ["", ...rankingLines(ranking, named)]),
    ...orderLines(result, named),
    ...judgeLines(result),
    ...dragLines(result, named),
    ...powerLines(result),
    ...(result.notes.length === 0 ? [] : ["", ...result.notes.map((note) => `Note: ${note}`)]),
    "",
  ].join("\n");
}

function rankingLines(ranking: RankingResult, named: (code: string) => string): string[] {
  const { activity, test, kendallW, players, missingCells, problem } = ranking;
  const title = activity === null ? "OVERALL, activities weighted" : `ACTIVITY: ${activity}`;
  const missing = missingCells === 0 ? "" : `, ${missingCells} cells missing`;
  const columns: TextColumn<PuckStanding>[] = [
    { title: "puck", unit: "", isText: true, cell: ({ code }) => named(code) },
    { title: "scored", unit: "players", cell: ({ scored }) => String(scored) },
    { title: "mean rank", unit: "1 best", cell: ({ meanRank }) => fixed(meanRank, 2) },
    { title: "median", unit: "score", cell: ({ medianScore }) => fixed(medianScore, 1) },
    { title: "strength", unit: "sum 1", cell: ({ strength }) => fixed(strength, 3) },
    { title: "band", unit: "", cell: bandText },
    { title: "first in", unit: "% of panels", cell: ({ firstShare }) => fixed(share(firstShare), 0) },
  ];
  const pairColumns: TextColumn<PairResult>[] = [
    { title: "pair", unit: "", isText: true, cell: ({ better, worse }) => `${named(better)} over ${named(worse)}` },
    { title: "for", unit: "", cell: ({ preferBetter }) => String(preferBetter) },
    { title: "against", unit: "", cell: ({ preferWorse }) => String(preferWorse) },
    { title: "equal", unit: "", cell: ({ undecided }) => String(undecided) },
    { title: "p", unit: "", cell: ({ pValue }) => pText(pValue) },
    { title: "p, all claims", unit: "family", cell: ({ familyP }) => pText(familyP) },
    { title: "", unit: "", isText: true, cell: ({ isShown }) => (isShown ? "shown" : "not shown") },
  ];
  return [
    `${title} (${players} players${missing})`,
    ...(test === null ? [] : [testText(test, kendallW)]),
    ...(problem === null ? [] : [`No test: ${problem}.`]),
    ...textTable(columns, ranking.standings),
    ...(ranking.pairs.length === 0 || test === null ? [] : textTable(pairColumns, ranking.pairs)),
    ...ranking.conclusions,
  ];
}

/** "Friedman 14.20, 3 degrees of freedom: p 0.0012 exact (chi-square 0.0026, F 0.0004); Kendall's W 0.59". */
export function testText(test: BlockTestResult, kendallW: number | null): string {
  const error = test.standardError === null ? "" : ` +- ${test.standardError.toFixed(4)}`;
  const p = `p ${pText(test.pValue)}${error} ${test.pMethod === "exact" ? "exact" : `by ${test.permutations} permutations`}`;
  const others = [
    `chi-square ${pText(test.chiSquareP)}`,
    ...(test.fP === null ? [] : [`Iman-Davenport F ${pText(test.fP)}`]),
  ];
  const agreement = kendallW === null ? "" : `; Kendall's W ${kendallW.toFixed(2)}`;
  return `${test.name} ${test.statistic.toFixed(2)}, ${test.degreesOfFreedom} degrees of freedom: ${p} (${others.join(", ")})${agreement}`;
}

function orderLines({ orderEffects }: TrialResult, named: (code: string) => string): string[] {
  if (orderEffects.length === 0) return [];
  return [
    "",
    "ORDER",
    ...orderEffects.flatMap(({ effect, levels, effects, sentence }) => [
      sentence,
      `  ${levels.map((level, i) => `${effect === "position" ? `place ${level}` : `after ${named(level)}`} ${signed(effects[i])}`).join(", ")}`,
    ]),
  ];
}

function judgeLines({ judges }: TrialResult): string[] {
  if (judges.length === 0) return [];
  const columns: TextColumn<(typeof judges)[number]>[] = [
    { title: "player", unit: "", isText: true, cell: ({ name }) => name },
    { title: "with the others", unit: "rho", cell: ({ agreementWithOthers }) => fixed(agreementWithOthers, 2) },
    { title: "with themselves", unit: "rho", cell: ({ agreementWithSelf }) => fixed(agreementWithSelf, 2) },
  ];
  return [
    "",
    "PLAYERS: rank correlation with the mean of all others, and of first and second scores. A low one is another taste or other play, no fault.",
    ...textTable(columns, judges),
  ];
}

function dragLines({ dragPreference }: TrialResult, named: (code: string) => string): string[] {
  if (dragPreference === null) return [];
  const { meaning, pucks, spearman, kendall, sentences } = dragPreference;
  const columns: TextColumn<(typeof pucks)[number]>[] = [
    { title: "puck", unit: "", isText: true, cell: ({ code }) => named(code) },
    { title: "drag", unit: "", cell: ({ drag }) => String(Number(drag.toPrecision(4))) },
    { title: "mean rank", unit: "1 best", cell: ({ meanRank }) => meanRank.toFixed(2) },
  ];
  return [
    "",
    `DRAG AGAINST LIKING: ${meaning}`,
    ...textTable(columns, pucks),
    ...(spearman === null || kendall === null
      ? []
      : [
          `Spearman's rho ${spearman.coefficient.toFixed(3)}, p ${pText(spearman.pValue)} ${spearman.method}; Kendall's tau-b ${kendall.coefficient.toFixed(3)}, p ${pText(kendall.pValue)} ${kendall.method}; both two-sided`,
        ]),
    ...sentences,
  ];
}

function powerLines({ power }: TrialResult): string[] {
  if (power === null) return [];
  const columns: TextColumn<(typeof power.curve)[number]>[] = [
    { title: "players", unit: "", cell: ({ playerCount }) => String(playerCount) },
    { title: "power", unit: "", cell: (point) => point.power.toFixed(3) },
    { title: "+-", unit: "1 s.e.", cell: ({ standardError }) => standardError.toFixed(3) },
    { title: "best over last", unit: "shown", cell: (point) => point.pairPower.toFixed(3) },
    { title: "right winner", unit: "share", cell: ({ bestFirstShare }) => bestFirstShare.toFixed(3) },
  ];
  return ["", `POWER, ${power.simulations} simulated trials each`, ...textTable(columns, power.curve), power.sentence];
}

function bandText({ strengthLow, strengthHigh }: PuckStanding): string {
  if (strengthLow === null || strengthHigh === null) return "-";
  return `${strengthLow.toFixed(3)}-${strengthHigh.toFixed(3)}`;
}

function share(value: number | null): number | null {
  return value === null ? null : 100 * value;
}

function fixed(value: number | null, digits: number): string {
  return value === null ? "-" : value.toFixed(digits);
}

function signed(value: number): string {
  return `${value < 0 ? "-" : "+"}${Math.abs(value).toFixed(2)}`;
}
