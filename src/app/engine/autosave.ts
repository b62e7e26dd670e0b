import { keepAutosave } from "../files/storage";
import { preferences } from "../store/preferences";
import { workbench } from "../store/workbench";
import { screenContent } from "./screenContent";

const calmMilliseconds = 600;

/** Keeps the screen in the browser shortly after every change, until the browser refuses once. */
export function startAutosave(): void {
  let timer: ReturnType<typeof setTimeout> | null = null;
  let lastText = "";
  let refused = false;
  const save = async () => {
    timer = null;
    const content = screenContent();
    const text = JSON.stringify(content);
    if (refused || text === lastText) return;
    lastText = text;
    refused = !(await keepAutosave(content));
  };
  const soon = () => {
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => void save(), calmMilliseconds);
  };
  workbench.subscribe(soon);
  preferences.subscribe(soon);
  addEventListener("pagehide", () => void save());
}
