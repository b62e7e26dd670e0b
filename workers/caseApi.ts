import type { CaseResults } from "../shared/case/caseResults";
import { type CaseStep, caseSteps } from "../shared/case/caseSteps";
import { caseToDesign, type DesignReading } from "../shared/case/caseToDesign";
import { readCase } from "../shared/case/readCase";
import type { PuckResult } from "../shared/jobs/puck/puckResult";
import type { Problem } from "../shared/result";
import { type ChoiceAnswer, type ChoiceStep, choosePucks } from "./choiceWork";
import { holdLifeline, type Lifeline } from "./lifeline";
import { runSteps } from "./runSteps";

/** A case that ran to its end, or why its file cannot be used. */
export type CaseAnswer =
  | { readonly ok: true; readonly value: CaseResults }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * What the worker of case files does for the page. Apart from the live solver, which would otherwise load everything
 * that a case may hold before it can draw. Arguments and answers are plain data; failures are values.
 */
export interface CaseApi extends Lifeline {
  /** The design to start from when a case file is opened, or a message for each fault of the file. */
  readDesign(text: string, fileName: string): Promise<DesignReading>;
  /**
   * Runs a case file step by step.
   * @param onStep  called after every step; its promise is awaited, so a worker that is ended stops between steps
   */
  runCase(text: string, fileName: string, onStep: (step: CaseStep) => Promise<void>): Promise<CaseAnswer>;
  /** Durability, cost and choice of a case whose pucks are solved already. */
  choosePucks(
    text: string,
    fileName: string,
    pucks: readonly PuckResult[],
    onStep: (step: ChoiceStep) => Promise<void>,
  ): Promise<ChoiceAnswer>;
}

export function createCaseRunner(): CaseApi {
  return {
    holdLifeline,
    choosePucks,
    async readDesign(text, fileName) {
      return caseToDesign(text, fileName);
    },
    async runCase(text, fileName, onStep) {
      const reading = readCase(text, fileName);
      if (!reading.ok) return { ok: false, problems: reading.problems };
      return { ok: true, value: await runSteps(caseSteps(reading.value), onStep) };
    },
  };
}
