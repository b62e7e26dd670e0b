import { mostPlayers } from "../../../shared/jobs/trial/trialBlockDocument";
import { type Entry, typedNumber } from "./setupEntries";
import type { TrialInputs } from "./trialInputs";

export type PowerEntry = Entry;

const ranges = {
  spread: { above: 0, to: 1000 },
  playerSpread: { above: -1e-9, to: 1000 },
  wantedPower: { above: 0.049, to: 0.999 },
} as const;

export function enterPower({ power }: TrialInputs, key: keyof typeof ranges, text: string): PowerEntry {
  const value = typedNumber(text);
  const { above, to } = ranges[key];
  if (value > above && value <= to) return { ok: true, change: { power: { ...power, [key]: value } } };
  const rule = { spread: "above 0", playerSpread: "0 or more", wantedPower: "from 0.05 to 0.999" }[key];
  return { ok: false, message: `It must be a number ${rule}; "${text.trim()}" is not.` };
}

export function enterExpected({ pucks }: TrialInputs, id: number, text: string): PowerEntry {
  const expected = typedNumber(text);
  if (!(Math.abs(expected) <= 1000)) {
    return { ok: false, message: `A mean score must be a number from -1000 to 1000; "${text.trim()}" is not.` };
  }
  return { ok: true, change: { pucks: pucks.map((puck) => (puck.id === id ? { ...puck, expected } : puck)) } };
}

export function enterPlayerCounts({ power }: TrialInputs, text: string): PowerEntry {
  const counts = text.split(/[;,\s]+/).filter((part) => part !== "");
  const values = counts.map(Number);
  const isRight = values.every((value) => Number.isInteger(value) && value >= 2 && value <= mostPlayers);
  if (counts.length < 1 || counts.length > 30 || !isRight) {
    return { ok: false, message: `It must be 1 to 30 whole numbers from 2 to ${mostPlayers}, for instance 8 12 16.` };
  }
  return {
    ok: true,
    change: { power: { ...power, playerCounts: [...new Set(values)].sort((a, b) => a - b) } },
  };
}
