import { redoDesign, undoDesign } from "../store/workbench";

/** Undo and redo by the usual keys, except where text is being typed: there they belong to the text. */
export function listenForShortcuts(): void {
  window.addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const [target] = event.composedPath();
    if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) return;
    const key = event.key.toLowerCase();
    if (key === "z" && !event.shiftKey) undoDesign();
    else if (key === "y" || (key === "z" && event.shiftKey)) redoDesign();
    else return;
    event.preventDefault();
  });
}
