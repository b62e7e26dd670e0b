import * as z from "zod";
import { quantity, strictRecord, text } from "../../document/quantity";
import { decimalMarkDocument, tableData } from "../../tables/tableDocument";
import { mostBlindCodes } from "./blindCodes";

export const mostPlayers = 200;
export const mostActivities = 12;
export const mostRepeats = 5;

function list<Item extends z.core.SomeType>(item: Item, fewest: number, most: number, what: string) {
  const rule = `it must be a list of ${fewest} to ${most} ${what}`;
  return z.array(item, { error: rule }).min(fewest, rule).max(most, rule);
}

function whole(description: string, from: number, to: number) {
  const rule = `it must be a whole number from ${from} to ${to}`;
  return z.int({ error: rule }).gte(from, rule).lte(to, rule).describe(description);
}

function flag(description: string) {
  return z.boolean({ error: "it must be true or false" }).describe(description);
}

const codeRule = "it must be 1 to 12 letters and digits";

const puck = strictRecord("a puck of the trial", {
  name: text("Name, kept from players until the trial is unblinded", 100),
  code: z
    .string({ error: codeRule })
    .regex(/^[A-Za-z0-9]{1,12}$/, codeRule)
    .optional()
    .describe("Blind code on the puck; drawn by the seed when no puck has one"),
  drag: quantity("Drag to hold against the ranking, as dragMeaning says", { above: 0, to: 1e6, unit: "" }).optional(),
});

const activity = strictRecord("an activity", {
  name: text("Name", 60),
  weight: quantity("Share in the overall ranking, on any scale; 1 when left out", {
    above: 0,
    to: 1000,
    unit: "",
  }).optional(),
  instruction: text("What the player does and judges", 500).optional(),
});

const score = { from: -1000, to: 1000, unit: "" };

const scale = strictRecord("a scale of scores", {
  lowest: quantity("Lowest score", score),
  highest: quantity("Highest score", score),
  step: quantity("Step between scores; 1 when left out", { above: 0, to: 1000, unit: "" }).optional(),
  question: text("What the score answers", 200),
  lowestMeans: text("Words for the lowest score", 60),
  highestMeans: text("Words for the highest score", 60),
  higherIsBetter: flag("Whether a high score is a good one; true when left out").optional(),
}).refine(
  ({ lowest, highest, step = 1 }) => (highest - lowest) / step >= 1,
  "highest must be a step or more above lowest",
);

const scores = strictRecord("scores", {
  data: tableData(
    "A row per score (player, activity, code, score; repeat, position, comment if wanted), or a row per session with a column for every code; or the path of such a CSV file",
  ),
  decimalMark: decimalMarkDocument,
});

const analysis = strictRecord("an analysis", {
  significanceLevel: quantity("p up to which a difference counts as shown; 0.05 when left out", {
    from: 0.001,
    to: 0.5,
    unit: "",
  }).optional(),
  bootstrapSamples: whole("Panels drawn for the bands; 1000 when left out", 100, 20_000).optional(),
  bandPercent: quantity("Share of the panels inside a band; 90 when left out", {
    from: 50,
    to: 99.9,
    unit: "%",
  }).optional(),
  permutations: whole("Permutations where not all can be counted; 5000 when left out", 99, 100_000).optional(),
});

const power = strictRecord("a study of power", {
  meanScores: list(quantity("Mean liking of a puck, score units", score), 2, mostBlindCodes, "means").describe(
    "Assumed mean scores, one per puck",
  ),
  spread: quantity("Assumed standard deviation of one score about puck and player, score units", {
    above: 0,
    to: 1000,
    unit: "",
  }),
  playerSpread: quantity("Assumed standard deviation of the players' own levels, score units; 0 when left out", {
    from: 0,
    to: 1000,
    unit: "",
  }).optional(),
  playerCounts: list(whole("Players", 2, mostPlayers), 1, 30, "numbers of players"),
  simulations: whole("Simulated trials per number of players; 400 when left out", 100, 20_000).optional(),
  wantedPower: quantity("Wanted chance to show the difference; 0.8 when left out", {
    from: 0.05,
    to: 0.999,
    unit: "",
  }).optional(),
});

/** A player trial: its plan, its scores and what is asked of them. */
export const trialBlockDocument = strictRecord("a trial block", {
  pucks: list(puck, 2, mostBlindCodes, "pucks"),
  players: list(text("Name or number of a player", 60), 2, mostPlayers, "players"),
  activities: list(activity, 1, mostActivities, "activities"),
  scale,
  seed: whole("Equal seeds give equal orders, codes and results", 0, 1_000_000_000),
  repeats: whole("Times that a player scores a puck at an activity; 1 when left out", 1, mostRepeats).optional(),
  unblinded: flag("True to show names and drags beside the codes; false when left out").optional(),
  dragMeaning: text("What the drags are of", 200).optional(),
  scores: scores.optional().describe("Scores that were given; without them the trial is planned only"),
  analysis: analysis.optional(),
  power: power.optional().describe("Chance of such a trial to show a difference, by simulation"),
}).describe("Player trial: a blind, balanced plan, its scores, and the ranking that they give");

export type TrialBlockDocument = z.infer<typeof trialBlockDocument>;
