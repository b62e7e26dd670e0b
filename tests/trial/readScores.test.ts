import { describe, expect, it } from "vitest";
import { readScores } from "../../shared/jobs/trial/readScores";
import { tableProblemText } from "../../shared/tables/dataTable";
import { resolved, smallBlock, tableOf } from "./trialCases";

const { setup, plan } = resolved(smallBlock);

function read(csv: string) {
  const { scores, problems } = readScores(tableOf(csv), setup, plan);
  return { scores, messages: problems.map(tableProblemText) };
}

describe("readScores", () => {
  it("reads the long form, takes the planned position where none is given", () => {
    const { scores, messages } = read(
      "player,activity,code,score,comment\nAnn,Passing,384,6,fast\nAnn,Passing,592,,\n",
    );
    expect(messages).toEqual([]);
    expect(scores).toHaveLength(2);
    const session = plan.sessions.find((one) => one.player === 0 && one.activity === 0);
    expect(scores[0]).toEqual({
      player: 0,
      activity: 0,
      puck: 0,
      repeat: 1,
      position: (session?.order.indexOf(0) ?? -9) + 1,
      score: 6,
      comment: "fast",
    });
    expect(scores[1].score).toBeNull();
  });

  it("reads the wide form, by codes or by names, with semicolons, a byte-order mark and other line ends", () => {
    const { scores, messages } = read("\uFEFFPlayer;Activity;384;592;Rough\r\nbo;flicking;7;1;-\r\n");
    expect(messages).toEqual([]);
    expect(scores.map(({ puck, score }) => [puck, score])).toEqual([
      [0, 7],
      [1, 1],
      [2, null],
    ]);
  });

  it("names row and column of everything that is wrong, and keeps what is right", () => {
    const { scores, messages } = read(
      [
        "player,activity,code,position,score",
        "Ann,Passing,384,1,6",
        "Anne,Passing,592,2,5",
        "Bo,Diving,592,2,5",
        "Bo,Passing,999,2,5",
        "Bo,Passing,592,4,5",
        "Bo,Passing,384,1,8",
        'Bo,Passing,746,3,"5,5"',
        "Ann,Passing,384,2,5",
        "Ann,Passing,746,1,5",
        "Cy,Passing,384,1,good",
        ",Passing,384,1,5",
      ].join("\n"),
    );
    expect(scores).toHaveLength(1);
    const expected = [
      /^row 3, column player: "Anne" is not known; it must be one of Ann, Bo/,
      /^row 4, column activity: "Diving" is not known; it must be one of Passing, Flicking/,
      /^row 5, column code: "999" is not known; it must be one of 384, 592, 746/,
      /^row 6, column position: "4" must be a whole number from 1 to 3/,
      /^row 7, column score: 8 is not on the scale; a score must be 1 to 7/,
      /^row 8, column score: 5\.5 is not on the scale/,
      /^row 9, column code: Ann scored 384 at Passing in row 2 already/,
      /^row 10, column position: position 1 of this session is in row 2 already/,
      /^row 11, column score: "good" is not a number; a score must be 1 to 7, empty when missing/,
      /^row 12, column player: it is missing/,
    ];
    expect(messages).toHaveLength(expected.length);
    expected.forEach((pattern, i) => {
      expect(messages[i]).toMatch(pattern);
    });
  });

  it("a wrong decimal mark is found by row and column", () => {
    const { messages } = read('player,activity,384,592,746\nAnn,Passing,"4,0",5.0,6.0\nBo,Passing,4.0,5.0,6.0\n');
    expect(messages).toHaveLength(1);
    expect(messages[0]).toMatch(/^row 2, column 384: "4,0" has a comma, but the table's decimal mark is the point/);
  });

  it("says which columns are missing or not known", () => {
    expect(read("name,score\nAnn,5\n").messages[0]).toMatch(/^column player: there is no column "player"/);
    expect(read("player,activity,speed\nAnn,Passing,5\n").messages[0]).toMatch(
      /neither a column score nor a column for any code/,
    );
    expect(read("player,activity,384,999\nAnn,Passing,5,5\n").messages[0]).toMatch(
      /^column 999: the column is not known/,
    );
  });
});
