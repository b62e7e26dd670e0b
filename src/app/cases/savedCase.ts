import { designToCase } from "../../../shared/case/designToCase";
import { parseJson } from "../../../shared/document/parseJson";
import { caseFileName } from "../files/caseText";
import { type CaseObject, type CasePart, mergedCase } from "../files/mergedCase";
import { saveFile } from "../files/saveFile";
import type { StoredCase } from "../files/storedCase";
import { sectionView } from "../section/sectionView";
import { workbench } from "../section/workbench";
import { openedCase } from "../store/openedCase";
import { pageState } from "../store/pageState";
import type { ViewName } from "../store/viewNames";
import { loadedParts, ownKeys, viewsOf } from "../views/viewRegistry";

/** A JSON object, or null for any other text. */
export function caseObject(text: string): CaseObject | null {
  const json = parseJson(text);
  if (!json.ok || typeof json.value !== "object" || json.value === null || Array.isArray(json.value)) return null;
  return json.value as CaseObject;
}

/** Remembers a file that was opened or saved, so that a later save keeps what no view changes. */
export function rememberOpened(fileName: string, text: string): void {
  const document = caseObject(text);
  if (document === null) return;
  const parts = loadedParts.value;
  const asOpened: Partial<Record<ViewName, string>> = {};
  for (const view of viewsOf(document)) {
    const part = parts[view];
    if (part !== undefined) asOpened[view] = keysText(part.caseKeys());
  }
  openedCase.value = { fileName, text, asOpened };
}

/** The views that a save writes unless the person chooses others: all of the opened case, or the shown one alone. */
export function viewsToSave(): ViewName[] {
  const { view } = pageState.value;
  const document = openedCase.value === null ? null : caseObject(openedCase.value.text);
  const views = document === null ? [] : viewsOf(document);
  return views.includes(view) ? views : [view];
}

/** The chosen views' work as one case file; what was not changed since a case was opened is written as it was. */
export function caseToSave(views: readonly ViewName[]): StoredCase {
  const shown = pageState.value.view;
  const title = (loadedParts.value[shown] ?? sectionView.part).look().title;
  const content = mergedCase({
    opened: openedDocument(shown, views),
    title,
    parts: views.flatMap(casePart),
    section: designToCase(workbench.present),
    shown,
  });
  return { fileName: caseFileName(title), title, text: `${JSON.stringify(content, null, 2)}\n`, at: Date.now() };
}

/** Hands the views' work to the browser as a case file. @returns its name */
export function saveShownCase(views: readonly ViewName[] = viewsToSave()): string {
  const { fileName, text } = caseToSave(views);
  saveFile(fileName, "application/json", text);
  rememberOpened(fileName, text);
  return fileName;
}

/** The opened file, when one of the chosen views has keys in it; otherwise the case is a new one. */
function openedDocument(shown: ViewName, views: readonly ViewName[]): CaseObject | null {
  const document = openedCase.value === null ? null : caseObject(openedCase.value.text);
  if (document === null) return null;
  const held = viewsOf(document);
  if (!held.includes(shown)) return null;
  // A view of the file that the person leaves out takes its keys along.
  const leftOut = held.filter((view) => !views.includes(view)).flatMap(ownKeys);
  return Object.fromEntries(Object.entries(document).filter(([key]) => !leftOut.includes(key)));
}

function casePart(view: ViewName): CasePart[] {
  const part = loadedParts.value[view];
  if (part === undefined) return [{ view, keys: null }];
  const keys = part.caseKeys();
  return [{ view, keys: openedCase.value?.asOpened[view] === keysText(keys) ? null : keys }];
}

function keysText(keys: CaseObject): string {
  return JSON.stringify(keys);
}
