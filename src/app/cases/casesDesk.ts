import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { Problem } from "../../../shared/result";
import { followOtherTabs, type KeptNews } from "../files/otherTabs";
import { recentCases, removeSavedCase, saveCase, savedCases } from "../files/storage";
import type { StoredCase } from "../files/storedCase";
import { tell } from "../store/notices";
import { openedCase } from "../store/openedCase";
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
  /** Why the lists are not whole; empty when they are. */
  unread = "";
  problems: readonly Problem[] = [];
  chosen: readonly ViewName[] = [];

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    followOtherTabs((news) => this.#hear(news));
  }

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
    const saved = await saveCase(stored);
    if (saved.ok) {
      const before = saved.value === null ? "" : ` It replaces the one of ${new Date(saved.value).toLocaleString()}.`;
      this.#show({ said: `Saved in this browser as ${stored.fileName}.${before}` });
      rememberOpened(stored.fileName, stored.text);
    } else {
      this.#show({ said: "Not saved." });
    }
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
    const failed = [saved, recent].find(({ ok }) => !ok);
    const unreadable = [saved, recent].reduce((sum, one) => sum + (one.ok ? one.value.unreadable : 0), 0);
    const damaged =
      unreadable === 0 ? "" : `${unreadable} kept cases cannot be read by this version of the page; they stay kept.`;
    this.#show({
      ...(saved.ok ? { saved: saved.value.cases } : {}),
      ...(recent.ok ? { recent: recent.value.cases } : {}),
      unread: failed?.ok === false ? failed.problem.message : damaged,
    });
  }

  /** What another tab has done with the kept cases; of one case the last change counts. */
  #hear(news: KeptNews): void {
    if (news.kind === "text") {
      tell(
        "news",
        "This page is at work in another tab as well: after a reload, a view shows what was changed last in either. Save a case to keep both.",
      );
      return;
    }
    if (openedCase.value?.fileName === news.fileName) {
      const what = news.kind === "saved" ? "saved" : "removed";
      tell("warning", `${news.fileName} was ${what} in another tab. Saving it here replaces what is kept there.`);
    }
    void this.#readLists();
  }

  #show(
    change: Partial<Pick<CasesDesk, "saved" | "recent" | "unread" | "link" | "said" | "problems" | "chosen">>,
  ): void {
    Object.assign(this, change);
    this.#host.requestUpdate();
  }
}
