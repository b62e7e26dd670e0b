import type { PuckFigures } from "../../../shared/jobs/puck/body/puckFigures";
import type { PuckSpec } from "../../../shared/jobs/puck/body/puckSpec";
import type { PuckJudgement } from "../../../shared/jobs/puck/rules/judgePuck";
import type { CrisisZone } from "../section/crisisZone";
import type { PuckInputs, PuckMake } from "./puckInputs";

/** A puck against the baseline, over common draws. */
export interface BoardComparison {
  /** 100 (own / baseline's - 1): 5 %, mean, 95 %. */
  readonly change: { readonly low: number; readonly expected: number; readonly high: number };
  readonly probabilityLess: number;
  readonly decided: "less" | "more" | "not decided";
}

/** What was worked out of a puck beside the others. */
export interface StudiedPuck {
  /** null of the baseline, and where the two cannot be compared. */
  readonly comparison: BoardComparison | null;
  /** Probability of the least drag of all; null where fewer than three are compared. */
  readonly probabilityBest: number | null;
  /** Crises edge-on, of the profile and of the plan section; null without one. */
  readonly profileCrisis: CrisisZone | null;
  readonly planCrisis: CrisisZone | null;
}

/** What a puck of the board is to the person. */
export type BoardRole = "baseline" | "candidate" | "pin";

/** One puck of the board with all that is known of it. */
export interface BoardRow {
  /** Of the pin; null of candidate and baseline. */
  readonly id: number | null;
  readonly role: BoardRole;
  /** Place in the order of colours: candidate 0, baseline 1, then the pins. */
  readonly styleIndex: number;
  readonly make: PuckMake;
  readonly spec: PuckSpec;
  /** null of a puck that cannot be made. */
  readonly figures: PuckFigures | null;
  /** null while it is judged, and without rules. */
  readonly judgement: PuckJudgement | null;
  /** null while it is studied. */
  readonly study: StudiedPuck | null;
}

/** A study with the inputs and pins that it belongs to. */
export interface KnownBoard {
  readonly inputs: PuckInputs;
  /** By the puck's name, both. */
  readonly studies: Readonly<Record<string, StudiedPuck>>;
  readonly judgements: Readonly<Record<string, PuckJudgement>>;
}

/** What the rows can be sorted by. */
export const boardColumns = {
  name: "Puck",
  mass: "Mass",
  inertia: "Inertia",
  edgeOn: "Edge-on",
  faceOn: "Face-on",
  margin: "Crisis",
  drag: "Drag",
  best: "Best",
} as const;

export type BoardColumn = keyof typeof boardColumns;

/** The rows by a column, rising; the baseline stays on top, as what the others are held against. */
export function sortedBoard(rows: readonly BoardRow[], column: BoardColumn, speed: number): BoardRow[] {
  const value = ({ spec, figures, study }: BoardRow): number | string => {
    const last = Number.POSITIVE_INFINITY;
    switch (column) {
      case "name":
        return spec.name;
      case "mass":
        return figures?.massKilograms ?? last;
      case "inertia":
        return figures?.momentOfInertiaAxisKilogramSquareMetres ?? last;
      case "edgeOn":
        return figures?.frontalAreaEdgeOnSquareMetres ?? last;
      case "faceOn":
        return figures?.frontalAreaFaceOnSquareMetres ?? last;
      case "margin":
        return study?.profileCrisis == null ? last : study.profileCrisis.high - speed;
      case "drag":
        return study?.comparison?.change.expected ?? last;
      case "best":
        return -(study?.probabilityBest ?? 0);
    }
  };
  const order = (a: BoardRow, b: BoardRow) => {
    if ((a.role === "baseline") !== (b.role === "baseline")) return a.role === "baseline" ? -1 : 1;
    const [one, other] = [value(a), value(b)];
    return typeof one === "string" || typeof other === "string"
      ? String(one).localeCompare(String(other))
      : one - other;
  };
  return [...rows].sort(order);
}
