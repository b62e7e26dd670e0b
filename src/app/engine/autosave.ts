import { keepText } from "../files/storage";
import { preferences } from "../store/preferences";
import { sectionTools } from "../store/sectionTools";
import { workbench } from "../store/workbench";
import { sectionScreenText } from "./sectionScreen";

const calmMilliseconds = 600;

/** The name under which the browser keeps the section view. */
export const keptSection = "section";

/** Keeps the section view in the browser shortly after every change, until the browser refuses once. */
export function startAutosave(): void {
  let timer: ReturnType<typeof setTimeout> | null = null;
  let lastText = "";
  let refused = false;
  const save = async () => {
    timer = null;
    const text = sectionScreenText();
    if (refused || text === lastText) return;
    lastText = text;
    refused = !(await keepText(keptSection, text));
  };
  const soon = () => {
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => void save(), calmMilliseconds);
  };
  workbench.subscribe(soon);
  preferences.subscribe(soon);
  sectionTools.subscribe(soon);
  addEventListener("pagehide", () => void save());
}
