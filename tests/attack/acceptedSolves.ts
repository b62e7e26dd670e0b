import type { Attack } from "./attackResult";
import { seededAttack } from "./seededAttack";

export const acceptedSolves: Attack = {
  name: "solves",
  what: "Mutated sections that are accepted are solved: no crash, none over 2 s, no number that is not finite, a reason for every missing state.",
  fullCount: 2000,
  run: (count) => seededAttack(new URL("./acceptedSolves.process.ts", import.meta.url), count),
};
