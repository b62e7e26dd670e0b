import { historyLook } from "../engine/viewLook";
import type { ViewPart } from "../engine/viewRegistry";
import { changeComparison, compareBench, presentComparison, redoComparison, undoComparison } from "./compareBench";
import { compareCaseText, measurementBlock } from "./compareCaseText";
import { openCompareCase } from "./openCompareCase";

/** The view of measurements against the prediction: the measurements of a case, each with its section. */
export const comparePart: ViewPart = {
  look: () => historyLook(compareBench.value.history),
  subscribe: (listener) => compareBench.subscribe(listener),
  undo: undoComparison,
  redo: redoComparison,
  rename: (title) => changeComparison({ title }),
  caseKeys: () => {
    const measurements = measurementBlock(presentComparison());
    return measurements === null ? {} : { measurements };
  },
  openCase: openCompareCase,
  screenText: () => compareCaseText(presentComparison()),
  showScreen: async (text, from) => (await openCompareCase(from, text)).map(({ message }) => message),
};
