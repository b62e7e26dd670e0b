import * as z from "zod";
import { parseDocument } from "../../../shared/document/parseDocument";
import { placeScores } from "../../../shared/jobs/trial/placeScores";
import { resolveTrial, standardPower, standardSimulations, trialSetup } from "../../../shared/jobs/trial/resolveTrial";
import { type TrialBlockDocument, trialBlockDocument } from "../../../shared/jobs/trial/trialBlockDocument";
import { trialPlan } from "../../../shared/jobs/trial/trialPlan";
import { type DataTable, tableProblemText } from "../../../shared/tables/dataTable";
import { type CaseReading, caseTextOf } from "../view/caseText";
import { trialBlock } from "./trialBlock";
import { cellKey, newTrial, type ScoreCell, standardPowerInputs, type TrialInputs } from "./trialInputs";

/** The keys of a case file that a trial needs; what else the case has is other views' business. */
const trialCase = z.object({ title: z.string().max(200).optional(), trial: trialBlockDocument.optional() });

/** Reads the trial of a case file. Scores that are typed but no score are kept as they are; the view shows them so. */
export function readTrialCase(text: string): CaseReading<TrialInputs> {
  const parsed = parseDocument(text, trialCase);
  if (!parsed.ok) return parsed;
  const { title = newTrial.title, trial } = parsed.value;
  return trial === undefined ? { ok: true, value: { ...newTrial, title } } : trialInputs(title, trial);
}

function trialInputs(title: string, block: TrialBlockDocument): CaseReading<TrialInputs> {
  const { scores, ...setup } = block;
  const resolved = resolveTrial(setup);
  if (!resolved.ok) return resolved;
  const { pucks, scale } = trialSetup(block);
  const middle = (scale.lowest + scale.highest) / 2;
  const inputs: TrialInputs = {
    title,
    pucks: pucks.map(({ name, code }, i) => ({
      id: i + 1,
      name,
      code,
      drag: block.pucks[i].drag ?? null,
      expected: block.power?.meanScores[i] ?? middle,
    })),
    players: block.players.map((name, i) => ({ id: i + 1, name })),
    activities: block.activities.map(({ name, weight = 1, instruction = "" }, i) => ({
      id: i + 1,
      name,
      weight,
      instruction,
    })),
    scale,
    seed: block.seed,
    repeats: block.repeats ?? 1,
    isUnblinded: block.unblinded ?? false,
    dragMeaning: block.dragMeaning ?? "",
    analysis: block.analysis,
    power:
      block.power === undefined
        ? standardPowerInputs
        : {
            isWanted: true,
            spread: block.power.spread,
            playerSpread: block.power.playerSpread ?? 0,
            playerCounts: block.power.playerCounts,
            simulations: block.power.simulations ?? standardSimulations,
            wantedPower: block.power.wantedPower ?? standardPower,
          },
    cells: {},
  };
  if (scores === undefined) return { ok: true, value: inputs };
  const { data } = scores;
  if (typeof data === "string") {
    const field = "trial.scores.data";
    const message = `${field}: names the file "${data}", which the page cannot open; import it under Scores`;
    return { ok: false, problems: [{ code: "file", message, field }] };
  }
  const taken = cellsOf(data, inputs);
  return taken.problems.length > 0
    ? {
        ok: false,
        problems: taken.problems.map((message) => ({ code: "scores", message: `trial.scores.data: ${message}` })),
      }
    : { ok: true, value: { ...inputs, cells: taken.cells } };
}

export interface TakenCells {
  readonly cells: Readonly<Record<string, ScoreCell>>;
  /** Rows that have no place, in words. */
  readonly problems: readonly string[];
}

/** The cells of a table of scores, as typed. */
export function cellsOf(table: DataTable, inputs: TrialInputs): TakenCells {
  const setup = {
    pucks: inputs.pucks,
    players: inputs.players.map(({ name }) => name),
    activities: inputs.activities,
    scale: inputs.scale,
    seed: inputs.seed,
    repeats: inputs.repeats,
  };
  const { placed, problems } = placeScores(table, setup, trialPlan(setup));
  const cells = placed.flatMap(({ typed, position, comment, ...place }): [string, ScoreCell][] => {
    const shown = typed === null ? "" : String(typed);
    if (shown === "" && comment === null) return [];
    const key = cellKey({
      activity: inputs.activities[place.activity].id,
      repeat: place.repeat,
      player: inputs.players[place.player].id,
      puck: inputs.pucks[place.puck].id,
    });
    return [[key, { typed: shown, position, comment }]];
  });
  return { cells: Object.fromEntries(cells), problems: problems.map(tableProblemText) };
}

/** The inputs as a case file of their own. */
export function trialCaseText(inputs: TrialInputs): string {
  return caseTextOf(inputs.title, { trial: trialBlock(inputs) });
}
