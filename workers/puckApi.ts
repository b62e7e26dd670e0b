import { type FreeCoreDimension, type SizedPuck, sizeCoreForMass } from "../shared/puck/coreSizing";
import type { PuckDesign } from "../shared/puck/puckDimension";
import type { PuckCase } from "../shared/puckcase/puckCase";
import type { PuckResult } from "../shared/puckcase/puckResult";
import { puckSteps } from "../shared/puckcase/puckSteps";
import type { Result } from "../shared/result";
import { judgePuck, type MadeSampling, type MakingTolerances, type PuckJudgement } from "../shared/rules/judgePuck";
import type { RuleSet } from "../shared/rules/ruleSet";
import { holdLifeline, type Lifeline } from "./lifeline";

export interface CoreSizing {
  readonly massKilograms: number;
  readonly freeDimension: FreeCoreDimension;
  readonly leastCoverMetres: number;
}

/** What the puck worker does for the page. Arguments and answers are plain data; failures are values. */
export interface PuckApi extends Lifeline {
  /** Drag, comparisons and motions of the pucks of a case, baselines first. */
  solvePucks(theCase: PuckCase): Promise<readonly PuckResult[]>;
  judge(
    design: PuckDesign,
    rules: RuleSet,
    tolerances: MakingTolerances,
    sampling: MadeSampling | null,
  ): Promise<Result<PuckJudgement>>;
  sizeCore(design: PuckDesign, sizing: CoreSizing): Promise<Result<SizedPuck>>;
}

export function createPuckSolver(): PuckApi {
  return {
    holdLifeline,
    async solvePucks(theCase) {
      return [...puckSteps(theCase)].map(({ result }) => result);
    },
    async judge(design, rules, tolerances, sampling) {
      return judgePuck(design, rules, tolerances, sampling);
    },
    async sizeCore({ spec, setting }, { massKilograms, freeDimension, leastCoverMetres }) {
      return sizeCoreForMass(spec, setting, massKilograms, freeDimension, leastCoverMetres);
    },
  };
}
