import { designToCase } from "../../../shared/case/designToCase";
import { sectionTools } from "../store/sectionTools";
import { changeDesign, presentDesign, redoDesign, showDesign, undoDesign, workbench } from "../store/workbench";
import { readDesign } from "./caseRunning";
import { sectionScreenText, showSectionScreen } from "./sectionScreen";
import { historyLook } from "./viewLook";
import type { ViewPart } from "./viewRegistry";

/** The section view: its design is the first section of a case in the middle of its streams. */
export const sectionPart: ViewPart = {
  look: () => historyLook(workbench.value.history),
  subscribe: (listener) => workbench.subscribe(listener),
  undo: undoDesign,
  redo: redoDesign,
  rename: (title) => changeDesign({ title }),
  caseKeys: () => {
    const {
      wakewrightCase: _version,
      title: _title,
      ...keys
    } = designToCase(presentDesign(), sectionTools.value.pattern);
    return keys;
  },
  openCase: async (fileName, text) => {
    const reading = await readDesign(fileName, text);
    if (!reading.ok) return reading.problems;
    if (reading.pattern !== null) sectionTools.patch({ pattern: reading.pattern });
    showDesign(reading.value);
    return [];
  },
  screenText: sectionScreenText,
  showScreen: showSectionScreen,
};
