import { pageState } from "../store/pageState";
import { loadedParts } from "../views/viewRegistry";

/** Undo and redo of the shown view by the usual keys, except where text is being typed: there they belong to the text. */
export function listenForShortcuts(): void {
  window.addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const [target] = event.composedPath();
    if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) return;
    const part = loadedParts.value[pageState.value.view];
    const key = event.key.toLowerCase();
    if (key === "z" && !event.shiftKey) part?.undo();
    else if (key === "y" || (key === "z" && event.shiftKey)) part?.redo();
    else return;
    event.preventDefault();
  });
}
