import { readRuleSet } from "../../../shared/jobs/puck/rules/ruleSet";
import { tell } from "./notices";
import { Notifier } from "./notifier";

/** Allowed range of a dimension, m; an end that is missing is free. */
export interface AllowedRange {
  readonly from?: number;
  readonly to?: number;
}

/** What a rule set says of a section's dimensions, by the section's key; null when handles move freely. */
export interface RuleWindow {
  readonly name: string;
  readonly ranges: Readonly<Record<string, AllowedRange>>;
}

export const ruleWindow = new Notifier<RuleWindow | null>(null);

/** Holds the handles inside a rules file's ranges: a puck's diameter is its section's length, its thickness the height. */
export function holdToRules(text: string, fileName: string): void {
  const reading = readRuleSet(text, fileName);
  if (!reading.ok) {
    tell("warning", reading.problem.message);
    return;
  }
  const { diameterMetres, thicknessMetres, edgeRadiusMetres } = reading.value.ranges;
  const named = [
    ["length", diameterMetres],
    ["diameter", diameterMetres],
    ["height", thicknessMetres],
    ["edgeRadius", edgeRadiusMetres],
  ] as const;
  ruleWindow.value = {
    name: reading.value.name,
    ranges: Object.fromEntries(named.flatMap(([key, range]) => (range === undefined ? [] : [[key, range]]))),
  };
}

export function letGoOfRules(): void {
  ruleWindow.value = null;
}
