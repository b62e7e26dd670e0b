import { defineView } from "../view/defineView";
import { keptComparisonName } from "./carriedOffset";
import { compareBench } from "./compareBench";
import { compareCaseText, measurementKeys, readCompareCase } from "./compareCaseText";
import { keepDraft } from "./keptDraft";

/** The view of measurements against the prediction: the measurements of a case, each with its section. */
export const compareView = defineView({
  bench: compareBench,
  read: readCompareCase,
  show: (inputs) => compareBench.show(inputs, { selected: null }),
  caseKeys: () => measurementKeys(compareBench.present),
  screenText: () => compareCaseText(compareBench.present),
  kept: {
    name: keptComparisonName,
    demo: "harbour-measured.json",
    openDemo: (text) => {
      const reading = readCompareCase(text);
      if (!reading.ok) return reading.problems;
      // The demonstration's offset is carried only when a person asks for it.
      compareBench.show({ ...reading.value, carriedSet: null }, { selected: null });
      return [];
    },
    more: keepDraft,
  },
});
