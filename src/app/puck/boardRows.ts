import { puckFigures } from "../../../shared/jobs/puck/body/puckFigures";
import type { PuckAnswers } from "./puckAnswers";
import type { BoardRow } from "./puckBoard";
import type { PuckInputs, PuckMake } from "./puckInputs";

/** Baseline, candidate and pins as the board shows them. */
export function boardRows(inputs: PuckInputs, { pins, measured, board }: PuckAnswers): BoardRow[] {
  const row = (make: PuckMake, role: BoardRow["role"], styleIndex: number, id: number | null): BoardRow => {
    const figures = measured === null ? null : puckFigures(make.spec, measured.setting);
    return {
      id,
      role,
      styleIndex,
      make,
      spec: make.spec,
      figures: figures?.ok ? figures.value : null,
      judgement: board?.judgements[make.spec.name] ?? null,
      study: board?.studies[make.spec.name] ?? null,
    };
  };
  return [
    row(inputs.baseline, "baseline", 1, null),
    row(inputs.candidate, "candidate", 0, null),
    ...pins.map(({ id, make }, i) => row(make, "pin", i + 2, id)),
  ];
}
