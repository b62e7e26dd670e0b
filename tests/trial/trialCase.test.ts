import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readScores } from "../../shared/jobs/trial/readScores";
import { resolveTrial } from "../../shared/jobs/trial/resolveTrial";
import { trialBlockDocument } from "../../shared/jobs/trial/trialBlockDocument";
import { trialCsv, trialCsvColumns } from "../../shared/jobs/trial/trialCsv";
import { trialSheetFiles } from "../../shared/jobs/trial/trialSheetFiles";
import { trialTable } from "../../shared/jobs/trial/trialTable";
import { analysed, resolved, smallBlock, tableOf, withScores } from "./trialCases";

const clear = withScores(smallBlock, (player, _, puck) => [6, 4, 2][puck] + (player % 2));

describe("resolveTrial", () => {
  it("names every fault by its key", () => {
    const reading = resolveTrial({
      ...smallBlock,
      pucks: [{ name: "Round", code: "384" }, { name: "round", code: "384" }, { name: "Rough" }],
      players: ["Ann", "ann"],
      power: { meanScores: [5, 4], spread: 1, playerCounts: [4] },
    });
    expect(reading.ok).toBe(false);
    if (reading.ok) return;
    expect(reading.problems.map(({ field }) => field)).toEqual([
      "trial.pucks[1].name",
      "trial.players[1]",
      "trial.pucks[2].code",
      "trial.power.meanScores",
    ]);
  });

  it("reports faults of the scores by row and column under trial.scores.data", () => {
    const reading = resolveTrial({ ...smallBlock, scores: { data: tableOf("player,activity,384\nAnn,Passing,9\n") } });
    expect(reading).toMatchObject({
      ok: false,
      problems: [
        {
          message:
            "trial.scores.data: row 2, column 384: 9 is not on the scale; a score must be 1 to 7, empty when missing",
        },
      ],
    });
  });

  it("a block refuses keys and values that it does not know", () => {
    expect(trialBlockDocument.safeParse({ ...smallBlock, judges: [] }).success).toBe(false);
    expect(trialBlockDocument.safeParse({ ...smallBlock, scale: { ...smallBlock.scale, highest: 1 } }).success).toBe(
      false,
    );
    expect(trialBlockDocument.safeParse(clear).success).toBe(true);
  });
});

describe("trialSteps", () => {
  it("players who all agree: order found, W 1, exact p 6 / 6^6, pairs at the least p there is", () => {
    const [passing, , overall] = analysed(clear).rankings;
    expect(passing.standings.map(({ code }) => code)).toEqual(["384", "592", "746"]);
    expect(passing.kendallW).toBeCloseTo(1, 12);
    expect(passing.test?.pMethod).toBe("exact");
    expect(passing.test?.pValue).toBeCloseTo(6 / 6 ** 6, 12);
    for (const pair of overall.pairs) {
      expect(pair.pValue).toBeCloseTo(2 / 2 ** 6, 12);
      expect(pair.holmP).toBeCloseTo(3 * pair.pValue, 12);
    }
  });

  it("a scale where low is good, scores turned about, gives the same ranking", () => {
    const turned = withScores(
      { ...smallBlock, scale: { ...smallBlock.scale, higherIsBetter: false } },
      (player, _, puck) => 8 - ([6, 4, 2][puck] + (player % 2)),
    );
    expect(
      analysed(turned).rankings.map(({ standings }) => standings.map(({ code, strength }) => [code, strength])),
    ).toEqual(analysed(clear).rankings.map(({ standings }) => standings.map(({ code, strength }) => [code, strength])));
  });

  it("any rising change of the scale leaves ranks, tests and strengths alone: scores are ordinal", () => {
    const score = fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 36, maxLength: 36 });
    fc.assert(
      fc.property(score, (drawn) => {
        const at = (i: number, a: number, p: number) => drawn[(i * 2 + a) * 3 + p];
        const quick = { ...smallBlock, analysis: { bootstrapSamples: 100, permutations: 99 } };
        const [plain, stretched] = [
          analysed(withScores(quick, at)),
          analysed(withScores(quick, (i, a, p) => [1, 2, 5, 7][at(i, a, p) - 1])),
        ];
        plain.rankings.forEach((ranking, i) => {
          expect(stretched.rankings[i].test).toEqual(ranking.test);
          expect(stretched.rankings[i].standings.map(({ strength }) => strength)).toEqual(
            ranking.standings.map(({ strength }) => strength),
          );
        });
      }),
      { numRuns: 8 },
    );
  });

  it("missing cells bring the test of Skillings and Mack, and are counted", () => {
    const result = analysed(withScores(smallBlock, (i, a, p) => (i === 2 && p === 0 && a === 0 ? null : [6, 4, 3][p])));
    expect(result.scores).toEqual({ scored: 35, wanted: 36, missing: 1 });
    expect(result.rankings[0].test?.name).toBe("Skillings-Mack");
    expect(result.rankings[0].missingCells).toBe(1);
    expect(result.rankings[0].completePlayers).toBe(5);
    expect(result.rankings[1].test?.name).toBe("Friedman");
    // The player scored the puck at the other activity, so overall nothing is missing.
    expect(result.rankings[2].missingCells).toBe(0);
  });

  it("equal scores everywhere: no test, with a reason", () => {
    const result = analysed(withScores(smallBlock, () => 4));
    expect(result.rankings[0].test).toBeNull();
    expect(result.rankings[0].problem).toMatch(/scored all pucks alike/);
  });

  it("weights decide the overall order where activities disagree", () => {
    const opposite = (i: number, a: number, p: number) => (a === 0 ? [6, 4, 2][p] : [2, 4, 6][p]) + (i % 2);
    const heavy = {
      ...smallBlock,
      activities: [
        { name: "Passing", weight: 3 },
        { name: "Flicking", weight: 1 },
      ],
    };
    expect(analysed(withScores(heavy, opposite)).rankings[2].standings[0].code).toBe("384");
    expect(analysed(withScores(smallBlock, opposite)).rankings[2].standings[0].code).toBe("746");
  });

  it("a contrary player has a negative agreement with the others", () => {
    const result = analysed(withScores(smallBlock, (i, _, p) => (i === 4 ? [1, 3, 5][p] : [6, 4, 2][p])));
    expect(result.judges[4].agreementWithOthers).toBeCloseTo(-1, 12);
    expect(result.judges[0].agreementWithOthers).toBeCloseTo(1, 12);
    expect(result.judges[0].agreementWithSelf).toBeNull();
  });

  it("repeated scores give each player's agreement with themselves", () => {
    const lines = smallBlock.players.flatMap((player) =>
      [1, 2].flatMap((repeat) => [`${player},Passing,${repeat},6,4,2`, `${player},Flicking,${repeat},5,4,1`]),
    );
    const block = {
      ...smallBlock,
      repeats: 2,
      scores: { data: tableOf(`player,activity,repeat,384,592,746\n${lines.join("\n")}\n`) },
    };
    const [ann] = analysed(block).judges;
    expect(ann.repeatedScores).toBe(6);
    expect(ann.agreementWithSelf).toBeCloseTo(1, 12);
  });

  it("blind: no names and no drags until it is unblinded", () => {
    const blind = analysed(clear);
    expect(JSON.stringify(blind)).not.toMatch(/Round|Sharp|Rough/);
    expect(blind.dragPreference).toBeNull();
    const open = analysed({ ...clear, unblinded: true });
    expect(open.pucks.map(({ name }) => name)).toEqual(["Round", "Sharp", "Rough"]);
    expect(open.dragPreference?.spearman?.coefficient).toBeCloseTo(-1, 12);
    expect(open.dragPreference?.spearman?.pValue).toBeCloseTo(2 / 6, 12);
    expect(open.dragPreference?.sentences.join(" ")).toMatch(
      /3 pucks cannot show a connection at 5 %: even in perfect order .* Without ties 5 pucks are the least that can\./,
    );
  });

  it("equal cases give equal results, and a case without scores is planned only", () => {
    expect(analysed(clear)).toEqual(analysed(clear));
    const planned = analysed({
      ...smallBlock,
      power: { meanScores: [5, 4, 4], spread: 1, playerCounts: [6], simulations: 100 },
    });
    expect(planned.rankings).toEqual([]);
    expect(planned.scores).toBeNull();
    expect(planned.power?.curve).toHaveLength(1);
    expect(planned.plan.isBalanced).toBe(true);
  });

  it("with 3 players it says that no pair could be shown at all", () => {
    const few = { ...smallBlock, players: ["Ann", "Bo", "Cy"] };
    const { rankings } = analysed(withScores(few, (_, __, puck) => [6, 4, 2][puck]));
    expect(rankings[0].conclusions.join(" ")).toMatch(
      /No single pair can be shown at 5 %: even if all 3 players agreed, the least p of a pair, allowing for all 3 pairs and 3 rankings, would be 1.000/,
    );
  });
});

describe("outputs of a trial", () => {
  const result = analysed({ ...clear, unblinded: true });

  it("the table names tests, pairs, cautions and limits", () => {
    const text = trialTable(result);
    expect(text).toMatch(/Friedman 12\.00, 2 degrees of freedom: p 0\.0001 exact/);
    expect(text).toMatch(/384 Round over 592 Sharp/);
    expect(text).toMatch(/lead is toxic/);
  });

  it("the CSV has its columns and a line per activity and puck", () => {
    const table = tableOf(trialCsv(result));
    expect(table.columns).toEqual(trialCsvColumns);
    expect(table.rows).toHaveLength(9);
  });

  it("score sheets show codes in the planned order and never a name; their CSV comes back as an empty trial", () => {
    const theCase = resolved(smallBlock);
    const files = new Map(trialSheetFiles("Trial <A>", theCase).map(({ name, content }) => [name, content]));
    const html = files.get("score-sheets.html") ?? "";
    expect(html).not.toMatch(/Round|Sharp|Rough|<A>/);
    for (const session of theCase.plan.sessions.slice(0, 2)) {
      const codes = session.order.map((puck) => theCase.setup.pucks[puck].code);
      expect(html).toMatch(new RegExp(codes.join("[^]*?")));
    }
    expect(html).toMatch(/1 2 3 4 5 6 7/);
    expect(html).toMatch(/can injure head, hands and feet/);
    const csv = files.get("score-sheets.csv") ?? "";
    expect(csv).not.toMatch(/Round/);
    const { scores, problems } = readScores(tableOf(csv), theCase.setup, theCase.plan);
    expect(problems).toEqual([]);
    expect(scores).toHaveLength(36);
    expect(scores.every(({ score }) => score === null)).toBe(true);
    expect(files.get("code-key.csv")).toMatch(/384,Round/);
    expect(files.get("code-key.html")).toMatch(/Keep this page from players/);
  });
});
