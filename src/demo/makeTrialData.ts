import { writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { readScores } from "../../shared/jobs/trial/readScores";
import { trialSetup } from "../../shared/jobs/trial/resolveTrial";
import type { TrialBlockDocument } from "../../shared/jobs/trial/trialBlockDocument";
import { trialPlan } from "../../shared/jobs/trial/trialPlan";
import { randomDraws } from "../../shared/statistics/randomDraws";

/**
 * Renews cases/harbour-trial.json: an invented trial of the Harbour League, its scores drawn by a seed from likings that
 * are written down here. Run it with `npx tsx src/demo/makeTrialData.ts && npx biome check --write cases`.
 */

const seed = 20261125;
const caseFile = resolve(import.meta.dirname, "../../cases/harbour-trial.json");

/** True likings in score units, by activity: passing, flicking, holding. */
const pucks = [
  { name: "Harbour baseline", drag: 2.9, likings: [4.6, 5.2, 5.4] },
  { name: "Pebble, round edge", drag: 2.1, likings: [6.6, 6.1, 4.9] },
  { name: "Breakwater, wide and thin", drag: 2.4, likings: [5.9, 4.4, 4.6] },
  { name: "Barnacle, rough rim", drag: 3.4, likings: [4.0, 4.8, 6.8] },
];

const players = Array.from({ length: 12 }, (_, i) => `P${String(i + 1).padStart(2, "0")}`);

/** Of one score about puck and player, of the players' own levels, and a little tiredness from place to place. */
const spread = 1.1;
const playerSpread = 0.8;
const perPlace = -0.12;

/** This player likes what the others do not: to show what a low agreement looks like. */
const contrary = 8;

/** Sessions that a player missed: player, activity. */
const missed = [
  [3, 1],
  [10, 1],
];

const trial: TrialBlockDocument = {
  pucks: pucks.map(({ name, drag }) => ({ name, drag })),
  players,
  activities: [
    {
      name: "Passing",
      weight: 3,
      instruction:
        "Ten flat passes along the floor over 3 m to a partner's stick, two minutes per puck. Judge pace, line and feel.",
    },
    {
      name: "Flicking",
      weight: 2,
      instruction: "Five flicks over a low bar, alone in the lane, nobody within 5 m ahead. Judge lift, pace and line.",
    },
    {
      name: "Holding",
      weight: 1,
      instruction: "Swim 10 m with the puck on the stick, with turns. Judge how well it stays.",
    },
  ],
  scale: {
    lowest: 1,
    highest: 9,
    question: "How well did this puck play?",
    lowestMeans: "unusable",
    highestMeans: "could not be better",
  },
  seed,
  unblinded: true,
  dragMeaning: "Invented: drag edge-on at 3 m/s, N",
  power: {
    meanScores: [5, 6, 5, 5],
    spread: 1.5,
    playerSpread: 1,
    playerCounts: [4, 8, 12, 16, 20, 24, 32, 40],
  },
};

const setup = trialSetup(trial);
const plan = trialPlan(setup);
const draws = randomDraws(seed);
const levels = players.map(() => playerSpread * draws.normal());

const rows = plan.sessions.flatMap(({ player, activity, order }) =>
  order.map((puck, place) => {
    const mean = pucks.reduce((sum, one) => sum + one.likings[activity], 0) / pucks.length;
    const liking = pucks[puck].likings[activity];
    const own = player === contrary ? 2 * mean - liking : liking;
    const drawn = Math.round(own + levels[player] + perPlace * place + spread * draws.normal());
    const isMissed = missed.some(([who, what]) => who === player && what === activity && place >= 2);
    const score = isMissed ? null : Math.min(setup.scale.highest, Math.max(setup.scale.lowest, drawn));
    return [players[player], setup.activities[activity].name, place + 1, setup.pucks[puck].code, score];
  }),
);

const scores = { data: { columns: ["player", "activity", "position", "code", "score"], rows } };
const { problems } = readScores(scores.data, setup, plan);
if (problems.length > 0) throw new Error(problems[0].message);

const document = {
  $schema: "./case.schema.json",
  wakewrightCase: 1,
  title: "Harbour League: a blind player trial of four pucks (invented scores)",
  note: "Invented: players, scores and drags are made up by a script with a fixed seed, to show what a trial looks like. Twelve players of the invented Harbour League score four pucks at three activities; two sessions broke off early and one player likes what the others do not. Cautions: a puck of 1.3 kg near heads, hands and feet injures; lead is toxic; pool rules and supervision come first. Nothing here proves a safe or permitted puck.",
  trial: { ...trial, scores },
};
writeFileSync(caseFile, `${JSON.stringify(document, null, 2)}\n`);
