import { historyLook } from "../engine/viewLook";
import type { ViewPart } from "../engine/viewRegistry";
import { openPuckCase } from "./openPuckCase";
import { changePuck, puckBench, redoPuck, undoPuck } from "./puckBench";
import { puckCaseContent, puckCaseText } from "./puckCaseText";

function pinnedMakes() {
  return puckBench.value.pins.map(({ make }) => make);
}

/** The puck view: baseline, candidate and pins are the pucks of a case, in its fluid at its speeds. */
export const puckPart: ViewPart = {
  look: () => historyLook(puckBench.value.history),
  subscribe: (listener) => puckBench.subscribe(listener),
  undo: undoPuck,
  redo: redoPuck,
  rename: (title) => changePuck({ title }),
  caseKeys: () => {
    const {
      wakewrightCase: _version,
      title: _title,
      ...keys
    } = puckCaseContent(puckBench.value.history.present, pinnedMakes());
    return keys;
  },
  openCase: openPuckCase,
  screenText: () => puckCaseText(puckBench.value.history.present, pinnedMakes()),
  showScreen: async (text, from) => (await openPuckCase(from, text)).map(({ message }) => message),
};
