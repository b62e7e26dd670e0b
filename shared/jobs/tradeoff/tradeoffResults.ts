import { generatedBy } from "../../document/generatedBy";
import type { FluidProperties } from "../../engine/fluid/fluidSpec";
import type { PuckCase, PuckFigures, PuckSpec, TradeoffDocument } from "../puck/public";
import type { Evaluation } from "./designSpace";
import type { PuckGoal, PuckVariable } from "./puckEvaluation";
import type { TradeoffMember } from "./tradeoffMember";
import { frontOf, runCounts, type TradeoffRun } from "./tradeoffRun";
import type { TradeoffPlan } from "./tradeoffSearch";

export const tradeoffResultsVersion = 1;

/** Everything that a trade-off yields: the JSON document of the command line. Plain data. */
export interface TradeoffResults {
  readonly wakewrightTradeoff: typeof tradeoffResultsVersion;
  readonly title: string;
  readonly note: string | null;
  readonly generatedBy: string;
  readonly fluid: FluidProperties;
  readonly method: TradeoffDocument["method"];
  readonly template: string;
  /** Free dimensions with the bounds that were searched, m. */
  readonly variables: readonly PuckVariable[];
  readonly goals: readonly PuckGoal[];
  readonly baseline: { readonly name: string; readonly puck: PuckSpec; readonly figures: PuckFigures };
  readonly evaluated: number;
  /** The points that none beats; values of dimensions and goals in the order of variables and goals. */
  readonly front: readonly Pick<Evaluation, "variables" | "goals">[];
  /** Members of the front in full, spread along it. */
  readonly members: readonly TradeoffMember[];
  /** Whether any member beats the baseline by more than the band. */
  readonly verdict: string;
  readonly cautions: readonly string[];
  readonly problems: readonly string[];
}

export function tradeoffResults(
  about: { readonly title: string; readonly note: string | null },
  theCase: PuckCase,
  plan: TradeoffPlan,
  run: TradeoffRun,
  members: readonly TradeoffMember[],
  problems: readonly string[],
): TradeoffResults {
  const { tradeoff, pucks, stream } = theCase;
  if (tradeoff === null) throw new RangeError("the case has no trade-off; it must have one to have results of it.");
  const [baseline] = pucks;
  const front = frontOf(run);
  return {
    wakewrightTradeoff: tradeoffResultsVersion,
    title: about.title,
    note: about.note,
    generatedBy,
    fluid: stream.fluid,
    method: tradeoff.method,
    template: plan.template.spec.name,
    variables: plan.search.variables.map(({ key }, i) => ({
      key,
      lowest: plan.space.variables[i].lowest,
      highest: plan.space.variables[i].highest,
    })),
    goals: plan.search.goals,
    baseline: { name: baseline.spec.name, puck: baseline.spec, figures: baseline.figures },
    evaluated: runCounts(run).done,
    front: front.map(({ variables, goals }) => ({ variables, goals })),
    members,
    verdict: verdictSentence(front.length, members, baseline.spec.name),
    cautions: [...new Set(members.flatMap(({ cautions }) => cautions))],
    problems,
  };
}

function verdictSentence(frontSize: number, members: readonly TradeoffMember[], baseline: string): string {
  if (frontSize === 0)
    return "No puck inside the rules was found: widen the bounds, the rules' ranges or the wanted mass.";
  const beating = members.filter(({ comparison }) => comparison.beatsBaselineByMoreThanBand);
  if (beating.length === 0) {
    return `None of the ${members.length} members of the front looked at is shown to have less drag than ${baseline} by more than the band.`;
  }
  return `${beating.length} of the ${members.length} members of the front looked at have less drag than ${baseline} by more than the band: ${beating.map(({ name }) => name).join("; ")}.`;
}
