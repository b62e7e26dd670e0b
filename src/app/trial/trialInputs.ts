import { standardSimulations } from "../../../shared/jobs/trial/resolveTrial";
import type { TrialBlockDocument } from "../../../shared/jobs/trial/trialBlockDocument";
import type { ScoreScale } from "../../../shared/jobs/trial/trialSetup";

/** What the view works on, the part of a case file that is its own. Plain data; ids stay with what is renamed. */
export interface TrialInputs {
  readonly title: string;
  readonly pucks: readonly TrialPuckInputs[];
  readonly players: readonly { readonly id: number; readonly name: string }[];
  readonly activities: readonly ActivityInputs[];
  readonly scale: ScoreScale;
  readonly seed: number;
  readonly repeats: number;
  readonly isUnblinded: boolean;
  /** Empty: the drags are those of the puck results of the same case. */
  readonly dragMeaning: string;
  readonly power: PowerInputs;
  /** As the case gives it. */
  readonly analysis: TrialBlockDocument["analysis"];
  /** What was typed, by `cellKey`; empty cells are left out. */
  readonly cells: Readonly<Record<string, ScoreCell>>;
}

export interface TrialPuckInputs {
  readonly id: number;
  readonly name: string;
  readonly code: string;
  readonly drag: number | null;
  /** Mean score that the study of power assumes. */
  readonly expected: number;
}

export interface ActivityInputs {
  readonly id: number;
  readonly name: string;
  readonly weight: number;
  readonly instruction: string;
}

/** What the study of power assumes besides the pucks' mean scores. */
export interface PowerInputs {
  readonly isWanted: boolean;
  readonly spread: number;
  readonly playerSpread: number;
  readonly playerCounts: readonly number[];
  readonly simulations: number;
  readonly wantedPower: number;
}

/** A score as it was typed, right or wrong, so that nothing is lost. */
export interface ScoreCell {
  readonly typed: string;
  /** Noted place in the session, 1 for the first; null for the planned one. */
  readonly position: number | null;
  readonly comment: string | null;
}

export interface CellPlace {
  readonly activity: number;
  readonly repeat: number;
  readonly player: number;
  readonly puck: number;
}

/** Of ids. */
export function cellKey({ activity, repeat, player, puck }: CellPlace): string {
  return `${activity}.${repeat}.${player}.${puck}`;
}

/** An id that none of a list has. */
export function freeId(list: readonly { readonly id: number }[]): number {
  return 1 + list.reduce((most, { id }) => Math.max(most, id), 0);
}

export const standardPowerInputs: PowerInputs = {
  isWanted: false,
  spread: 1.5,
  playerSpread: 1,
  playerCounts: [4, 8, 12, 16, 20, 24, 32, 40],
  simulations: standardSimulations,
  wantedPower: 0.8,
};

/** The start, before anything is brought back or opened: two pucks and two players, nothing scored. */
export const newTrial: TrialInputs = {
  title: "Player trial",
  pucks: [
    { id: 1, name: "Puck A", code: "384", drag: null, expected: 5 },
    { id: 2, name: "Puck B", code: "592", drag: null, expected: 6 },
  ],
  players: Array.from({ length: 8 }, (_, i) => ({ id: i + 1, name: `P${String(i + 1).padStart(2, "0")}` })),
  activities: [{ id: 1, name: "Passing", weight: 1, instruction: "" }],
  scale: {
    lowest: 1,
    highest: 9,
    step: 1,
    question: "How well did this puck play?",
    lowestMeans: "unusable",
    highestMeans: "could not be better",
    isHigherBetter: true,
  },
  seed: 1,
  repeats: 1,
  isUnblinded: false,
  dragMeaning: "",
  power: standardPowerInputs,
  analysis: undefined,
  cells: {},
};
