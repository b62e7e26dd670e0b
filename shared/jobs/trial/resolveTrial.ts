import { fractionOr } from "../../numerics/degreesAndPercent";
import type { Problem } from "../../result";
import { randomDraws } from "../../statistics/randomDraws";
import { tableProblemText } from "../../tables/dataTable";
import { blindCodes } from "./blindCodes";
import { rankingCount } from "./claimFamily";
import { readScores } from "./readScores";
import type { TrialBlockDocument } from "./trialBlockDocument";
import type { PowerStudy, TrialAnalysis, TrialCase } from "./trialCase";
import { type TrialPlan, trialPlan } from "./trialPlan";
import type { TrialScore, TrialSetup } from "./trialSetup";

export type TrialReading =
  | { readonly ok: true; readonly value: TrialCase }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Values of keys that a case leaves out. */
export const standardAnalysis: TrialAnalysis = {
  significanceLevel: 0.05,
  bootstrapSamples: 1000,
  bandCoverage: 0.9,
  permutations: 5000,
};
export const standardSimulations = 400;
export const standardPower = 0.8;
export const standardDragMeaning = "drag over the first baseline's, weighted by attitude, from the case's pucks";

/** The trial block ready to run, or everything that is wrong with it. Fields of problems begin with "trial". */
export function resolveTrial(block: TrialBlockDocument): TrialReading {
  const problems = [
    ...twice(
      block.pucks.map(({ name }) => name),
      "trial.pucks",
      "name",
      "puck",
    ),
    ...twice(block.players, "trial.players", null, "player"),
    ...twice(
      block.activities.map(({ name }) => name),
      "trial.activities",
      "name",
      "activity",
    ),
    ...codeProblems(block),
    ...scaleProblems(block),
  ];
  if (block.power !== undefined && block.power.meanScores.length !== block.pucks.length) {
    const message = `has ${block.power.meanScores.length} values for ${block.pucks.length} pucks; it must have one per puck`;
    problems.push(at("trial.power.meanScores", message));
  }
  if (problems.length > 0) return { ok: false, problems };
  const setup = trialSetup(block);
  const plan = trialPlan(setup);
  const scores = scoresOf(block, setup, plan);
  if (!scores.ok) return scores;
  const { analysis } = block;
  return {
    ok: true,
    value: {
      setup,
      plan,
      isUnblinded: block.unblinded ?? false,
      scores: scores.scores,
      drag: {
        meaning: block.dragMeaning ?? standardDragMeaning,
        values: block.pucks.map(({ drag }) => drag ?? null),
      },
      analysis: {
        significanceLevel: analysis?.significanceLevel ?? standardAnalysis.significanceLevel,
        bootstrapSamples: analysis?.bootstrapSamples ?? standardAnalysis.bootstrapSamples,
        bandCoverage: fractionOr(analysis?.bandPercent, standardAnalysis.bandCoverage),
        permutations: analysis?.permutations ?? standardAnalysis.permutations,
      },
      power: powerStudy(block),
    },
  };
}

/** The setup of a block whose names and codes have been checked. */
export function trialSetup(block: TrialBlockDocument): TrialSetup {
  const { pucks, players, activities, scale, seed, repeats = 1 } = block;
  // Codes and orders come from streams apart, so that a code says nothing about an order.
  const drawn = blindCodes(pucks.length, randomDraws(seed + 5001));
  return {
    pucks: pucks.map(({ name, code }, i) => ({ name, code: code ?? drawn[i] })),
    players,
    activities: activities.map(({ name, weight = 1, instruction = "" }) => ({ name, weight, instruction })),
    scale: {
      lowest: scale.lowest,
      highest: scale.highest,
      step: scale.step ?? 1,
      question: scale.question,
      lowestMeans: scale.lowestMeans,
      highestMeans: scale.highestMeans,
      isHigherBetter: scale.higherIsBetter ?? true,
    },
    seed,
    repeats,
  };
}

function powerStudy({ power, scale, analysis, activities }: TrialBlockDocument): PowerStudy | null {
  if (power === undefined) return null;
  return {
    assumption: {
      means: (scale.higherIsBetter ?? true) ? power.meanScores : power.meanScores.map((mean) => -mean),
      spread: power.spread,
      playerSpread: power.playerSpread ?? 0,
      scale:
        (scale.higherIsBetter ?? true)
          ? { lowest: scale.lowest, highest: scale.highest, step: scale.step ?? 1 }
          : { lowest: -scale.highest, highest: -scale.lowest, step: scale.step ?? 1 },
      significanceLevel: analysis?.significanceLevel ?? standardAnalysis.significanceLevel,
      rankings: rankingCount(activities?.length ?? 1),
    },
    playerCounts: [...new Set(power.playerCounts)].sort((a, b) => a - b),
    simulations: power.simulations ?? standardSimulations,
    wantedPower: power.wantedPower ?? standardPower,
  };
}

type ScoresReading =
  | { readonly ok: true; readonly scores: readonly TrialScore[] | null }
  | { readonly ok: false; readonly problems: readonly Problem[] };

function scoresOf({ scores }: TrialBlockDocument, setup: TrialSetup, plan: TrialPlan): ScoresReading {
  if (scores === undefined) return { ok: true, scores: null };
  const { data } = scores;
  const field = "trial.scores.data";
  if (typeof data === "string") {
    const message = `names the file "${data}", which is read beside a case file only; here it must be the table itself`;
    return { ok: false, problems: [at(field, message)] };
  }
  const reading = readScores(data, setup, plan, scores.decimalMark ?? null);
  if (reading.problems.length > 0) {
    return { ok: false, problems: reading.problems.map((one) => at(field, tableProblemText(one))) };
  }
  return { ok: true, scores: reading.scores };
}

function codeProblems({ pucks }: TrialBlockDocument): Problem[] {
  const codes = pucks.flatMap(({ code }) => (code === undefined ? [] : [code]));
  if (codes.length === 0) return [];
  if (codes.length < pucks.length) {
    const bare = pucks.findIndex(({ code }) => code === undefined);
    return [at(`trial.pucks[${bare}].code`, "it is missing; either every puck has a code or none")];
  }
  const problems = twice(codes, "trial.pucks", "code", "puck");
  pucks.forEach(({ code }, i) => {
    const other = pucks.findIndex(({ name }, j) => j !== i && name.toLowerCase() === code?.toLowerCase());
    if (other >= 0) problems.push(at(`trial.pucks[${i}].code`, `"${code}" is the name of another puck`));
  });
  return problems;
}

function scaleProblems({ scale }: TrialBlockDocument): Problem[] {
  const steps = (scale.highest - scale.lowest) / (scale.step ?? 1);
  if (Math.abs(steps - Math.round(steps)) < 1e-9) return [];
  const message = `${scale.step} does not divide the scale from ${scale.lowest} to ${scale.highest} evenly`;
  return [at("trial.scale.step", message)];
}

function twice(names: readonly string[], field: string, key: string | null, what: string): Problem[] {
  const plain = names.map((name) => name.trim().toLowerCase());
  return plain.flatMap((name, i) => {
    if (plain.indexOf(name) === i) return [];
    const place = `${field}[${i}]${key === null ? "" : `.${key}`}`;
    return [at(place, `"${names[i]}" is the ${key ?? "name"} of another ${what}; each needs its own`)];
  });
}

function at(field: string, message: string): Problem {
  return { code: "trial", message: `${field}: ${message}`, field };
}
