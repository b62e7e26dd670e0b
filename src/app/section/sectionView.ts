import { designToCase } from "../../../shared/case/designToCase";
import { defineView } from "../view/defineView";
import { readDesign } from "./caseRunning";
import { sectionScreenText, showSectionScreen } from "./sectionScreen";
import { sectionTools } from "./sectionStores";
import { workbench } from "./workbench";

/** The section view: its design is the first section of a case in the middle of its streams. */
export const sectionView = defineView({
  bench: workbench,
  read: async (text, fileName) => {
    const reading = await readDesign(fileName, text);
    return reading.ok ? { ok: true, value: { design: reading.value, pattern: reading.pattern } } : reading;
  },
  show: ({ design, pattern }) => {
    if (pattern !== null) sectionTools.patch({ pattern });
    workbench.show(design);
  },
  caseKeys: () => {
    const {
      wakewrightCase: _version,
      title: _title,
      ...keys
    } = designToCase(workbench.present, sectionTools.value.pattern);
    return keys;
  },
  screenText: sectionScreenText,
  showScreen: showSectionScreen,
  // Kept by its autosave, which begins only when the first screen is shown.
  kept: null,
});
