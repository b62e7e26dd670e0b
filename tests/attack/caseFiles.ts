import type { Attack } from "./attackResult";
import { seededAttack } from "./seededAttack";

export const caseFiles: Attack = {
  name: "case-files",
  what: "Mutated case files are read: no crash, none over 2 s, every refusal with its key and what would be right.",
  fullCount: 100_000,
  run: (count) => seededAttack(new URL("./caseFiles.process.ts", import.meta.url), count),
};
