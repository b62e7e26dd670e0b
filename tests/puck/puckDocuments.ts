import { readCaseDocument } from "../../shared/case/readCase";
import type { Case } from "../../shared/case/resolvedCase";
import type { PuckCase } from "../../shared/jobs/puck/puckCase";
import { examplePuck } from "./examplePuck";

/** A small good case with pucks, and changes to it. */
export type PlainObject = Record<string, unknown>;

export const puckEntry: PlainObject = {
  puck: { ...examplePuck, core: { kind: "underCoat", material: "lead", coatThicknessMetres: 0.003 } },
};

/** The example puck under another name, with keys replaced. */
export function entryWith(name: string, changes: PlainObject = {}, own: PlainObject = {}): PlainObject {
  return { puck: { ...(puckEntry.puck as PlainObject), name, ...changes }, ...own };
}

export const wantedMass = { massKilograms: 1.23, freeDimension: "coatThickness", leastCoverMetres: 0.002 };

export const rules = {
  wakewrightRules: 1,
  name: "Test rules",
  date: "2026-03-01",
  invented: true,
  ranges: {
    diameterMetres: { from: 0.077, to: 0.083 },
    thicknessMetres: { from: 0.027, to: 0.033 },
    edgeRadiusMetres: { from: 0.004 },
    massKilograms: { from: 1.2, to: 1.3 },
  },
};

export function puckBlock(changes: PlainObject = {}): PlainObject {
  const block = {
    play: { orientationShares: { upright: 1, flat: 1, faceOn: 1 } },
    solving: { panelCount: 80, chordRatios: [1] },
    baselines: [puckEntry],
    ...changes,
  };
  return Object.fromEntries(Object.entries(block).filter(([, value]) => value !== undefined));
}

export function puckCaseDocument(blockChanges: PlainObject = {}, changes: PlainObject = {}): PlainObject {
  const document = {
    wakewrightCase: 1,
    title: "Pucks in a pool",
    fluid: { kind: "freshWater", temperatureCelsius: 27 },
    speedsMetresPerSecond: [1, 2],
    sandGrainRoughnessMetres: [0.00001],
    turbulencePercents: [1],
    branches: "rising",
    puck: puckBlock(blockChanges),
    ...changes,
  };
  return Object.fromEntries(Object.entries(document).filter(([, value]) => value !== undefined));
}

export function readGood(document: unknown): Case & { readonly puck: PuckCase } {
  const reading = readCaseDocument(document, "case.json");
  if (!reading.ok) throw new Error(reading.problem.message);
  const { puck } = reading.value;
  if (puck === null) throw new Error("the case has no puck");
  return { ...reading.value, puck };
}
