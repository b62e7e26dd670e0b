import type { QuantityKind, UnitPreferences } from "../units/units";
import { Notifier } from "./notifier";

export type ThemeChoice = "system" | "light" | "dark";

/** How this person likes the page; kept in the browser, no part of a design. */
export interface Preferences {
  readonly units: UnitPreferences;
  readonly theme: ThemeChoice;
  readonly positionMeasure: "angle" | "arc";
  readonly guideSeen: boolean;
}

const storageKey = "wakewright-preferences";
const standard: Preferences = { units: {}, theme: "system", positionMeasure: "angle", guideSeen: false };

export const preferences = new Notifier<Preferences>(readStored());

/** Keeps every later change. Blocked storage only means that the choice lasts for this visit. */
export function keepPreferences(): void {
  preferences.subscribe((value) => {
    try {
      localStorage.setItem(storageKey, JSON.stringify(value));
    } catch {
      // A person's taste is not worth a message.
    }
  });
}

/** Takes the units that are chosen at the fields of the page. */
export function followUnits(page: EventTarget): void {
  page.addEventListener("unit-change", (event) => {
    const { kind, unit } = (event as CustomEvent<{ readonly kind: QuantityKind; readonly unit: string }>).detail;
    preferences.patch({ units: { ...preferences.value.units, [kind]: unit } });
  });
}

function readStored(): Preferences {
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(storageKey) ?? "null");
    return typeof stored === "object" && stored !== null ? checked(stored) : standard;
  } catch {
    return standard;
  }
}

function checked(stored: Partial<Record<keyof Preferences, unknown>>): Preferences {
  const units = typeof stored.units === "object" && stored.units !== null ? Object.entries(stored.units) : [];
  return {
    units: Object.fromEntries(units.filter(([, unit]) => typeof unit === "string")),
    theme: stored.theme === "light" || stored.theme === "dark" ? stored.theme : "system",
    positionMeasure: stored.positionMeasure === "arc" ? "arc" : "angle",
    guideSeen: stored.guideSeen === true,
  };
}
