import type { Attack } from "./attackResult";
import { seededAttack } from "./seededAttack";

export const outlinesAndTables: Attack = {
  name: "outlines-and-tables",
  what: "Mutated outlines (points, SVG, DXF) and tables are read: no crash, none over 2 s, no number that is none, every refusal with what would be right.",
  fullCount: 10_000,
  run: (count) => seededAttack(new URL("./outlinesAndTables.process.ts", import.meta.url), count),
};
