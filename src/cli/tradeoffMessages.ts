import type { Evaluation } from "../../shared/jobs/tradeoff/designSpace";
import type { TradeoffMember } from "../../shared/jobs/tradeoff/tradeoffMember";
import type { Result } from "../../shared/result";

/** What a thread is asked. */
export type TradeoffTask =
  | { readonly kind: "evaluate"; readonly variables: readonly number[] }
  | {
      readonly kind: "member";
      readonly name: string;
      readonly variables: readonly number[];
      readonly goals: readonly number[];
      readonly madeOff: number;
    };

/** What it answers. */
export type TradeoffAnswer =
  | { readonly kind: "evaluate"; readonly evaluation: Evaluation }
  | { readonly kind: "member"; readonly member: Result<TradeoffMember> };
