import Ajv2020 from "ajv/dist/2020";
import { describe, expect, it } from "vitest";
import { caseDocument, caseJsonSchema } from "../../shared/case/caseDocument";
import { readCaseDocument } from "../../shared/case/readCase";
import { examplePuck } from "./examplePuck";
import { entryWith, type PlainObject, puckCaseDocument, readGood, rules, wantedMass } from "./puckDocuments";

const ajv = new Ajv2020({
  allErrors: true,
  strict: true,
  strictTypes: false,
  strictRequired: false,
  formats: { date: /^\d{4}-\d\d-\d\d$/ },
});
const validate = ajv.compile(caseJsonSchema());
const shares = { upright: 1, flat: 1, faceOn: 1 };
const tradeoff = {
  variables: [{ dimension: "diameterMetres", from: 0.078, to: 0.082 }],
  goals: [{ figure: "massKilograms", sense: "least" }],
  method: { kind: "sweep" },
};

/** What breaks the schema: the block's changes, the first problem's field and words of its message. */
const schemaBreakers: readonly (readonly [string, PlainObject, string, RegExp])[] = [
  ["no baseline", { baselines: [] }, "puck.baselines", /a list of 0; it must be a list of 1 to 5 pucks/],
  ["no play", { play: undefined }, "puck.play", /is missing/],
  [
    "an unknown key of the block",
    { pucks: [] },
    "puck.pucks",
    /not a known key; the keys of a puck block are baselines, candidates, play/,
  ],
  [
    "a negative share",
    { play: { orientationShares: { ...shares, flat: -1 } } },
    "puck.play.orientationShares.flat",
    /is -1; it must be a number from 0 to 1000/,
  ],
  [
    "a diameter of 0",
    { baselines: [entryWith("zero", { diameterMetres: 0 })] },
    "puck.baselines[0].puck.diameterMetres",
    /is 0; it must be a number above 0/,
  ],
  [
    "a friction in words",
    { play: { orientationShares: shares, frictionCoefficient: "slippery" } },
    "puck.play.frictionCoefficient",
    /"slippery"; it must be a number from 0 to 2/,
  ],
  [
    "a tolerance of 1 m",
    { making: { tolerances: { diameterMetres: 1 } } },
    "puck.making.tolerances.diameterMetres",
    /from 0 to 0\.1 m/,
  ],
  [
    "a tolerance on nothing",
    { making: { tolerances: { colour: 0.001 } } },
    "puck.making.tolerances.colour",
    /not a known key; the keys of making tolerances are diameterMetres/,
  ],
  [
    "an unknown motion",
    { motions: [{ kind: "roll" }] },
    "puck.motions[0].kind",
    /"roll"; it must be one of slide, flick, sink/,
  ],
  [
    "a slide without speed",
    { motions: [{ kind: "slide" }] },
    "puck.motions[0].startSpeedMetresPerSecond",
    /is missing; it must be a number above 0/,
  ],
  [
    "an unknown method",
    { tradeoff: { ...tradeoff, method: { kind: "guess" } } },
    "puck.tradeoff.method.kind",
    /"guess"; it must be one of/,
  ],
  [
    "an odd population",
    { tradeoff: { ...tradeoff, method: { kind: "paretoSearch", populationSize: 7, generations: 2, seed: 1 } } },
    "puck.tradeoff.method.populationSize",
    /is 7; it must be an even whole number from 4 to 2000/,
  ],
  [
    "an unknown goal",
    { tradeoff: { ...tradeoff, goals: [{ figure: "beauty", sense: "most" }] } },
    "puck.tradeoff.goals[0].figure",
    /"beauty"; it must be one of dragIndex/,
  ],
  ["rules that are a number", { rules: 3 }, "puck.rules", /is 3; it must be a rule set, or the path of a rules file/],
  [
    "a rule set without a date",
    { rules: { ...rules, date: undefined } },
    "puck.rules.date",
    /is missing; it must be a date/,
  ],
  ["an odd panel count", { solving: { panelCount: 81 } }, "puck.solving.panelCount", /and even/],
  ["a hand-off on no day", { handoff: { date: "tomorrow" } }, "puck.handoff.date", /it must be a date/],
];

/** What only shows when the case is put together. */
const caseBreakers: readonly (readonly [string, PlainObject, string, RegExp])[] = [
  [
    "an edge radius that is too large",
    { candidates: [entryWith("fat", { edge: { kind: "radius", edgeRadiusMetres: 0.018 } })] },
    "puck.candidates[0].puck",
    /edge radius 18 mm exceeds half the (thickness|height), 15 mm/,
  ],
  [
    "an unknown material",
    { baselines: [entryWith("moon", { coatMaterial: "cheese" })] },
    "puck.baselines[0].puck",
    /material "cheese" is not known; known are lead/,
  ],
  [
    "a mass that cannot be had",
    { wantedMass: { ...wantedMass, massKilograms: 3 } },
    "puck.baselines[0].puck",
    /cannot be reached/,
  ],
  [
    "one name twice",
    { candidates: [entryWith(examplePuck.name)] },
    "puck.candidates[0].puck.name",
    /the name of another puck/,
  ],
  [
    "a friction band wider than itself",
    { play: { orientationShares: shares, frictionCoefficient: 0.2, frictionSpread: 0.3 } },
    "puck.play.frictionSpread",
    /0 to the coefficient, 0\.2/,
  ],
  [
    "an index speed beyond the case's",
    { play: { orientationShares: shares, indexSpeedsMetresPerSecond: [9] } },
    "puck.play.indexSpeedsMetresPerSecond",
    /from 1 to 2 m\/s/,
  ],
  [
    "a finish like gravel",
    { baselines: [entryWith("gravel", {}, { sandGrainRoughnessMetres: 0.01 })] },
    "puck.baselines[0]",
    /at most 0\.05/,
  ],
  [
    "a template that is not there",
    { tradeoff: { ...tradeoff, template: "ghost" } },
    "puck.tradeoff.template",
    /no puck has the name "ghost"/,
  ],
  [
    "a mass error without a wanted mass",
    { tradeoff: { ...tradeoff, goals: [{ figure: "massErrorKilograms", sense: "least" }] } },
    "puck.tradeoff.goals",
    /needs a wantedMass/,
  ],
];

describe("the puck block of a case", () => {
  it.each([
    ["alone", {}],
    ["with rules at a path", { rules: "some.rules.json" }],
    ["with rules inside", { rules }],
    ["with a wanted mass", { wantedMass, candidates: [entryWith("kept", {}, { keepCore: true, note: "as drawn" })] }],
    ["with a trade-off", { tradeoff }],
    ["with a motion", { motions: [{ kind: "sink", attitude: "edgeOn", depthMetres: 2 }] }],
    ["with a hand-off", { handoff: { date: "2026-03-01", wantedYPlus: 1, notes: ["as agreed"] } }],
  ])("is accepted %s, by the reader and by the JSON Schema", (_what, changes) => {
    const document = puckCaseDocument(changes);
    validate(document);
    expect(validate.errors ?? []).toEqual([]);
    const reading = readCaseDocument(document, "case.json");
    expect(reading.ok ? null : reading.problem.message).toBe(null);
  });

  it.each(schemaBreakers)("is refused by both with %s, and the key is named", (_what, changes, field, message) => {
    const document = JSON.parse(JSON.stringify(puckCaseDocument(changes)));
    expect(validate(document)).toBe(false);
    expect(caseDocument.safeParse(document).success).toBe(false);
    const reading = readCaseDocument(document, "case.json");
    if (reading.ok) throw new Error("was accepted");
    expect(reading.problems[0].field).toBe(field);
    expect(reading.problem.message).toMatch(message);
  });

  it.each(caseBreakers)("is refused with %s, and the key is named", (_what, changes, field, message) => {
    const reading = readCaseDocument(puckCaseDocument(changes), "case.json");
    if (reading.ok) throw new Error("was accepted");
    expect(reading.problem.message).toMatch(message);
    expect(reading.problems.map((one) => one.field?.startsWith(field))).toContain(true);
  });

  it.each(["speedsMetresPerSecond", "sandGrainRoughnessMetres"])("needs %s of its case", (key) => {
    const other = key === "speedsMetresPerSecond" ? { reynoldsNumbers: [1e5] } : { sandGrainRoughnessRatios: [0] };
    const document = puckCaseDocument({}, { [key]: undefined, ...other });
    expect(validate(document)).toBe(false);
    const reading = readCaseDocument(document, "case.json");
    if (reading.ok) throw new Error("was accepted");
    expect(reading.problems.some(({ field }) => field === key)).toBe(true);
  });

  it("gives its plan and profile sections to a case without sections, each puck with its own finish", () => {
    const { shapes } = readGood(
      puckCaseDocument({ candidates: [entryWith("polished", {}, { sandGrainRoughnessMetres: 1e-6 })] }),
    );
    expect(shapes.map(({ name, sandGrainRoughness }) => [name, sandGrainRoughness])).toEqual([
      [`${examplePuck.name}, plan section`, null],
      [`${examplePuck.name}, profile section`, null],
      ["polished, plan section", 1e-6],
      ["polished, profile section", 1e-6],
    ]);
  });

  it("sizes every core for the wanted mass, except where the core is kept", () => {
    const { puck } = readGood(
      puckCaseDocument({ wantedMass, candidates: [entryWith("kept", {}, { keepCore: true }), entryWith("sized")] }),
    );
    const [baseline, kept, sized] = puck.pucks;
    expect(baseline.figures.massKilograms).toBeCloseTo(1.23, 9);
    expect(sized.figures.massKilograms).toBeCloseTo(1.23, 9);
    expect(kept.spec.core).toMatchObject({ coatThicknessMetres: 0.003 });
    expect(kept.figures.massKilograms).not.toBeCloseTo(1.23, 3);
  });
});
