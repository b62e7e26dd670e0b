import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { runCase } from "../../shared/case/caseSteps";
import { openCaseFile } from "../../src/cli/openCaseFile";
import { smallBlock } from "./trialCases";

const folder = mkdtempSync(join(tmpdir(), "trial-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function written(name: string, content: string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

function trialFile(name: string, csv: string): string {
  written(`${name}.csv`, csv);
  const document = { wakewrightCase: 1, title: name, trial: { ...smallBlock, scores: { data: `${name}.csv` } } };
  return written(`${name}.json`, JSON.stringify(document));
}

describe("a trial in a case file", () => {
  it("the invented demo runs without sections, stream and roughness, and its scores are all read", () => {
    const path = join(import.meta.dirname, "../../cases/harbour-trial.json");
    const opened = openCaseFile(path, "harbour-trial.json");
    if (!opened.ok) throw new Error(opened.problem.message);
    const { trial, results } = runCase(opened.value.theCase);
    expect(results).toEqual([]);
    expect(trial?.scores).toEqual({ scored: 140, wanted: 144, missing: 4 });
    expect(trial?.plan.isBalanced).toBe(true);
    expect(trial?.rankings.map(({ test }) => test?.name)).toEqual([
      "Friedman",
      "Skillings-Mack",
      "Friedman",
      "Friedman",
    ]);
    expect(readFileSync(path, "utf8")).toMatch(/Invented: players, scores and drags are made up/);
  });

  it("reads a CSV file beside it, and keeps its rows in the document", () => {
    const lines = smallBlock.players.map((player) => `${player};Passing;6;4;2`);
    const path = trialFile("good", `\uFEFFplayer;activity;384;592;746\r\n${lines.join("\r\n")}\r\n`);
    const opened = openCaseFile(path, "good.json");
    if (!opened.ok) throw new Error(opened.problem.message);
    expect(opened.value.theCase.trial?.scores).toHaveLength(18);
    expect(JSON.stringify(opened.value.document)).toMatch(/"Ann","Passing","6"/);
  });

  it("names file, key, row and column of a wrong score", () => {
    const path = trialFile("bad", "player,activity,384,592,746\nAnn,Passing,6,4,2\nBo,Passing,6,40,2\n");
    const opened = openCaseFile(path, "bad.json");
    expect(opened).toMatchObject({
      ok: false,
      problem: {
        message:
          "bad.json: trial.scores.data: row 3, column 592: 40 is not on the scale; a score must be 1 to 7, empty when missing",
      },
    });
  });
});
