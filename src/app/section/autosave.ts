import { keepChanges } from "../files/keepChanges";
import { preferences } from "../store/preferences";
import { sectionScreenText } from "./sectionScreen";
import { sectionTools } from "./sectionStores";
import { workbench } from "./workbench";

/** The name under which the browser keeps the section view. */
export const keptSection = "section";

/** Keeps the section view in the browser shortly after every change. */
export function startAutosave(): void {
  keepChanges({
    name: keptSection,
    text: sectionScreenText,
    // The first screen may come from a link or a demo, which the browser does not have.
    keptText: "",
    follow: (changed) => {
      workbench.subscribe(changed);
      preferences.subscribe(changed);
      sectionTools.subscribe(changed);
    },
  });
}
