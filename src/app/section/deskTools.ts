import { Notifier } from "../store/notifier";

/** The parts below the picture, one of which is open. */
export const detailNames = {
  pressure: "Pressure",
  separation: "Separation over roughness",
  layer: "Layer",
  shedding: "Shedding",
  drag: "Drag curve with table",
  sweep: "Sweep",
  numbers: "Numbers",
  compare: "Compare",
} as const;

export type DetailName = keyof typeof detailNames;

/** How a person has arranged the desk: kept in the browser, no part of a design. */
export interface DeskTools {
  /** The detail that is open; null when all are closed. */
  readonly detail: DetailName | null;
  /** Groups of inputs that are open. */
  readonly openGroups: readonly string[];
  /** The input whose ribbon is shown; the last one touched. */
  readonly ribbonKey: string;
}

const storageKey = "wakewright-desk";
const standard: DeskTools = { detail: null, openGroups: ["shape"], ribbonKey: "edgeRadius" };

export const deskTools = new Notifier<DeskTools>(readStored());

/** Keeps every later change. Blocked storage only means that the arrangement lasts for this visit. */
export function keepDeskTools(): void {
  deskTools.subscribe((value) => {
    try {
      localStorage.setItem(storageKey, JSON.stringify(value));
    } catch {
      // An arrangement is not worth a message.
    }
  });
}

function readStored(): DeskTools {
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(storageKey) ?? "null");
    if (typeof stored !== "object" || stored === null) return standard;
    const { detail, openGroups, ribbonKey } = stored as Partial<Record<keyof DeskTools, unknown>>;
    return {
      detail: typeof detail === "string" && Object.hasOwn(detailNames, detail) ? (detail as DetailName) : null,
      openGroups: Array.isArray(openGroups) ? openGroups.filter((one) => typeof one === "string") : standard.openGroups,
      ribbonKey: typeof ribbonKey === "string" ? ribbonKey : standard.ribbonKey,
    };
  } catch {
    return standard;
  }
}
