import type { Problem } from "../../../shared/result";
import { loadDemoCase } from "../files/demoCases";
import { keepChanges } from "../files/keepChanges";
import { readKeptText } from "../files/storage";
import type { Bench, BenchState } from "./bench";
import type { CaseReading } from "./caseText";
import type { ViewPart } from "./viewPart";

/** What is a view's own; all views do the rest alike. */
export interface ViewRecord<Inputs extends { readonly title: string }, State extends BenchState<Inputs>, Content> {
  readonly bench: Bench<Inputs, State>;
  /** Reads the view's keys of a case file, which may be hostile. */
  readonly read: (text: string, fileName: string) => CaseReading<Content> | Promise<CaseReading<Content>>;
  /** Shows what was read, as one step of the history. */
  readonly show: (content: Content, fileName: string) => void | Promise<void>;
  /** The view's keys of a case file from what it works on now. */
  readonly caseKeys: () => Readonly<Record<string, unknown>>;
  /** The view's screen as text: a case file of its own unless `showScreen` says otherwise. */
  readonly screenText: () => string;
  readonly showScreen?: ViewPart["showScreen"];
  /** How the browser keeps the view; null when it is kept elsewhere. */
  readonly kept: {
    readonly name: string;
    /** File name of the demo case that a first visit shows. */
    readonly demo: string;
    /** Shows the demo case; by opening it when left out. */
    readonly openDemo?: (text: string) => readonly Problem[];
    /** What the view starts with where neither a kept text nor the demo can be had. */
    readonly otherwise?: () => Promise<void>;
    /** Calls back after changes that alter the text; those of the inputs when left out. */
    readonly follow?: (changed: () => void) => void;
    /** Brings back what else the view keeps. */
    readonly more?: () => Promise<void>;
  } | null;
}

/** A view as its element and the page know it. */
export interface View {
  readonly part: ViewPart;
  /** Shows the demo case. Rejects when it cannot be loaded. @returns what is wrong with it */
  readonly openDemo: (fileName?: string) => Promise<readonly Problem[]>;
  /** Brings back what this browser kept, else the demo; then keeps every change shortly after it. */
  readonly startKeeping: () => Promise<void>;
}

/** A view from its record. */
export function defineView<Inputs extends { readonly title: string }, State extends BenchState<Inputs>, Content>(
  record: ViewRecord<Inputs, State, Content>,
): View {
  const { bench, kept, screenText } = record;

  const openCase = async (fileName: string, text: string): Promise<readonly Problem[]> => {
    const reading = await record.read(text, fileName);
    if (!reading.ok) return reading.problems;
    await record.show(reading.value, fileName);
    return [];
  };

  const openDemo = async (fileName = kept?.demo ?? ""): Promise<readonly Problem[]> => {
    const text = await loadDemoCase(fileName);
    return kept?.openDemo === undefined ? openCase(fileName, text) : kept.openDemo(text);
  };

  const bringBack = async (name: string): Promise<void> => {
    // A case that was opened before the view was first shown is newer than anything kept.
    if (!bench.isUntouched) return;
    const text = await readKeptText(name);
    if (text !== null && (await openCase("the autosave", text)).length === 0) return;
    try {
      if ((await openDemo()).length === 0) return;
    } catch {
      // The page was built without this demo case: the view's own start stays.
    }
    await kept?.otherwise?.();
  };

  let keeping: Promise<void> | null = null;
  const startKeeping = async (): Promise<void> => {
    if (kept === null) return;
    const { name, more, follow = (changed: () => void) => bench.followInputs(changed) } = kept;
    await Promise.all([bringBack(name), more?.()]);
    keepChanges({ name, text: screenText, keptText: screenText(), follow });
  };

  return {
    part: {
      look: () => {
        const { past, present, future } = bench.value.history;
        return { title: present.title, canUndo: past.length > 0, canRedo: future.length > 0 };
      },
      subscribe: (listener) => bench.subscribe(listener),
      undo: () => bench.undo(),
      redo: () => bench.redo(),
      rename: (title) => bench.change({ title } as Partial<Inputs>),
      caseKeys: record.caseKeys,
      openCase,
      screenText,
      showScreen:
        record.showScreen ?? (async (text, from) => (await openCase(from, text)).map(({ message }) => message)),
    },
    openDemo,
    startKeeping: () => {
      keeping ??= startKeeping();
      return keeping;
    },
  };
}
