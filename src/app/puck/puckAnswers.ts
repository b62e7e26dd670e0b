import type { FluidProperties } from "../../../shared/engine/fluid/fluidSpec";
import type { SizedPuck } from "../../../shared/jobs/puck/body/coreSizing";
import type { PuckFigures, PuckSetting } from "../../../shared/jobs/puck/body/puckFigures";
import type { PuckCase } from "../../../shared/jobs/puck/puckCase";
import type { PuckResult } from "../../../shared/jobs/puck/puckResult";
import type { PuckJudgement } from "../../../shared/jobs/puck/rules/judgePuck";
import type { MadeShare } from "../../../shared/jobs/puck/rules/madeShare";
import type { Evaluation } from "../../../shared/jobs/tradeoff/designSpace";
import type { TradeoffMember } from "../../../shared/jobs/tradeoff/tradeoffMember";
import type { Problem } from "../../../shared/result";
import type { ChosenPucks } from "../../../workers/choiceWork";
import { initialTask, type TaskState } from "../view/taskState";
import type { KnownBoard } from "./puckBoard";
import type { PuckInputs, PuckMake } from "./puckInputs";

/** Figures of a puck that can be made, with the inputs that they belong to. */
export interface MeasuredPuck {
  readonly inputs: PuckInputs;
  readonly fluid: FluidProperties;
  readonly setting: PuckSetting;
  readonly candidate: PuckFigures;
  readonly baseline: PuckFigures;
}

export interface JudgedPuck {
  readonly inputs: PuckInputs;
  readonly judgement: PuckJudgement;
}

/** Drag and motions with the inputs that they belong to. */
export interface SolvedPucks {
  readonly inputs: PuckInputs;
  readonly baseline: PuckResult;
  readonly candidate: PuckResult;
}

/** A puck kept for comparison. */
export interface PuckPin {
  readonly id: number;
  readonly make: PuckMake;
  /** null until it is solved; the inputs are those whose play and motions the result belongs to. */
  readonly result: PuckResult | null;
  readonly solvedFor: PuckInputs | null;
}

/** What is known of the pucks. Last good results stay; each names its inputs. */
export interface PuckAnswers {
  readonly pins: readonly PuckPin[];
  /** What was worked out of all pucks beside each other; null before that. */
  readonly board: KnownBoard | null;
  readonly measured: MeasuredPuck | null;
  /** Why the present puck has no figures; null when all is well. */
  readonly problem: Problem | null;
  readonly judged: JudgedPuck | null;
  readonly judgeProblem: Problem | null;
  readonly solved: SolvedPucks | null;
  readonly solveProblem: Problem | null;
  /** True while a newer solution is on its way. */
  readonly solving: boolean;
  /** What a person asks for by a button. */
  readonly sizing: TaskState<PuckInputs, SizedPuck>;
  readonly counting: TaskState<PuckInputs, MadeShare>;
  readonly member: TaskState<MemberRequest, TradeoffMember>;
  readonly choosing: TaskState<PuckInputs, ChosenPucks>;
}

/** A member of a trade-off's front that is to be reported in full. */
export interface MemberRequest {
  readonly search: PuckCase;
  readonly member: Evaluation;
  readonly name: string;
}

export const nothingKnown: PuckAnswers = {
  pins: [],
  board: null,
  measured: null,
  problem: null,
  judged: null,
  judgeProblem: null,
  solved: null,
  solveProblem: null,
  solving: false,
  sizing: initialTask,
  counting: initialTask,
  member: initialTask,
  choosing: initialTask,
};

/** Pins beyond this would only hide each other. */
export const mostPuckPins = 6;
