import type { Result } from "../../../shared/result";
import { type ScreenContent, screenHash } from "../files/screenLink";
import { pageState } from "../store/pageState";
import { type ViewName, viewNames, viewTexts } from "../store/viewNames";
import { loadedParts, loadPart } from "../views/viewRegistry";

/** A link's hash for the screen as it is: every view that was opened is in it, or the shown one alone when they are too much. */
export async function presentScreenHash(): Promise<Result<string>> {
  const { view } = pageState.value;
  await loadPart(view);
  const whole = await screenHash(screenContent(viewNames));
  return whole.ok ? whole : screenHash(screenContent([view]));
}

function screenContent(views: readonly ViewName[]): ScreenContent {
  const parts = loadedParts.value;
  const texts = views.flatMap((view) => {
    const part = parts[view];
    return part === undefined ? [] : [[view, part.screenText()] as const];
  });
  return { version: 1, view: pageState.value.view, parts: Object.fromEntries(texts) };
}

/** Puts a screen back. @returns what could not be read; empty when all was */
export async function showScreen({ view, parts }: ScreenContent, from: string): Promise<readonly string[]> {
  const faults: string[] = [];
  const before = pageState.value.view;
  for (const name of viewNames) {
    const text = parts[name];
    if (text === undefined) continue;
    try {
      faults.push(...(await (await loadPart(name)).showScreen(text, from)));
    } catch {
      faults.push(`the view ${viewTexts[name]} could not be loaded`);
    }
  }
  // Whoever has gone to another view meanwhile stays there.
  if (pageState.value.view === before) pageState.patch({ view });
  return faults;
}
