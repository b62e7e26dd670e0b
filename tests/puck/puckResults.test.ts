import Papa from "papaparse";
import { beforeAll, describe, expect, it } from "vitest";
import type { CaseResults } from "../../shared/case/caseResults";
import { runCase } from "../../shared/case/caseSteps";
import type { DragBand } from "../../shared/engine/trust/dragInterval";
import { prepareStrip, profileSection, stripDrag } from "../../shared/jobs/puck/drag/solvedSections";
import { puckCsv } from "../../shared/jobs/puck/puckCsv";
import type { PuckResult } from "../../shared/jobs/puck/puckResult";
import { puckTable } from "../../shared/jobs/puck/puckTable";
import { examplePuck, unwrap } from "./examplePuck";
import { entryWith, puckCaseDocument, readGood, rules, wantedMass } from "./puckDocuments";

const slide = { kind: "slide", startSpeedMetresPerSecond: 2, markDistancesMetres: [0.1, 50], curveSamples: 11 };
const flick = {
  kind: "flick",
  startSpeedMetresPerSecond: 2,
  elevationDegrees: 20,
  startHeightMetres: 0.02,
  waterDepthMetres: 2,
  attitude: { kind: "fixed", pitchDegrees: 10 },
};
const sink = { kind: "sink", attitude: "faceOn", depthMetres: 5 };

let results: CaseResults;
let pucks: readonly PuckResult[];
beforeAll(() => {
  const document = puckCaseDocument({
    wantedMass,
    rules,
    making: {
      tolerances: { diameterMetres: 0.0003, bevelAxialMetres: 0.0001, coatThicknessMetres: 0.0002 },
      samples: 300,
      seed: 3,
    },
    play: {
      orientationShares: { upright: 1, flat: 1, faceOn: 2 },
      tiltDegrees: [0, 30, 90],
      frictionCoefficient: 0.2,
      frictionSpread: 0.05,
    },
    motions: [slide, flick, sink],
    candidates: [
      entryWith("twin"),
      entryWith("grooved", {
        face: {
          kind: "radialGrooves",
          side: "both",
          number: 8,
          widthMetres: 0.002,
          depthMetres: 0.0004,
          innerRadiusMetres: 0.008,
          outerRadiusMetres: 0.03,
        },
      }),
      entryWith("rounder", { edge: { kind: "radius", edgeRadiusMetres: 0.01 } }),
    ],
  });
  results = runCase(readGood(document));
  pucks = results.pucks ?? [];
}, 120_000);

function puckOf(name: string): PuckResult {
  const found = pucks.find((puck) => puck.name === name);
  if (found === undefined) throw new Error(`no puck ${name}`);
  return found;
}

function expectOrdered(band: DragBand) {
  expect(band.low).toBeLessThanOrEqual(band.expected);
  expect(band.expected).toBeLessThanOrEqual(band.high);
}

describe("the pucks of a case's results", () => {
  it("come baselines first, each without a problem, beside the rows of their sections", () => {
    expect(pucks.map(({ name, role, problem }) => [name, role, problem])).toEqual([
      [examplePuck.name, "baseline", null],
      ["twin", "candidate", null],
      ["grooved", "candidate", null],
      ["rounder", "candidate", null],
    ]);
    expect(results.results.length).toBeGreaterThanOrEqual(4 * 2 * 2);
    expect(results.problems).toEqual([]);
  });

  it("drag rows agree in themselves: D = Cd A q, band ordered, area named, force growing as the speed's square face-on", () => {
    const density = results.fluid?.density ?? Number.NaN;
    for (const { drag } of pucks) {
      for (const row of drag) {
        expectOrdered(row.dragCoefficient);
        expect(row.dragAreaSquareMetres.expected).toBeCloseTo(
          row.dragCoefficient.expected * row.referenceAreaSquareMetres,
          12,
        );
        const pressure = 0.5 * density * row.speedMetresPerSecond ** 2;
        expect(row.dragNewtons.high / (row.dragAreaSquareMetres.high * pressure)).toBeCloseTo(1, 12);
        expect(row.referenceArea).toMatch(/area/);
      }
    }
    const faceOn = puckOf("twin").drag.filter(({ orientation }) => orientation === "faceOn");
    expect(faceOn[1].dragNewtons.expected / faceOn[0].dragNewtons.expected).toBeCloseTo(4, 10);
  });

  it("edge-on says that it is extrapolated below length/diameter 1, face-on what its flow rests on", () => {
    const [baseline] = pucks;
    expect(baseline.drag.find(({ orientation }) => orientation === "flat")?.applicability).toMatch(/^extrapolated/);
    expect(baseline.drag.find(({ orientation }) => orientation === "faceOn")?.applicability).toMatch(
      /solved flow of the whole body/,
    );
    expect(baseline.notes.join(" ")).toContain(
      "No measured drag of a cylinder across the stream was found below length/diameter 1",
    );
  });

  it("tilted by 0 and 90 degrees is edge-on and face-on, without lift", () => {
    const rows = puckOf("twin").drag.filter(({ speedMetresPerSecond }) => speedMetresPerSecond === 2);
    const tilted = (degrees: number) => rows.find(({ tiltDegrees }) => tiltDegrees === degrees);
    const own = (orientation: string) => rows.find((row) => row.orientation === orientation);
    expect(tilted(0)?.dragAreaSquareMetres.expected).toBeCloseTo(
      own("upright")?.dragAreaSquareMetres.expected ?? Number.NaN,
      12,
    );
    expect(tilted(90)?.dragAreaSquareMetres.expected).toBeCloseTo(
      own("faceOn")?.dragAreaSquareMetres.expected ?? Number.NaN,
      12,
    );
    expect(tilted(90)?.liftAreaSquareMetres?.expected).toBeCloseTo(0, 12);
  });

  it("a twin of the baseline has index 1 and is not shown to beat it", () => {
    const [comparison] = puckOf("twin").comparisons;
    expect(comparison.baseline).toBe(examplePuck.name);
    expect(comparison.overall.index.expected).toBeCloseTo(1, 12);
    expect(comparison.overall.indexWithCommonError.high).toBeCloseTo(1, 12);
    expect(comparison.overall.verdict).toBe("notShown");
    expect(comparison.beatsBaselineByMoreThanBand).toBe(false);
    expect(puckOf(examplePuck.name).comparisons).toEqual([]);
  });

  it("the overall index is the mean of the conditions, each weighed by the shares of play", () => {
    const { comparisons, drag } = puckOf("rounder");
    const [{ overall, conditions }] = comparisons;
    expect(overall.index.expected).toBeCloseTo((conditions[0].index.expected + conditions[1].index.expected) / 2, 12);
    const ratio = (orientation: string) => {
      const own = (rows: PuckResult["drag"]) =>
        rows.find((row) => row.orientation === orientation && row.speedMetresPerSecond === 1);
      return (
        (own(drag)?.dragAreaSquareMetres.expected ?? 0) /
        (own(puckOf(examplePuck.name).drag)?.dragAreaSquareMetres.expected ?? 0)
      );
    };
    expect(conditions[0].index.expected).toBeCloseTo(
      0.25 * ratio("upright") + 0.25 * ratio("flat") + 0.5 * ratio("faceOn"),
      12,
    );
    expectOrdered(overall.index);
  });

  it("the band of a grooved puck edge-on holds the drag of the plain one, and its notes say so", () => {
    const own = (name: string) => puckOf(name).drag.find(({ orientation }) => orientation === "upright");
    const [plain, grooved] = [own("twin"), own("grooved")];
    expect(grooved?.dragCoefficient.low).toBeLessThan(plain?.dragCoefficient.expected ?? 0);
    expect(grooved?.dragCoefficient.high).toBeGreaterThan(plain?.dragCoefficient.expected ?? 1);
    expect(puckOf("grooved").notes.join(" ")).toContain("Grooves are not solved");
    expect(puckOf("twin").notes.join(" ")).not.toContain("Grooves are not solved");
  });

  it("rules are judged with the tolerances that a puck has, and made at random", () => {
    for (const { rules: judged } of pucks) {
      expect(judged?.ruleSet).toBe("Test rules");
      expect(judged?.made?.samples).toBe(300);
      expect(judged?.notice).toContain("no statement that a puck meets any body's rules");
    }
  });

  it("warns of lead, of the thrown weight and of what is not proven", () => {
    const all = results.cautions.join(" ");
    expect(all).toContain("Lead is poisonous");
    expect(all).toContain("never throw it in air");
    expect(all).toContain("neither safety nor compliance");
    expect(new Set(results.cautions).size).toBe(results.cautions.length);
  });
});

describe("the motions of a puck", () => {
  it("a slide goes less far than friction alone allows, (m + added mass) v^2 / (2 mu W) (closed form)", () => {
    for (const { motions, figures } of pucks) {
      const [slid] = motions;
      expectOrdered(slid.figures.distanceMetres);
      // The added mass of a flat spheroid edge-on stays below half of what it displaces (Lamb 1932, art. 114).
      const mass = figures.massKilograms + 0.5 * 1000 * figures.volumeCubicMetres;
      const most = (mass * 2 ** 2) / (2 * 0.2 * figures.weightInFluidNewtons);
      expect(slid.figures.distanceMetres.expected).toBeLessThan(most);
      expect(slid.figures.distanceMetres.expected).toBeGreaterThan(0.2 * most);
      expect(slid.ended).toBe("rest");
    }
  });

  it("marks that are not reached are null, others have time and speed", () => {
    const [{ marks, curves }] = puckOf("twin").motions;
    expect(marks[0].timeSeconds?.expected).toBeGreaterThan(0.1 / 2);
    expect(marks[0].speedMetresPerSecond?.expected).toBeLessThan(2);
    expect(marks[1]).toEqual({ distanceMetres: 50, timeSeconds: null, speedMetresPerSecond: null });
    expect(curves?.expected.timeSeconds).toHaveLength(11);
    expect(puckOf("twin").motions[1].curves).toBe(null);
  });

  it("a sink comes to the speed at which drag equals weight: W = Cd A rho v^2 / 2", () => {
    const { motions, drag, figures } = puckOf("twin");
    const terminal = motions[2].figures.terminalSpeedMetresPerSecond.expected;
    const area = drag.find(({ orientation }) => orientation === "faceOn")?.dragAreaSquareMetres.expected ?? Number.NaN;
    const density = results.fluid?.density ?? Number.NaN;
    expect(terminal).toBeCloseTo(Math.sqrt((2 * figures.weightInFluidNewtons) / (density * area)), 6);
    expect(motions[2].figures.endSpeedMetresPerSecond.expected).toBeCloseTo(terminal, 2);
  });

  it("no energy is lost: residual below 1e-6 of the energy in play", () => {
    for (const { motions } of pucks)
      for (const { energyResidual } of motions) expect(energyResidual).toBeLessThan(1e-6);
  });
});

describe("puckTable(pucks) and puckCsv(pucks)", () => {
  it("the table ends with the verdicts and whether any candidate beats the baseline", () => {
    const lines = puckTable(pucks).trimEnd().split("\n");
    expect(lines.at(-1)).toMatch(/candidates (is shown to )?beat a baseline by more than the band/);
    expect(lines.join("\n")).toContain("RULES: Test rules");
    expect(lines.join("\n")).toContain("Cd upright");
  });

  it("the CSV has one line per drag row, and its numbers are the results'", () => {
    const parsed = Papa.parse<Record<string, unknown>>(puckCsv(pucks), {
      header: true,
      dynamicTyping: true,
      skipEmptyLines: true,
    });
    expect(parsed.errors).toEqual([]);
    expect(parsed.data).toHaveLength(pucks.reduce((sum, { drag }) => sum + drag.length, 0));
    expect(parsed.data[0].dragCoefficient).toBe(pucks[0].drag[0].dragCoefficient.expected);
    expect(parsed.data[0].massKilograms).toBe(pucks[0].figures.massKilograms);
    expect(parsed.data.at(-1)?.overallVerdict).toBe(puckOf("rounder").comparisons[0].overall.verdict);
  });

  it("a rules file that was not at hand is said, not judged", () => {
    const [unread] =
      runCase(
        readGood(
          puckCaseDocument({
            rules: "elsewhere.json",
            play: { orientationShares: { upright: 1, flat: 1, faceOn: 1 }, flatPlace: "openWater" },
          }),
        ),
      ).pucks ?? [];
    expect(unread.rules).toBe(null);
    expect(unread.notes.join(" ")).toContain("elsewhere.json was not at hand");
    const [upright, flat] = unread.drag;
    expect(flat.dragCoefficient).toEqual(upright.dragCoefficient);
  });
});

describe("lying on the floor", () => {
  it("section with filled hollow and mirror image agree with the section solved on the floor, Cd within 5 %", () => {
    const stream = { speeds: [1, 2], kinematicViscosity: 8.5388e-7, turbulenceIntensity: 0.01, relativeError: 0 };
    const t = examplePuck.thicknessMetres;
    const image = unwrap(
      prepareStrip(profileSection({ ...examplePuck, thicknessMetres: 2 * t }, 0.08), 120, { splitterPlate: true }),
    );
    const contact = unwrap(prepareStrip(profileSection(examplePuck, 0.08), 200, { floorGap: 0 }));
    const doubled = unwrap(stripDrag(image, 2 * t, 1e-5, stream)).drag;
    const touching = unwrap(stripDrag(contact, t, 1e-5, stream)).drag;
    for (const speed of stream.speeds) {
      const reynolds = (speed * t) / stream.kinematicViscosity;
      expect(doubled(2 * reynolds).expected / touching(reynolds).expected).toBeGreaterThan(0.95);
      expect(doubled(2 * reynolds).expected / touching(reynolds).expected).toBeLessThan(1.05);
    }
  });
});

describe("states of the drag rows", () => {
  const upright = () => pucks[0].drag.find(({ orientation }) => orientation === "upright");

  it("add up: shares to 1, and the parts of each state to its drag coefficient", () => {
    const states = upright()?.states ?? [];
    expect(states.length).toBeGreaterThan(0);
    expect(Math.abs(states.reduce((sum, { share }) => sum + share, 0) - 1)).toBeLessThan(0.03);
    for (const { parts, dragCoefficient, rimState, edgeState } of states) {
      const sum = Object.values(parts).reduce((total, { expected }) => total + expected, 0);
      expect(sum).toBeCloseTo(dragCoefficient.expected, 8);
      expect(["laminar", "turned"]).toContain(rimState);
      expect(["kept", "lost", "open"]).toContain(edgeState);
    }
  });

  it("come with the crisis speed and the estimate by sections, far wider than the body's own band", () => {
    const row = upright();
    expect(row?.crisisSpeedMetresPerSecond).toBeGreaterThan(0.5);
    expect(row?.crisisSpeedMetresPerSecond).toBeLessThan(10);
    const width = (band: DragBand | null | undefined) => (band ? band.high - band.low : Number.NaN);
    expect(width(row?.twoSectionDragCoefficient)).toBeGreaterThan(width(row?.dragCoefficient));
  });

  it("stand in the table and the CSV", () => {
    expect(puckTable(pucks)).toContain("STATES upright");
    const [line] = Papa.parse<Record<string, string>>(puckCsv(pucks), { header: true }).data;
    expect(line.likeliestRimState).toBe(upright()?.states[0].rimState);
  });
});
