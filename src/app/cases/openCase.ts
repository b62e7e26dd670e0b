import { largestCaseBytes } from "../../../shared/document/limits";
import type { Problem } from "../../../shared/result";
import { rememberRecent } from "../files/storage";
import { noCase } from "../section/caseRun";
import { cancelCase, runCaseFile } from "../section/caseRunning";
import { caseRun } from "../section/sectionStores";
import { tell } from "../store/notices";
import { pageState } from "../store/pageState";
import { type ViewName, viewTexts } from "../store/viewNames";
import { loadPart, viewsOf } from "../views/viewRegistry";
import { caseObject, rememberOpened } from "./savedCase";

/**
 * Opens a case file: every view that the file has keys for shows them, and a case opened in the section view
 * is run. The view stays when the file has something for it; otherwise the first view of the file comes up.
 * @param isUnasked true when nobody chose the file: whichever view a person has gone to then stays
 * @returns what is wrong with the file; empty when the view that is shown then could open it
 */
export async function openCase(fileName: string, text: string, isUnasked = false): Promise<readonly Problem[]> {
  cancelCase();
  if (text.length > largestCaseBytes) {
    const message = `${fileName} has ${text.length} characters; a case file must have at most ${largestCaseBytes}.`;
    return [{ code: "size", message }];
  }
  const document = caseObject(text);
  const held = document === null ? [] : viewsOf(document);
  const { view } = pageState.value;
  // A puck is made of sections: the section view can show them. A file that no view knows is read there for its messages.
  const isSectionToo = held.includes("section") || (held.includes("puck") && view === "section") || held.length === 0;
  const views: readonly ViewName[] = isSectionToo && !held.includes("section") ? ["section", ...held] : held;
  const shown = isUnasked || views.includes(view) ? view : (held[0] ?? "section");
  const refusals = await Promise.all(
    views.map(async (one) => ({ view: one, problems: await openIn(one, fileName, text) })),
  );
  const own = refusals.find((one) => one.view === shown)?.problems ?? [];
  if (own.length > 0) return own;
  for (const { view: other, problems } of refusals) {
    if (problems.length > 0) {
      tell("warning", `The view ${viewTexts[other]} could not open its part of ${fileName}: ${problems[0].message}`);
    }
  }
  rememberOpened(fileName, text);
  const title = typeof document?.title === "string" ? document.title : fileName;
  void rememberRecent({ fileName, title, text, at: Date.now() });
  // Solving a case takes long: from another view it waits until a person asks for it.
  if (isSectionToo && shown === "section") void runCaseFile(fileName, title, text);
  else if (isSectionToo) caseRun.value = { ...noCase, fileName, title, text };
  // Whoever has gone to another view meanwhile stays there.
  if (pageState.value.view === view) pageState.patch({ view: shown });
  return [];
}

async function openIn(view: ViewName, fileName: string, text: string): Promise<readonly Problem[]> {
  try {
    return await (await loadPart(view)).openCase(fileName, text);
  } catch {
    return [{ code: "load", message: `The view ${viewTexts[view]} could not be loaded.` }];
  }
}
