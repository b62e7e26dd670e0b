import type { TrialResult } from "../../../shared/jobs/trial/trialResult";

/** How a puck is called: by its code while the trial is blind, then by code and name. */
export function puckLabel({ pucks }: Pick<TrialResult, "pucks">, code: string): string {
  const name = pucks.find((puck) => puck.code === code)?.name ?? null;
  return name === null ? code : `${code} ${name}`;
}

/** What a ranking is of. */
export function rankingTitle(activity: string | null): string {
  return activity ?? "Overall";
}
