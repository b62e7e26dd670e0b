import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { sizeCoreForMass } from "../../shared/jobs/puck/body/coreSizing";
import type { PuckDesign } from "../../shared/jobs/puck/body/puckDimension";
import type { PuckSpec } from "../../shared/jobs/puck/body/puckSpec";
import { judgementNotice, judgePuck } from "../../shared/jobs/puck/rules/judgePuck";
import { readRuleSet } from "../../shared/jobs/puck/rules/ruleSet";
import { examplePuck, unwrap } from "../puck/examplePuck";

const reading = readRuleSet(
  readFileSync(new URL("../../cases/harbour-league.rules.json", import.meta.url), "utf8"),
  "rules",
);
if (!reading.ok) throw new Error(reading.problem.message);
const rules = reading.value;

const setting = { fluidDensity: 996.5 };
const coated: PuckSpec = { ...examplePuck, core: { kind: "underCoat", material: "lead", coatThicknessMetres: 0.003 } };
const design: PuckDesign = {
  spec: unwrap(sizeCoreForMass(coated, setting, 1.25, "coatThickness", 0.002)).spec,
  setting,
};

describe("judgePuck(design, rules, tolerances, sampling)", () => {
  it("a 1.25 kg lead-cored puck is inside the Harbour League's ranges when made exactly, and no claim is made", () => {
    const judgement = unwrap(judgePuck(design, rules, {}, null));
    expect(judgement.verdict).toBe("pass");
    expect(judgement.rules).toHaveLength(5);
    expect(judgement.notice).toBe(judgementNotice);
    expect(judgement.notice).toContain("no statement");
  });

  it("a tolerance that stays inside passes, one that does not needs better making by the stated factor", () => {
    const fine = unwrap(judgePuck(design, rules, { diameterMetres: 0.0002, thicknessMetres: 0.0002 }, null));
    expect(fine.verdict).toBe("pass");
    const coarse = unwrap(judgePuck(design, rules, { thicknessMetres: 0.002 }, null));
    expect(coarse.verdict).toBe("onlyIfMadeBetter");
    const mass = coarse.rules.find((rule) => rule.figure === "massKilograms");
    const factor = mass?.toleranceFactor ?? 0;
    expect(factor).toBeGreaterThan(0.05);
    expect(factor).toBeLessThan(0.95);
    const just = unwrap(judgePuck(design, rules, { thicknessMetres: 0.002 * factor }, null));
    const beyond = unwrap(judgePuck(design, rules, { thicknessMetres: 0.002 * factor * 1.01 }, null));
    expect(just.verdict).toBe("pass");
    expect(beyond.verdict).toBe("onlyIfMadeBetter");
  });

  it("a puck outside as drawn fails, whatever its tolerances, and says the allowed range", () => {
    const wide = { ...design, spec: { ...design.spec, diameterMetres: 0.09 } };
    const judgement = unwrap(judgePuck(wide, rules, {}, null));
    expect(judgement.verdict).toBe("fail");
    expect(judgement.rules[0].message).toContain("diameter 90 mm is outside: allowed from 77 mm up to 83 mm");
  });

  it("a figure that the puck does not have leaves the rule open instead of passing it", () => {
    const profiled: PuckSpec = {
      ...examplePuck,
      edge: {
        kind: "profile",
        points: [
          [0.006, 0],
          [0.002, 0.002],
          [0, 0.006],
        ],
      },
      core: { kind: "disc", material: "lead", diameterMetres: 0.07, thicknessMetres: 0.024 },
    };
    const judgement = unwrap(judgePuck({ spec: profiled, setting }, rules, {}, null));
    expect(judgement.rules.find((rule) => rule.figure === "edgeRadiusMetres")?.verdict).toBe("notDetermined");
    expect(judgement.verdict).not.toBe("pass");
  });

  it("refuses a tolerance on a dimension that the puck does not have", () => {
    const result = judgePuck(design, rules, { bevelAxialMetres: 0.001 }, null);
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.problem.message).toContain("no bevel along the rim");
  });

  it("random making: all inside when the worst case is, some outside when it is not, the same for the same seed", () => {
    const sampling = { sizes: "uniform", samples: 400, seed: 7 } as const;
    const fine = unwrap(judgePuck(design, rules, { thicknessMetres: 0.0002 }, sampling));
    expect(fine.made?.share).toBe(1);
    const coarse = unwrap(judgePuck(design, rules, { thicknessMetres: 0.004 }, sampling));
    expect(coarse.made?.share).toBeLessThan(1);
    expect(coarse.made?.share).toBeGreaterThan(0);
    expect(unwrap(judgePuck(design, rules, { thicknessMetres: 0.004 }, sampling)).made).toEqual(coarse.made);
  });
});
