import { readRuleSet } from "../../../shared/jobs/puck/rules/ruleSet";
import { type Result, success } from "../../../shared/result";

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

/** The ranges of a rules file: a puck's diameter is its section's length, its thickness the height. */
export function readRuleWindow(text: string, fileName: string): Result<RuleWindow> {
  const reading = readRuleSet(text, fileName);
  if (!reading.ok) return reading;
  const { diameterMetres, thicknessMetres, edgeRadiusMetres } = reading.value.ranges;
  const named = [
    ["length", diameterMetres],
    ["diameter", diameterMetres],
    ["height", thicknessMetres],
    ["edgeRadius", edgeRadiusMetres],
  ] as const;
  return success({
    name: reading.value.name,
    ranges: Object.fromEntries(named.flatMap(([key, range]) => (range === undefined ? [] : [[key, range]]))),
  });
}
