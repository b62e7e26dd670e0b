import { resolve } from "node:path";
import Papa from "papaparse";
import { beforeAll, describe, expect, it } from "vitest";
import type { CaseResults } from "../../shared/case/caseResults";
import { runCase } from "../../shared/case/caseSteps";
import { readCaseDocument } from "../../shared/case/readCase";
import { tunnelCsv, tunnelCsvColumns } from "../../shared/jobs/tunnel/tunnelCsv";
import type { TunnelResult } from "../../shared/jobs/tunnel/tunnelResult";
import { tunnelTable } from "../../shared/jobs/tunnel/tunnelTable";
import { openCaseFile } from "../../src/cli/openCaseFile";
import { inventedDrag } from "../../src/demo/inventedTest";
import { inventedPuckTest, inventedSectionTest, inventedTaps, inventedWake } from "../../src/demo/tunnelDemo";
import { value } from "./tunnelSamples";

const cases = resolve(import.meta.dirname, "../../cases");

function opened(name: string) {
  return value(openCaseFile(resolve(cases, name), name));
}

function tunnelOf(results: CaseResults): TunnelResult {
  if (results.tunnel === undefined) throw new Error("no tunnel result");
  return results.tunnel;
}

describe("the invented puck test", () => {
  let result: TunnelResult;
  beforeAll(() => {
    result = tunnelOf(runCase(opened("harbour-tunnel.json").theCase));
  });

  it("says in title, note and table that its data are invented", () => {
    const { document } = opened("harbour-tunnel.json");
    expect(JSON.stringify(document)).toMatch(/invented data.*INVENTED DATA/s);
  });

  it("finds the invented drag on both sides of its crisis, in both directions of speed", () => {
    const points = result.reduction?.points ?? [];
    expect(points).toHaveLength(18);
    const { drag } = inventedPuckTest;
    // In the step itself an error of the Reynolds number counts for more than the drag's own uncertainty.
    const flat = points.filter(
      ({ reynolds, direction }) => Math.abs(Math.log(reynolds / drag[direction])) > 4 * drag.width,
    );
    expect(flat.length).toBeGreaterThan(8);
    for (const { reynolds, direction, dragCoefficient, firstOrder } of flat) {
      const miss = Math.abs(dragCoefficient - inventedDrag(drag, reynolds, direction));
      expect(miss).toBeLessThan(firstOrder.expandedUncertainty);
    }
  });

  it("shows the hysteresis that was put in", () => {
    const at = (direction: string) =>
      result.reduction?.points.find(
        (point) => point.direction === direction && Math.round(point.speedMetresPerSecond) === 24,
      );
    expect((at("rising")?.dragCoefficient ?? 0) - (at("falling")?.dragCoefficient ?? 0)).toBeGreaterThan(0.05);
  });

  it("prints tables, notes and cautions, and a CSV of one line for every point", () => {
    const text = tunnelTable(result);
    for (const part of [
      "Equal Reynolds numbers",
      "Plan: ",
      "Reduced runs",
      "Uncertainty by share",
      "Maskell (1963): outside its range",
    ]) {
      expect(text).toContain(part);
    }
    const { data, errors } = Papa.parse<Record<string, unknown>>(tunnelCsv(result), {
      header: true,
      skipEmptyLines: true,
    });
    expect(errors).toEqual([]);
    expect(data).toHaveLength(18);
    expect(Object.keys(data[0])).toEqual([...tunnelCsvColumns]);
    expect(Number(data[0].dragCoefficient)).toBe(result.reduction?.points[0].dragCoefficient);
  });

  it("survives JSON whole: every number is finite", () => {
    const wrong: string[] = [];
    JSON.stringify(result, (key, part: unknown) => {
      if (part === undefined || (typeof part === "number" && !Number.isFinite(part))) wrong.push(key);
      return part;
    });
    expect(wrong).toEqual([]);
  });
});

describe("the invented section test", () => {
  let result: TunnelResult;
  beforeAll(() => {
    result = tunnelOf(runCase(opened("harbour-tunnel-section.json").theCase));
  });

  it("finds the invented drag away from its crisis with the correction that its walls have", () => {
    const { drag } = inventedSectionTest;
    const flat = (result.reduction?.points ?? []).filter(
      ({ reynolds, direction }) => Math.abs(Math.log(reynolds / drag[direction])) > 4 * drag.width,
    );
    expect(flat.length).toBeGreaterThan(6);
    for (const { reynolds, direction, dragCoefficient, firstOrder } of flat) {
      const miss = Math.abs(dragCoefficient - inventedDrag(drag, reynolds, direction));
      expect(miss).toBeLessThan(firstOrder.expandedUncertainty);
    }
  });

  it("finds the wake's drag inside its uncertainty, by every method", () => {
    for (const { dragCoefficient, uncertainty } of result.wakeSurvey?.drags ?? []) {
      expect(Math.abs(dragCoefficient - inventedWake.dragCoefficient)).toBeLessThan(uncertainty.expandedUncertainty);
    }
    expect(result.wakeSurvey?.drags).toHaveLength(3);
  });

  it("shows that the base is lower than predicted by what was put in, and the front is not", () => {
    const taps = result.pressureTaps?.taps ?? [];
    const mean = (list: readonly (number | null)[]) =>
      list.reduce<number>((sum, each) => sum + (each ?? 0), 0) / list.length;
    const base = taps.filter(({ arcShare }) => arcShare > 0.3 && arcShare < 0.7).map(({ residual }) => residual);
    const front = taps.filter(({ arcShare }) => arcShare < 0.2 || arcShare > 0.8).map(({ residual }) => residual);
    expect(mean(base)).toBeCloseTo(inventedTaps.baseOffset, 2);
    expect(mean(front)).toBeCloseTo(0, 2);
    expect(result.pressureTaps?.pressureDrag.value).toBeGreaterThan(result.pressureTaps?.predictedDrag ?? 9);
  });
});

describe("the tunnel block of a case", () => {
  // biome-ignore lint/suspicious/noExplicitAny: a document that is changed at any place
  type Loose = any;
  const refusal = (change: (tunnel: Loose) => void) => {
    const document: Loose = structuredClone(opened("harbour-tunnel-section.json").document);
    change(document.tunnel);
    const reading = readCaseDocument(document, "case.json");
    return reading.ok ? "accepted" : reading.problems.map(({ message }) => message).join("\n");
  };

  it("is accepted as it stands", () => expect(refusal(() => {})).toBe("accepted"));

  it.each<[string, (tunnel: Loose) => void, RegExp]>([
    [
      "a wrong cell",
      (t) => {
        t.runs.data.rows[3][11] = "1,2,3";
      },
      /tunnel\.runs: row 8, column forceNewtons: "1,2,3" has a comma/,
    ],
    [
      "a missing column",
      (t) => {
        t.runs.data.columns[11] = "F";
      },
      /tunnel\.runs: no column holds forceNewtons; the columns are run, kind/,
    ],
    [
      "no model run",
      (t) => {
        t.runs.data.rows = t.runs.data.rows.slice(0, 4);
      },
      /no row has a run of the model/,
    ],
    [
      "no shape",
      (t) => {
        delete t.model.section;
      },
      /exactly one of section and puck must be given/,
    ],
    [
      "a swept section",
      (t) => {
        t.model.section.diameterMetres = [0.08, 0.09];
      },
      /tunnel\.model\.section\.diameterMetres: it must be one number here/,
    ],
    [
      "a huge model",
      (t) => {
        t.model.scale = 8;
      },
      /the model fills 53.3 % of the test section; it must be below 40 %/,
    ],
    [
      "an unknown key",
      (t) => {
        t.facility.balance.gain = 1;
      },
      /tunnel\.facility\.balance\.gain is not a known key/,
    ],
    [
      "speeds upside down",
      (t) => {
        t.facility.fastestSpeedMetresPerSecond = 2;
      },
      /it must be above slowestSpeedMetresPerSecond/,
    ],
    [
      "a speed beyond the engine",
      (t) => {
        t.fullScale.speedsMetresPerSecond = [900, 0.001];
      },
      /0\.001 m\/s is Reynolds number 93\.7; it must be from 1000/,
    ],
    [
      "few taps",
      (t) => {
        t.pressureTaps.data.rows[0][1] = "front";
      },
      /tunnel\.pressureTaps: row 5, column angleDegrees: "front" is not a number/,
    ],
    [
      "samples",
      (t) => {
        t.uncertainty.samples = 10;
      },
      /tunnel\.uncertainty\.samples is 10; it must be/,
    ],
  ])("refuses %s with a place and a rule", (_, change, message) => {
    expect(refusal(change)).toMatch(message);
  });

  it("a table that is only named is said to be missing, and the rest is worked out", () => {
    const document: Loose = structuredClone(opened("harbour-tunnel-section.json").document);
    document.tunnel.runs.data = "elsewhere.csv";
    delete document.tunnel.pressureTaps;
    delete document.tunnel.wakeSurvey;
    const reading = readCaseDocument(document, "case.json");
    if (!reading.ok) throw new Error(reading.problem.message);
    const result = tunnelOf(runCase(reading.value));
    expect(result.reduction).toBeNull();
    expect(result.plan).not.toBeNull();
    expect(result.notes.join()).toContain("The table elsewhere.csv was not at hand here");
  });
});
