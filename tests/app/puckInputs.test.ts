import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readCase } from "../../shared/case/readCase";
import { puckFigures } from "../../shared/jobs/puck/body/puckFigures";
import type { PuckCase } from "../../shared/jobs/puck/puckCase";
import { puckSteps } from "../../shared/jobs/puck/puckSteps";
import type { Result } from "../../shared/result";
import { readList } from "../../src/app/components/puck-list-field/readList";
import { demoPuck } from "../../src/app/puck/demoPuck";
import { puckDrawingShape } from "../../src/app/puck/drawingShape";
import { edgeProfileText, readEdgeProfile } from "../../src/app/puck/edgeProfileText";
import { changeText, shownFigure } from "../../src/app/puck/figureRows";
import { fittingTarget } from "../../src/app/puck/fittingTarget";
import { measurePuck } from "../../src/app/puck/measurePuck";
import { puckCaseOf } from "../../src/app/puck/puckBlock";
import { hasPuckBlock, puckCaseText, readPuckCase } from "../../src/app/puck/puckCaseText";
import { coreKinds, edgeKinds, faceKinds, fieldOf, ofKind, rimKinds, withField } from "../../src/app/puck/puckFields";
import { freeName } from "../../src/app/store/freeName";
import { unitChoices } from "../../src/app/units/units";

function unwrap<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
}

function reading(text: string) {
  const read = readPuckCase(text);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
  return read.value;
}

const demoCase = readFileSync("cases/harbour-league-candidates.json", "utf8");

describe("puckCaseText(inputs, others) and readPuckCase(text)", () => {
  test("inputs and pins come back unchanged, to 1e-12 where degrees and per cent are in between", () => {
    const pins = [{ ...demoPuck.baseline, spec: { ...demoPuck.baseline.spec, name: "Pinned" } }];
    const back = reading(puckCaseText(demoPuck, pins));
    expect(back.others).toEqual(pins);
    const { play, motions, tolerances, ...rest } = back.inputs;
    const { play: playBefore, motions: motionsBefore, tolerances: _, ...restBefore } = demoPuck;
    expect(rest).toEqual(restBefore);
    expect(tolerances).toEqual(demoPuck.tolerances);
    for (const [i, tilt] of playBefore.tilts.entries()) expect(play.tilts[i]).toBeCloseTo(tilt, 12);
    expect({ ...play, tilts: [] }).toEqual({ ...playBefore, tilts: [] });
    expect(motions).toHaveLength(motionsBefore.length);
    for (const [i, motion] of motions.entries()) {
      for (const [key, value] of Object.entries(motionsBefore[i])) {
        const back: unknown = motion[key as keyof typeof motion];
        if (typeof value === "number") expect(back).toBeCloseTo(value, 12);
        else expect(back).toEqual(value);
      }
    }
  });

  test("what is written is a case that the command line's reader takes", () => {
    const read = readCase(puckCaseText(demoPuck, []), "saved.json");
    if (!read.ok) throw new Error(read.problem.message);
    expect(read.ok).toBe(true);
  });

  test("the demo case opens with its first candidate, the others and its core sized for the wanted mass", () => {
    const { inputs, others, rulesFile } = reading(demoCase);
    const { puck } = JSON.parse(demoCase);
    expect(others).toHaveLength(puck.candidates.length - 1);
    expect(rulesFile).toBe("harbour-league.rules.json");
    const { candidate } = unwrap(measurePuck(inputs));
    expect(candidate.massKilograms).toBeCloseTo(puck.wantedMass.massKilograms, 9);
  });

  test("a file without pucks is told apart; every fault of a broken one is listed", () => {
    expect(hasPuckBlock(demoCase)).toBe(true);
    expect(hasPuckBlock('{"wakewrightCase":1}')).toBe(false);
    expect(hasPuckBlock("hello")).toBe(false);
    const broken = readPuckCase('{"title":"x","puck":{"baselines":[]}}');
    expect(broken.ok).toBe(false);
    if (!broken.ok) expect(broken.problems.length).toBeGreaterThan(2);
  });
});

test("drag of the demo case's candidate is the command line's, as both come from the same case: bit for bit", () => {
  const text = JSON.stringify({
    ...JSON.parse(demoCase),
    speedsMetresPerSecond: [1, 2],
    turbulencePercents: [1],
    puck: {
      ...JSON.parse(demoCase).puck,
      rules: undefined,
      play: { ...JSON.parse(demoCase).puck.play, indexSpeedsMetresPerSecond: undefined },
      solving: { panelCount: 80, chordRatios: [1] },
    },
  });
  const ofFile = readCase(text, "case.json");
  if (!ofFile.ok || ofFile.value.puck === null) throw new Error("the case has no pucks");
  const stepsOf = (theCase: PuckCase) => [...puckSteps({ ...theCase, pucks: theCase.pucks.slice(0, 2), motions: [] })];
  const theirs = stepsOf(ofFile.value.puck);
  const ours = stepsOf(unwrap(puckCaseOf(reading(text).inputs, [])));
  expect(ours.map(({ result }) => result.name)).toEqual(theirs.map(({ result }) => result.name));
  const areas = (steps: typeof ours) =>
    steps.map(({ result }) =>
      result.drag
        .filter(({ orientation }) => orientation !== "tilted")
        .map(({ dragAreaSquareMetres }) => dragAreaSquareMetres.expected),
    );
  expect(areas(ours).flat()).toHaveLength(12);
  expect(areas(ours)).toEqual(areas(theirs));
});

describe("fields of the puck", () => {
  const parts = { edge: edgeKinds, face: faceKinds, rim: rimKinds, core: coreKinds } as const;
  const all = Object.entries(parts).flatMap(([part, kinds]) => Object.keys(kinds).map((kind) => [part, kind] as const));

  test.each(all)(
    "%s of kind %s gives a puck that can be made, and its fields read and write its numbers",
    (part, kind) => {
      const base = ofKind(demoPuck.baseline.spec, "core", "disc");
      const spec = ofKind(base, part as keyof typeof parts, kind);
      unwrap(puckFigures(spec, { fluidDensity: 996 }));
      const { fields } = (parts[part as keyof typeof parts] as Record<string, (typeof edgeKinds)["radius"]>)[kind];
      for (const field of fields) expect(fieldOf(withField(spec, field, 0.0123), field)).toBe(0.0123);
      expect(puckDrawingShape(spec).profile).toMatch(/^M .* Z$/);
    },
  );
});

describe("a number that cannot be made", () => {
  const kinds = { edge: edgeKinds, face: faceKinds, rim: rimKinds, core: coreKinds } as const;
  const numbers = Object.entries(kinds).flatMap(([part, ofPart]) =>
    Object.entries(ofPart).flatMap(([kind, { fields }]) => fields.map((field) => ({ part, kind, field }))),
  );

  // The height of a core's middle is any number; where it lies too far out, the core reaches through the surface.
  test.each(numbers.filter(({ field }) => field.key !== "heightMetres"))(
    "$kind $part, $field.key: the problem names that very key, whatever its words",
    ({ part, kind, field }) => {
      const made = ofKind(demoPuck.candidate.spec, part as "edge", kind);
      const spec = withField(made, field, -1);
      const measured = measurePuck({ ...demoPuck, candidate: { ...demoPuck.candidate, spec } });
      if (measured.ok) throw new Error("a puck with a negative size was made");
      // Two ends of a groove are one span, and the outer one is told; so is a ring's inner diameter beside its outer.
      const others = {
        innerRadiusMetres: "widthMetres",
        outerRadiusMetres: "innerRadiusMetres",
        outerDiameterMetres: "innerDiameterMetres",
      };
      const told = others[field.key as keyof typeof others] ?? field.key;
      expect([`${part}.${field.key}`, `${part}.${told}`]).toContain(measured.problem.field);
    },
  );
});

describe("small readers", () => {
  test("an edge profile goes to text and back; a bad line is named", () => {
    const points = [
      [0.006, 0],
      [0.002, 0.002],
      [0, 0.006],
    ] as const;
    expect(unwrap(readEdgeProfile(edgeProfileText(points)))).toEqual(points);
    expect(unwrap(readEdgeProfile("6,5 0\n0 6.5"))).toEqual([
      [0.0065, 0],
      [0, 0.0065],
    ]);
    const bad = readEdgeProfile("6 0\nx 1");
    expect(bad.ok ? "" : bad.problem.message).toContain('Line 2 is "x 1"');
  });

  test("a list is read in the person's unit, sorted, each once; a value outside is named with the range", () => {
    const percent = unitChoices.fraction[0];
    const range = { lowest: 0, aboveLowest: false, highest: 0.2, most: 3 };
    expect(unwrap(readList("5; 1 5", "Turbulence", percent, range))).toEqual([0.01, 0.05]);
    const outside = readList("1 30", "Turbulence", percent, range);
    expect(outside.ok ? "" : outside.problem.message).toBe(
      'Turbulence has "30"; it must be 1 to 3 numbers from 0 to 20 %.',
    );
    expect(readList("1 2 3 4", "Turbulence", percent, range).ok).toBe(false);
  });

  test("changes and figures read as people write them", () => {
    expect(changeText(0.68, 1)).toBe("−32\u00a0%");
    expect(changeText(2, 2)).toBe("equal");
    expect(shownFigure("frontalAreaEdgeOnSquareMetres", 0.0024)).toBe("24\u00a0cm²");
  });

  test("a name that is taken gets the next number", () => {
    expect(freeName("Candidate", ["Baseline"])).toBe("Candidate");
    expect(freeName("Candidate", ["Candidate", "Candidate 2"])).toBe("Candidate 3");
  });

  test("a wanted mass is kept for a core that has the dimension, moved to one that it has, and dropped without a core", () => {
    const target = { massKilograms: 1.2, freeDimension: "thickness", leastCoverMetres: 0.002 } as const;
    const spec = ofKind(demoPuck.baseline.spec, "core", "disc");
    expect(fittingTarget(spec, target)).toBe(target);
    expect(fittingTarget(ofKind(spec, "core", "underCoat"), target)?.freeDimension).toBe("coatThickness");
    expect(fittingTarget(ofKind(spec, "core", "none"), target)).toBeNull();
  });
});
