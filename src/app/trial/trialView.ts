import { defineView } from "../view/defineView";
import { trialBench } from "./trialBench";
import { trialBlock } from "./trialBlock";
import { readTrialCase, trialCaseText } from "./trialCaseText";

/** The view of player trials: plan, scores and ranking of a case. */
export const trialView = defineView({
  bench: trialBench,
  read: readTrialCase,
  show: (inputs) => trialBench.showTrial(inputs),
  caseKeys: () => ({ trial: trialBlock(trialBench.present) }),
  screenText: () => trialCaseText(trialBench.present),
  kept: { name: "trial", demo: "harbour-trial.json" },
});
