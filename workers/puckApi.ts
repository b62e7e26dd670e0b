import type { HandoffFile, HandoffRequest } from "../shared/jobs/handoff/handoffFile";
import { handoffFiles } from "../shared/jobs/handoff/handoffFiles";
import { type FreeCoreDimension, type SizedPuck, sizeCoreForMass } from "../shared/jobs/puck/body/coreSizing";
import type { PuckDesign } from "../shared/jobs/puck/body/puckDimension";
import type { PuckCase } from "../shared/jobs/puck/puckCase";
import type { PuckResult } from "../shared/jobs/puck/puckResult";
import { puckSteps } from "../shared/jobs/puck/puckSteps";
import {
  judgePuck,
  type MadeSampling,
  type MakingTolerances,
  type PuckJudgement,
} from "../shared/jobs/puck/rules/judgePuck";
import type { RuleSet } from "../shared/jobs/puck/rules/ruleSet";
import type { Evaluation } from "../shared/jobs/tradeoff/designSpace";
import { type TradeoffMember, tradeoffMember } from "../shared/jobs/tradeoff/tradeoffMember";
import { type TradeoffSearch, tradeoffSearch } from "../shared/jobs/tradeoff/tradeoffSearch";
import { type Result, success } from "../shared/result";
import { type PuckCurves, puckCurves } from "./boardWork";
import { holdLifeline, type Lifeline } from "./lifeline";

/** m, where the case does not say how far dimensions are made wrong. */
const standardMadeOff = 5e-4;

export interface CoreSizing {
  readonly massKilograms: number;
  readonly freeDimension: FreeCoreDimension;
  readonly leastCoverMetres: number;
}

/** What the puck worker does for the page. Arguments and answers are plain data; failures are values. */
export interface PuckApi extends Lifeline {
  /** Drag, comparisons and motions of the pucks of a case, baselines first. */
  solvePucks(theCase: PuckCase): Promise<readonly PuckResult[]>;
  /** Drag curves of the pucks' sections, for where their crises lie. */
  puckCurves(theCase: PuckCase): Promise<readonly PuckCurves[]>;
  judge(
    design: PuckDesign,
    rules: RuleSet,
    tolerances: MakingTolerances,
    sampling: MadeSampling | null,
  ): Promise<Result<PuckJudgement>>;
  sizeCore(design: PuckDesign, sizing: CoreSizing): Promise<Result<SizedPuck>>;
  /** One point of the case's trade-off. */
  evaluatePoint(theCase: PuckCase, variables: readonly number[]): Promise<Result<Evaluation>>;
  /** Everything that leaves the house with the first candidate of a case. */
  handoff(
    theCase: PuckCase,
    request: HandoffRequest,
    judgement: PuckJudgement | null,
  ): Promise<Result<readonly HandoffFile[]>>;
  /** A member of the front in full. */
  reportMember(
    theCase: PuckCase,
    point: Omit<Evaluation, "violation" | "reason"> & { readonly name: string },
  ): Promise<Result<TradeoffMember>>;
}

/** The puck solver with its own memory of the last trade-off: its baseline is solved once, not with every point. */
export function createPuckSolver(): PuckApi {
  let lastKey = "";
  let lastSearch: Result<TradeoffSearch> | null = null;
  const searchOf = (theCase: PuckCase): Result<TradeoffSearch> => {
    const key = JSON.stringify(theCase);
    if (lastSearch === null || key !== lastKey) {
      lastSearch = tradeoffSearch(theCase);
      lastKey = key;
    }
    return lastSearch;
  };
  return {
    holdLifeline,
    async solvePucks(theCase) {
      return [...puckSteps(theCase)].map(({ result }) => result);
    },
    async puckCurves(theCase) {
      return puckCurves(theCase);
    },
    async judge(design, rules, tolerances, sampling) {
      return judgePuck(design, rules, tolerances, sampling);
    },
    async sizeCore({ spec, setting }, { massKilograms, freeDimension, leastCoverMetres }) {
      return sizeCoreForMass(spec, setting, massKilograms, freeDimension, leastCoverMetres);
    },
    async evaluatePoint(theCase, variables) {
      const search = searchOf(theCase);
      return search.ok ? success(search.value.evaluate(variables)) : search;
    },
    async handoff(theCase, request, judgement) {
      const candidate = theCase.pucks.find(({ role }) => role === "candidate");
      if (candidate === undefined) throw new RangeError("the case has no candidate to hand on.");
      return handoffFiles(candidate, theCase, request, judgement);
    },
    async reportMember(theCase, point) {
      const search = searchOf(theCase);
      if (!search.ok) return search;
      return tradeoffMember(theCase, search.value, point, theCase.tradeoff?.madeOffMetres ?? standardMadeOff);
    },
  };
}
