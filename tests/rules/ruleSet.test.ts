import { readFileSync } from "node:fs";
import Ajv from "ajv/dist/2020";
import { describe, expect, it } from "vitest";
import { readRuleSet, ruleSetJsonSchema } from "../../shared/jobs/puck/rules/ruleSet";

const file = readFileSync(new URL("../../cases/harbour-league.rules.json", import.meta.url), "utf8");
const document = JSON.parse(file);

function messages(changed: unknown): string {
  const reading = readRuleSet(JSON.stringify(changed), "x.json");
  return reading.ok ? "accepted" : reading.problems.map((problem) => problem.message).join("; ");
}

describe("readRuleSet(content, fileName)", () => {
  it("reads the invented Harbour League and finds it marked as invented", () => {
    const reading = readRuleSet(file, "harbour-league.rules.json");
    expect(reading.ok).toBe(true);
    if (reading.ok) {
      expect(reading.value.invented).toBe(true);
      expect(reading.value.ranges.massKilograms).toEqual({ from: 1.2, to: 1.3 });
    }
  });

  it.each([
    ["an unknown figure", { ...document, ranges: { colour: { from: 1 } } }, "ranges.colour is not a known key"],
    ["another version", { ...document, wakewrightRules: 2 }, "wakewrightRules is 2"],
    ["a date that is none", { ...document, date: "2026-02-31" }, "date is"],
    ["a range without ends", { ...document, ranges: { massKilograms: {} } }, "from, to or both"],
    ["a range upside down", { ...document, ranges: { massKilograms: { from: 2, to: 1 } } }, "from must not exceed to"],
    ["a missing name", { ...document, name: undefined }, "name is missing"],
    ["a number as text", { ...document, ranges: { massKilograms: { from: "1.2" } } }, "it must be a number in kg"],
  ])("refuses %s and says so", (_, changed, words) => {
    expect(messages(changed)).toContain(words);
  });

  it("refuses text that is no JSON, naming the file", () => {
    const reading = readRuleSet("{", "mine.json");
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.problem.message).toContain("mine.json");
  });

  it("its JSON Schema accepts the Harbour League by an independent validator and refuses an unknown figure", () => {
    const validate = new Ajv({ strict: false, validateFormats: false }).compile(ruleSetJsonSchema());
    expect(validate(document)).toBe(true);
    expect(validate({ ...document, ranges: { colour: { from: 1 } } })).toBe(false);
  });
});
