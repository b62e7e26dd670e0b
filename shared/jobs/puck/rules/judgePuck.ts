import { problem, type Result, success } from "../../../result";
import { type FigureKey, figureCatalogue, figureKeys, figureText } from "../body/figureCatalogue";
import { type DimensionKey, dimensionOf, dimensionTable, type PuckDesign, withDimension } from "../body/puckDimension";
import { type PuckFigures, puckFigures } from "../body/puckFigures";
import { type MadeShare, type MadeSizes, madeShare } from "./madeShare";
import type { RuleSet } from "./ruleSet";
import { toleranceFactor } from "./toleranceFactor";
import { stackTolerances, type ToleranceStack } from "./toleranceStack";

/** Plus and minus, m, by dimension. */
export type MakingTolerances = Partial<Readonly<Record<DimensionKey, number>>>;

/** "onlyIfMadeBetter": inside as drawn, but the tolerances reach outside. "notDetermined": the puck has no such figure. */
export type RuleVerdict = "pass" | "fail" | "onlyIfMadeBetter" | "notDetermined";

export interface RuleJudgement {
  readonly figure: FigureKey;
  readonly from: number | null;
  readonly to: number | null;
  readonly verdict: RuleVerdict;
  /** Figure as drawn and over the tolerances; null when not determined. */
  readonly stack: ToleranceStack | null;
  /** For "onlyIfMadeBetter": all tolerances times this (0 to 1) just keep the figure inside; else null. */
  readonly toleranceFactor: number | null;
  /** One sentence a person can act on. */
  readonly message: string;
}

export interface PuckJudgement {
  readonly ruleSet: string;
  readonly date: string;
  readonly verdict: RuleVerdict;
  readonly rules: readonly RuleJudgement[];
  /** Share of made pucks inside every range; null when not asked for. */
  readonly made: MadeShare | null;
  readonly notice: string;
}

export interface MadeSampling {
  readonly sizes: MadeSizes;
  readonly samples: number;
  readonly seed: number;
}

export const judgementNotice =
  "Compares computed figures with the ranges in the named file. It is no statement that a puck meets any body's rules: only that body's own rules, in force and in full, and its own inspection decide.";

/**
 * Judges a puck against a rule set with its making tolerances stacked exactly over all corners, and by random making
 * when asked. Fails when the puck itself, or a corner of its tolerances, is impossible.
 */
export function judgePuck(
  design: PuckDesign,
  rules: RuleSet,
  tolerances: MakingTolerances,
  sampling: MadeSampling | null,
): Result<PuckJudgement> {
  const keys = (Object.keys(tolerances) as DimensionKey[]).filter((key) => tolerances[key] !== 0);
  const missing = keys.find((key) => dimensionOf(design.spec, key) === null);
  if (missing !== undefined) {
    return problem("tolerances", `this puck has no ${dimensionTable[missing].label} to have a tolerance`, missing);
  }
  const nominal = keys.map((key) => dimensionOf(design.spec, key) ?? 0);
  const plusMinus = keys.map((key) => tolerances[key] ?? 0);
  const figuresAt = rememberFigures((inputs) => {
    const spec = keys.reduce((changed, key, i) => withDimension(changed, key, inputs[i]), design.spec);
    return puckFigures(spec, design.setting);
  });
  const asDrawn = figuresAt(nominal);
  if (!asDrawn.ok) return asDrawn;
  const judgements: RuleJudgement[] = [];
  for (const figure of figureKeys) {
    const range = rules.ranges[figure];
    if (range === undefined) continue;
    const judged = judgeFigure(figure, range, nominal, plusMinus, asDrawn.value, figuresAt);
    if (!judged.ok) return judged;
    judgements.push(judged.value);
  }
  const isInside = (figures: PuckFigures) =>
    judgements.every(({ figure, from, to }) => {
      const value = figures[figure];
      return value !== null && value >= (from ?? value) && value <= (to ?? value);
    });
  const accepts = (inputs: readonly number[]) => {
    const figures = figuresAt(inputs);
    return figures.ok && isInside(figures.value);
  };
  const made =
    sampling === null ? null : madeShare(nominal, plusMinus, accepts, sampling.sizes, sampling.samples, sampling.seed);
  if (made !== null && !made.ok) return made;
  return success({
    ruleSet: rules.name,
    date: rules.date,
    verdict: worst(judgements.map((judgement) => judgement.verdict)),
    rules: judgements,
    made: made === null ? null : made.value,
    notice: judgementNotice,
  });
}

function worst(verdicts: readonly RuleVerdict[]): RuleVerdict {
  const order: readonly RuleVerdict[] = ["fail", "notDetermined", "onlyIfMadeBetter"];
  return order.find((verdict) => verdicts.includes(verdict)) ?? "pass";
}

type FiguresAt = (inputs: readonly number[]) => Result<PuckFigures>;

/** Every range asks for the same corners: figures are kept by their inputs. */
function rememberFigures(figuresAt: FiguresAt): FiguresAt {
  const known = new Map<string, Result<PuckFigures>>();
  return (inputs) => {
    const key = inputs.join(" ");
    const found = known.get(key);
    if (found !== undefined) return found;
    const figures = figuresAt(inputs);
    if (known.size < 10_000) known.set(key, figures);
    return figures;
  };
}

function judgeFigure(
  figure: FigureKey,
  range: { readonly from?: number; readonly to?: number },
  nominal: readonly number[],
  plusMinus: readonly number[],
  asDrawn: PuckFigures,
  figuresAt: FiguresAt,
): Result<RuleJudgement> {
  const from = range.from ?? null;
  const to = range.to ?? null;
  const { label } = figureCatalogue[figure];
  const base = { figure, from, to };
  const drawn = asDrawn[figure];
  if (drawn === null) {
    const message = `${label} is not determined for this puck, so this rule stays open`;
    return success({ ...base, verdict: "notDetermined", stack: null, toleranceFactor: null, message });
  }
  const allowed =
    `allowed ${from === null ? "" : `from ${figureText(figure, from)} `}${to === null ? "" : `up to ${figureText(figure, to)}`}`.trim();
  const figureOf = (inputs: readonly number[]) => {
    const figures = figuresAt(inputs);
    return figures.ok ? success(figures.value[figure] ?? Number.NaN) : figures;
  };
  const isInside = (low: number, high: number) => low >= (from ?? low) && high <= (to ?? high);
  const stack = stackTolerances(nominal, plusMinus, figureOf);
  if (!stack.ok) return stack;
  const { lowest, highest } = stack.value;
  const spread = `${figureText(figure, lowest)} to ${figureText(figure, highest)} as made`;
  if (!isInside(drawn, drawn)) {
    const message = `${label} ${figureText(figure, drawn)} is outside: ${allowed}`;
    return success({ ...base, verdict: "fail", stack: stack.value, toleranceFactor: null, message });
  }
  if (isInside(lowest, highest)) {
    const message = `${label} ${figureText(figure, drawn)}, ${spread}, is inside: ${allowed}`;
    return success({ ...base, verdict: "pass", stack: stack.value, toleranceFactor: null, message });
  }
  const factor = toleranceFactor(nominal, plusMinus, figureOf, stack.value, { from, to });
  const message = `${label} ${figureText(figure, drawn)} is inside as drawn but ${spread}: inside only if made ${betterText(factor)}; ${allowed}`;
  return success({ ...base, verdict: "onlyIfMadeBetter", stack: stack.value, toleranceFactor: factor, message });
}

/** Rounded down, so that what is asked for keeps the figure inside. */
function betterText(factor: number): string {
  const percent = Math.floor(100 * factor);
  return percent >= 1 ? `to ${percent} % of these tolerances or better` : "exactly: it lies at the end of its range";
}
