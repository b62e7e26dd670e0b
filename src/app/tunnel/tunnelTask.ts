import type { TunnelResult } from "../../../shared/jobs/tunnel/tunnelResult";
import type { TaskState } from "../view/taskState";
import type { TunnelInputs } from "./tunnelInputs";

/** What is known of the test. */
export type TunnelTask = TaskState<TunnelInputs, TunnelResult>;
