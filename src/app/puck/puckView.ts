import { type RuleSet, readRuleSet } from "../../../shared/jobs/puck/rules/ruleSet";
import { problem } from "../../../shared/result";
import { tell } from "../store/notices";
import { defineView } from "../view/defineView";
import { demoRulesName, loadDemoRules } from "./demoRules";
import { mostPuckPins } from "./puckAnswers";
import { pinPuck, puckBench } from "./puckBench";
import { puckCaseContent, puckCaseText, readPuckCase } from "./puckCaseText";
import { bringBackSearch } from "./tradeoffKeeping";

const pinnedMakes = () => puckBench.value.pins.map(({ make }) => make);

/** The puck view: baseline, candidate and pins are the pucks of a case, in its fluid at its speeds. */
export const puckView = defineView({
  bench: puckBench,
  read: readPuckCase,
  show: async ({ inputs, others, rulesFile }, fileName) => {
    const rules = rulesFile === null ? inputs.rules : await namedRules(rulesFile);
    puckBench.show({ ...inputs, rules }, { pins: [] });
    for (const make of others.slice(0, mostPuckPins)) pinPuck(make);
    if (others.length > mostPuckPins) {
      tell("warning", `${fileName} has ${others.length} further pucks; the first ${mostPuckPins} are pinned.`);
    }
  },
  caseKeys: () => {
    const { wakewrightCase: _version, title: _title, ...keys } = puckCaseContent(puckBench.present, pinnedMakes());
    return keys;
  },
  screenText: () => puckCaseText(puckBench.present, pinnedMakes()),
  kept: {
    name: "puck",
    demo: "harbour-league-candidates.json",
    otherwise: async () => {
      const rules = await demoRules();
      if (rules.ok) puckBench.change({ rules: rules.value });
    },
    follow: (changed) => puckBench.subscribe(changed),
    more: bringBackSearch,
  },
});

/** The demo rules when a case names them; any other file must be opened by the person who has it. */
async function namedRules(path: string): Promise<RuleSet | null> {
  if (path.split("/").at(-1) !== demoRulesName) {
    tell("warning", `The case names the rules file ${path}, which a page cannot open by itself: open it under Rules.`);
    return null;
  }
  const rules = await demoRules();
  return rules.ok ? rules.value : null;
}

/** The demo rules, read and checked. */
async function demoRules() {
  try {
    const reading = readRuleSet(await loadDemoRules(), demoRulesName);
    return reading.ok ? reading : problem(reading.problem.code, reading.problem.message);
  } catch {
    return problem("load", "The demo rules could not be loaded.");
  }
}
