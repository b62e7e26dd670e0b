import { type RuleSet, readRuleSet } from "../../../shared/jobs/puck/rules/ruleSet";
import { type Problem, problem } from "../../../shared/result";
import { record } from "../store/history";
import { tell } from "../store/notices";
import { demoPuck } from "./demoPuck";
import { demoRulesName, loadDemoRules } from "./demoRules";
import { mostPuckPins, pinPuck, presentPuck, puckBench, startPuckBench } from "./puckBench";
import { readPuckCase } from "./puckCaseText";
import type { PuckInputs } from "./puckInputs";

/** Shows the puck block of a case file in the puck view. @returns what is wrong with it; empty when it was opened */
export async function openPuckCase(fileName: string, text: string): Promise<readonly Problem[]> {
  const reading = readPuckCase(text);
  if (!reading.ok) return reading.problems;
  const { inputs, others, rulesFile } = reading.value;
  const rules = rulesFile === null ? inputs.rules : await namedRules(rulesFile);
  showPuck({ ...inputs, rules });
  for (const make of others.slice(0, mostPuckPins)) pinPuck(make);
  if (others.length > mostPuckPins) {
    tell("warning", `${fileName} has ${others.length} further pucks; the first ${mostPuckPins} are pinned.`);
  }
  return [];
}

/** Shows other inputs as one step of the history; the page's own demo is no step to go back to. */
function showPuck(inputs: PuckInputs): void {
  if (presentPuck() === demoPuck) puckBench.value = startPuckBench(inputs);
  else puckBench.patch({ history: record(puckBench.value.history, inputs), pins: [] });
}

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
export async function demoRules() {
  try {
    const reading = readRuleSet(await loadDemoRules(), demoRulesName);
    return reading.ok ? reading : problem(reading.problem.code, reading.problem.message);
  } catch {
    return problem("load", "The demo rules could not be loaded.");
  }
}
