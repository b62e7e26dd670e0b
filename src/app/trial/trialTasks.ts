import type { PowerResult, TrialResult } from "../../../shared/jobs/trial/trialResult";
import type { TaskState } from "../view/taskState";
import type { TrialInputs } from "./trialInputs";

export type RankingTask = TaskState<TrialInputs, TrialResult>;

/** The study of power. */
export type PowerTask = TaskState<TrialInputs, PowerResult>;
