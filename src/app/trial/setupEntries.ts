import { mostRepeats } from "../../../shared/jobs/trial/trialBlockDocument";
import type { TrialInputs } from "./trialInputs";

/** What a typed text changes, or why it is refused. */
export type Entry =
  | { readonly ok: true; readonly change: Partial<TrialInputs> }
  | { readonly ok: false; readonly message: string };

type Named = { readonly id: number; readonly name: string };

export function enterPuck(inputs: TrialInputs, id: number, key: "name" | "code", text: string): Entry {
  const { pucks } = inputs;
  const typed = text.trim();
  const others = pucks.filter((puck) => puck.id !== id);
  if (key === "code" && !/^[A-Za-z0-9]{1,12}$/.test(typed)) {
    return refused(`A code has 1 to 12 letters and digits; "${typed}" has not.`);
  }
  const taken = others.some((puck) => same(puck.code, typed) || same(puck.name, typed));
  if (taken) return refused(`"${typed}" is the name or code of another puck; each needs its own.`);
  if (key === "name" && !isName(typed, 100)) return refused("A puck needs a name of 1 to 100 characters.");
  return { ok: true, change: { pucks: pucks.map((puck) => (puck.id === id ? { ...puck, [key]: typed } : puck)) } };
}

export function enterPlayer({ players }: TrialInputs, id: number, text: string): Entry {
  const named = renamed(players, id, text, "player");
  return typeof named === "string" ? refused(named) : { ok: true, change: { players: named } };
}

export function enterActivity(
  { activities }: TrialInputs,
  id: number,
  key: "name" | "weight" | "instruction",
  text: string,
): Entry {
  if (key === "name") {
    const named = renamed(activities, id, text, "activity");
    return typeof named === "string" ? refused(named) : { ok: true, change: { activities: named } };
  }
  if (key === "instruction") {
    if (text.trim().length > 500) return refused("An instruction has at most 500 characters.");
    const instruction = text.trim();
    return {
      ok: true,
      change: { activities: activities.map((one) => (one.id === id ? { ...one, instruction } : one)) },
    };
  }
  const weight = typedNumber(text);
  if (!(weight > 0 && weight <= 1000))
    return refused(`A weight is a number above 0 and at most 1000; "${text}" is not.`);
  return { ok: true, change: { activities: activities.map((one) => (one.id === id ? { ...one, weight } : one)) } };
}

export function enterScale(
  { scale }: TrialInputs,
  key: "question" | "lowestMeans" | "highestMeans" | "lowest" | "highest",
  text: string,
): Entry {
  if (key === "lowest" || key === "highest") {
    const value = typedNumber(text);
    const next = { ...scale, [key]: value };
    const steps = (next.highest - next.lowest) / scale.step;
    if (!(Math.abs(value) <= 1000 && steps >= 1 && Math.abs(steps - Math.round(steps)) < 1e-9)) {
      return refused(
        `"${text}" gives no scale: the highest score must be whole steps of ${scale.step} above the lowest.`,
      );
    }
    return { ok: true, change: { scale: next } };
  }
  const most = key === "question" ? 200 : 60;
  if (!isName(text.trim(), most)) return refused(`It must have 1 to ${most} characters.`);
  return { ok: true, change: { scale: { ...scale, [key]: text.trim() } } };
}

export function enterWhole(_: TrialInputs, key: "repeats" | "seed", text: string): Entry {
  const [least, most] = key === "repeats" ? [1, mostRepeats] : [0, 1_000_000_000];
  const value = typedNumber(text);
  if (!(Number.isInteger(value) && value >= least && value <= most)) {
    return refused(`It must be a whole number from ${least} to ${most}; "${text}" is not.`);
  }
  return { ok: true, change: { [key]: value } };
}

/** The number that a person typed, decimal comma or point; NaN when it is none. */
export function typedNumber(text: string): number {
  const typed = text.trim().replace(",", ".");
  return typed === "" ? Number.NaN : Number(typed);
}

function renamed<Item extends Named>(list: readonly Item[], id: number, text: string, what: string): Item[] | string {
  const name = text.trim();
  if (!isName(name, 60)) return `A ${what} needs a name of 1 to 60 characters.`;
  if (list.some((one) => one.id !== id && same(one.name, name))) {
    return `"${name}" is the name of another ${what}; each needs its own.`;
  }
  return list.map((one) => (one.id === id ? { ...one, name } : one));
}

function isName(text: string, most: number): boolean {
  return text.length >= 1 && text.length <= most;
}

function same(a: string, b: string): boolean {
  return a.trim().toLowerCase() === b.trim().toLowerCase();
}

function refused(message: string): Entry {
  return { ok: false, message };
}
