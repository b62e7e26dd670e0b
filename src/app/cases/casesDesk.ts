import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { Problem } from "../../../shared/result";
import { recentCases, removeSavedCase, saveCase, savedCases } from "../files/storage";
import type { StoredCase } from "../files/storedCase";
import { closeDialog } from "../store/pageState";
import { type ViewName, viewNames } from "../store/viewNames";
import { loadedParts } from "../views/viewRegistry";
import { openCase } from "./openCase";
import { caseToSave, rememberOpened, saveShownCase, viewsToSave } from "./savedCase";
import { presentScreenHash } from "./screenContent";

/** What the dialog of cases shows and does: saving, links, and what was saved or opened before. */
export class CasesDesk implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  saved: readonly StoredCase[] = [];
  recent: readonly StoredCase[] = [];
  link = "";
  said = "";
  problems: readonly Problem[] = [];
  chosen: readonly ViewName[] = [];

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {}

  /** Views that can be in the case. */
  get offered(): readonly ViewName[] {
    return viewNames.filter((view) => loadedParts.value[view] !== undefined || this.chosen.includes(view));
  }

  /** Called when the dialog is opened: the lists are read anew. */
  open(): void {
    this.#show({ link: "", said: "", problems: [], chosen: viewsToSave() });
    void this.#readLists();
  }

  /** The order is that of the buttons. */
  choose(view: ViewName, isChosen: boolean): void {
    this.#show({ chosen: viewNames.filter((one) => (one === view ? isChosen : this.chosen.includes(one))) });
  }

  async save(where: "browser" | "file" | "link"): Promise<void> {
    if (where === "link") return this.#makeLink();
    if (where === "file") {
      this.#show({ said: `${saveShownCase(this.chosen)} was handed to the browser as a download.` });
      return;
    }
    const stored = caseToSave(this.chosen);
    const isKept = await saveCase(stored);
    this.#show({ said: isKept ? `Saved in this browser as ${stored.fileName}.` : "Not saved." });
    if (isKept) rememberOpened(stored.fileName, stored.text);
    await this.#readLists();
  }

  async reopen({ fileName, text }: StoredCase): Promise<void> {
    const problems = await openCase(fileName, text);
    this.#show({ problems });
    if (problems.length === 0) closeDialog();
  }

  async forget({ fileName }: StoredCase): Promise<void> {
    await removeSavedCase(fileName);
    await this.#readLists();
  }

  async #makeLink(): Promise<void> {
    const hash = await presentScreenHash();
    if (!hash.ok) {
      this.#show({ said: hash.problem.message });
      return;
    }
    this.#show({ link: `${location.origin}${location.pathname}${hash.value}` });
    history.replaceState(null, "", hash.value);
    try {
      await navigator.clipboard.writeText(this.link);
      this.#show({ said: "The link is in the clipboard and in the address bar." });
    } catch {
      this.#show({ said: "The link is in the address bar and below." });
    }
  }

  async #readLists(): Promise<void> {
    const [saved, recent] = await Promise.all([savedCases(), recentCases()]);
    this.#show({ saved, recent });
  }

  #show(change: Partial<Pick<CasesDesk, "saved" | "recent" | "link" | "said" | "problems" | "chosen">>): void {
    Object.assign(this, change);
    this.#host.requestUpdate();
  }
}
