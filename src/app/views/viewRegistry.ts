import { sectionView } from "../section/sectionView";
import { Notifier } from "../store/notifier";
import { type ViewName, viewNames } from "../store/viewNames";
import type { ViewPart } from "../view/viewPart";

/** A view whose program is loaded when it is first asked for. */
interface LaterPart {
  /** Top-level keys of the case file that only this view reads; a case file with one of them loads the part. */
  readonly ownKeys: readonly string[];
  readonly load: () => Promise<ViewPart>;
}

const laterParts: Readonly<Record<Exclude<ViewName, "section">, LaterPart>> = {
  puck: {
    ownKeys: ["puck", "durability", "cost", "choice"],
    load: async () => (await import("../puck/puckView")).puckView.part,
  },
  tunnel: { ownKeys: ["tunnel"], load: async () => (await import("../tunnel/tunnelView")).tunnelView.part },
  trial: { ownKeys: ["trial"], load: async () => (await import("../trial/trialView")).trialView.part },
  compare: { ownKeys: ["measurements"], load: async () => (await import("../compare/compareView")).compareView.part },
};

/** Top-level keys of the case file that only this view reads. */
export function ownKeys(view: ViewName): readonly string[] {
  return view === "section" ? ["sections"] : laterParts[view].ownKeys;
}

/** The views whose keys a case file has, in the order of the buttons. */
export function viewsOf(document: Readonly<Record<string, unknown>>): ViewName[] {
  return viewNames.filter((view) => ownKeys(view).some((key) => Object.hasOwn(document, key)));
}

/** The parts that are loaded, by the view's name. */
export const loadedParts = new Notifier<Readonly<Partial<Record<ViewName, ViewPart>>>>({ section: sectionView.part });

/** A view's part, loaded if it is not yet. Rejects when its program cannot be loaded. */
export async function loadPart(view: ViewName): Promise<ViewPart> {
  const part = loadedParts.value[view] ?? (view === "section" ? sectionView.part : await laterParts[view].load());
  if (loadedParts.value[view] === undefined) loadedParts.patch({ [view]: part });
  return part;
}
