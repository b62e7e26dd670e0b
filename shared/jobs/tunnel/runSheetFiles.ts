import { problem, type Result, success } from "../../result";
import { runSheetCsv } from "./runSheetCsv";
import { type RunSheetHeading, runSheetHtml } from "./runSheetHtml";
import type { TunnelCase } from "./tunnelCase";
import type { TunnelResult } from "./tunnelResult";
import { runTunnel } from "./tunnelSteps";

/** What stands above the run sheet of a result. */
export function runSheetHeading(result: TunnelResult, title: string): RunSheetHeading {
  const { referenceLength, referenceLengthMetres, referenceArea, referenceAreaSquareMetres, similarity } = result;
  const millimetres = Number((1000 * referenceLengthMetres).toPrecision(4));
  const square = Number((1e4 * referenceAreaSquareMetres).toPrecision(4));
  const roughness = Number((1e6 * similarity.modelSandGrainRoughnessMetres).toPrecision(3));
  return {
    title,
    model: `${result.model}, roughness ${roughness} um`,
    facility: result.facility,
    reference: `Re on the ${referenceLength}, ${millimetres} mm; drag coefficient on the ${referenceArea}, ${square} cm2`,
  };
}

/** The run sheet of a tunnel test: a table to fill in and a page to print. */
export function runSheetFiles(
  theCase: TunnelCase,
  title: string,
): Result<readonly { readonly name: string; readonly content: string }[]> {
  const result = runTunnel({ ...theCase, runs: null, wake: null, taps: null });
  if (result.plan === null) return problem("plan", result.problems.join("; "));
  return success([
    { name: "run-sheet.csv", content: runSheetCsv(result.plan) },
    { name: "run-sheet.html", content: runSheetHtml(result.plan, runSheetHeading(result, title)) },
  ]);
}
