import { historyLook } from "../engine/viewLook";
import type { ViewPart } from "../engine/viewRegistry";
import { openTrialCase } from "./openTrialCase";
import { changeTrial, presentTrial, redoTrial, trialBench, undoTrial } from "./trialBench";
import { trialBlock } from "./trialBlock";
import { trialCaseText } from "./trialCaseText";

/** The view of player trials: plan, scores and ranking of a case. */
export const trialPart: ViewPart = {
  look: () => historyLook(trialBench.value.history),
  subscribe: (listener) => trialBench.subscribe(listener),
  undo: undoTrial,
  redo: redoTrial,
  rename: (title) => changeTrial({ title }),
  caseKeys: () => ({ trial: trialBlock(presentTrial()) }),
  openCase: openTrialCase,
  screenText: () => trialCaseText(presentTrial()),
  showScreen: async (text, from) => (await openTrialCase(from, text)).map(({ message }) => message),
};
