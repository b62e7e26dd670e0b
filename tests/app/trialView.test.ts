import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { runCase } from "../../shared/case/caseSteps";
import { readCaseDocument } from "../../shared/case/readCase";
import { lightPalette } from "../../src/app/style/palette";
import { dragFigure } from "../../src/app/trial/dragFigure";
import { enterPlayerCounts, enterPower } from "../../src/app/trial/powerEntries";
import { powerFigure } from "../../src/app/trial/powerFigure";
import { withDrags } from "../../src/app/trial/puckViewDrags";
import { rankFigure } from "../../src/app/trial/rankFigure";
import { badCells } from "../../src/app/trial/scoreErrors";
import { readImport } from "../../src/app/trial/scoreImport";
import { addPlayers, addPuck, removePlayer } from "../../src/app/trial/setupChanges";
import { enterActivity, enterPlayer, enterPuck, enterScale, enterWhole } from "../../src/app/trial/setupEntries";
import { trialBench } from "../../src/app/trial/trialBench";
import { planOf, sessionOrder, trialBlock } from "../../src/app/trial/trialBlock";
import { readTrialCase, trialCaseText } from "../../src/app/trial/trialCaseText";
import { cellKey, newTrial, type TrialInputs } from "../../src/app/trial/trialInputs";

const demoText = readFileSync("cases/harbour-trial.json", "utf8");

function opened(text: string): TrialInputs {
  const reading = readTrialCase(text);
  if (!reading.ok) throw new Error(reading.problems[0].message);
  return reading.value;
}

const demo = opened(demoText);

describe("a trial on the page", () => {
  it("reads the demo and writes a case that reads back equal and gives the command line's results", () => {
    const text = trialCaseText(demo);
    expect(opened(text)).toEqual(demo);
    const [own, file] = [JSON.parse(text), JSON.parse(demoText)].map((document) => {
      const reading = readCaseDocument(document, "demo");
      if (!reading.ok) throw new Error(reading.problem.message);
      return runCase(reading.value).trial;
    });
    expect(own).toEqual(file);
  }, 300_000);

  it("keeps what is typed but no score, in the case too, and leaves it out of what is ranked", () => {
    const key = cellKey({ activity: 1, repeat: 1, player: 1, puck: 1 });
    const wrong = { ...demo, cells: { ...demo.cells, [key]: { ...demo.cells[key], typed: "5 or 6" } } };
    expect(badCells(wrong).get(key)).toMatch(/"5 or 6" is not a number; a score must be 1 to 9/);
    const again = opened(trialCaseText(wrong));
    expect(again.cells[key].typed).toBe("5 or 6");
    expect(JSON.stringify(trialBlock(again, true))).not.toContain("5 or 6");
  });

  it("takes a decimal comma for one, and says what is off the scale", () => {
    const key = cellKey({ activity: 1, repeat: 1, player: 1, puck: 1 });
    const half = { ...demo, scale: { ...demo.scale, step: 0.5 } };
    const typed = (text: string) =>
      badCells({ ...half, cells: { [key]: { typed: text, position: null, comment: null } } });
    expect(typed("5,5").size).toBe(0);
    expect(typed("5,2").get(key)).toMatch(/5\.2 is not on the scale; a score must be 1 to 9 in steps of 0\.5/);
    expect(typed("10").get(key)).toMatch(/10 is not on the scale/);
  });

  it("refuses a case whose trial is wrong, by key, or whose scores have no place, by row", () => {
    const document = JSON.parse(demoText);
    const broken = readTrialCase(JSON.stringify({ ...document, trial: { ...document.trial, seed: -1 } }));
    expect(broken).toMatchObject({ ok: false, problems: [{ field: "trial.seed" }] });
    document.trial.scores.data.rows[3][0] = "Nobody";
    const misplaced = readTrialCase(JSON.stringify(document));
    expect(misplaced).toMatchObject({ ok: false });
    if (!misplaced.ok) expect(misplaced.problems[0].message).toMatch(/row 5, column player: "Nobody" is not known/);
  });

  it("imports a table: problems by row and column, the scores that have a place, and how many they replace", () => {
    const text = "player,activity,code,score\nP01,Passing,657,9\nP99,Passing,657,5\nP02,Passing,657,11\n";
    const reading = readImport(text, demo);
    expect(reading.problems).toHaveLength(2);
    expect(reading.problems[0]).toMatch(/^row 3, column player: "P99"/);
    expect(reading.problems[1]).toMatch(/^row 4, column score: 11 is not on the scale/);
    expect(Object.keys(reading.cells ?? {})).toHaveLength(2);
    expect(reading.replaced).toBe(2);
    expect(readImport('player\n"P01', demo).cells).toBeNull();
  });

  it("a player more leaves the orders of the others, and a removed one takes only their own scores", () => {
    const more = { ...demo, ...addPlayers(demo, 1) };
    const orders = (inputs: TrialInputs) => planOf(inputs).sessions.filter(({ player }) => player < 12);
    expect(orders(more)).toEqual(orders(demo));
    const fewer = { ...demo, ...removePlayer(demo, 4) };
    expect(Object.keys(fewer.cells)).toHaveLength(Object.keys(demo.cells).length - 10);
    // Noted places hold although the plan has moved on.
    expect(sessionOrder(fewer, planOf(fewer), 4, 0, 1)).toEqual(sessionOrder(demo, planOf(demo), 5, 0, 1));
  });

  it("a new puck has a code unlike the others", () => {
    const { pucks = [] } = addPuck(demo);
    expect(pucks).toHaveLength(5);
    expect(new Set(pucks.map(({ code }) => code)).size).toBe(5);
  });

  it("typing on in one cell is one step of the history", () => {
    trialBench.showTrial(demo);
    const key = cellKey({ activity: 2, repeat: 1, player: 2, puck: 2 });
    const before = trialBench.present.cells[key].typed;
    trialBench.typeScore(key, "7");
    trialBench.typeScore(key, "75");
    expect(trialBench.present.cells[key].typed).toBe("75");
    trialBench.undo();
    expect(trialBench.present.cells[key].typed).toBe(before);
    trialBench.change({ isUnblinded: false });
    expect(trialBench.value.history.present.isUnblinded).toBe(false);
  });
});

describe("entries of a trial", () => {
  it("refuse what would make the trial unusable, naming it", () => {
    const message = (entry: { ok: boolean; message?: string }) => (entry.ok ? "" : entry.message);
    expect(message(enterPuck(demo, 1, "name", "Pebble, round edge"))).toMatch(/another puck/);
    expect(message(enterPuck(demo, 1, "code", "65 7"))).toMatch(/1 to 12 letters and digits/);
    expect(message(enterPlayer(demo, 1, " p02 "))).toMatch(/another player/);
    expect(message(enterPlayer(demo, 1, " "))).toMatch(/needs a name/);
    expect(message(enterActivity(demo, 1, "weight", "0"))).toMatch(/above 0/);
    expect(message(enterScale(demo, "highest", "1"))).toMatch(/gives no scale/);
    expect(message(enterWhole(demo, "repeats", "1.5"))).toMatch(/whole number from 1 to 5/);
    expect(message(enterPower(demo, "spread", "0"))).toMatch(/above 0/);
    expect(message(enterPlayerCounts(demo, "8 twelve"))).toMatch(/whole numbers from 2/);
    expect(enterActivity(demo, 1, "weight", "1,5")).toMatchObject({ ok: true });
    expect(enterPlayerCounts(demo, "12, 8 8")).toMatchObject({
      ok: true,
      change: { power: { playerCounts: [8, 12] } },
    });
  });

  it("take drags by the names of the pucks", () => {
    const { pucks, found } = withDrags(
      newTrial.pucks,
      new Map([
        ["puck b", 0.71234567],
        ["other", 2],
      ]),
    );
    expect(found).toEqual(["Puck B"]);
    expect(pucks.map(({ drag }) => drag)).toEqual([null, 0.7123]);
  });
});

describe("figures of a trial", () => {
  const reading = readCaseDocument(JSON.parse(demoText), "demo");
  if (!reading.ok) throw new Error(reading.problem.message);
  const result = runCase(reading.value).trial!;

  it("the ranking shows every puck once with its band, the best on top, and the same numbers as a table", () => {
    const ranking = result.rankings[3];
    const figure = rankFigure(result, ranking, 90, lightPalette);
    const [trace] = figure.data as unknown as { x: number[]; error_x: { array: number[]; arrayminus: number[] } }[];
    expect(trace.x).toEqual(ranking.standings.map(({ strength }) => strength).reverse());
    ranking.standings.forEach((one, i) => {
      const place = ranking.standings.length - 1 - i;
      expect(trace.x[place] + trace.error_x.array[place]).toBeCloseTo(one.strengthHigh!, 12);
      expect(trace.x[place] - trace.error_x.arrayminus[place]).toBeCloseTo(one.strengthLow!, 12);
      expect(figure.table.rows[i][1]).toBe(one.strength);
    });
  });

  it("power and drag have their points and tables", () => {
    const power = powerFigure(result.power!, lightPalette);
    expect(power.table.rows.map(([players]) => players)).toEqual([4, 8, 12, 16, 20, 24, 32, 40]);
    const drag = dragFigure(result, result.dragPreference!, lightPalette);
    expect(drag.data).toHaveLength(4);
    const range = drag.layout.yaxis?.range as number[];
    expect(range[0]).toBeGreaterThan(range[1]);
  });
});
