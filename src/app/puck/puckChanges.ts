import type { PuckInputs } from "./puckInputs";

type Part = keyof PuckInputs;

/** What the judgement depends on, what drag and motions depend on, and what a pinned puck's results depend on. */
export const judgeParts: readonly Part[] = ["candidate", "userMaterials", "play", "rules", "tolerances"];
export const solveParts: readonly Part[] = ["candidate", "baseline", "userMaterials", "play", "motions"];
export const playParts: readonly Part[] = ["baseline", "userMaterials", "play", "motions"];

/** True when none of these parts was replaced between two versions of the inputs. */
export function sameParts(a: PuckInputs, b: PuckInputs, parts: readonly Part[]): boolean {
  return parts.every((part) => Object.is(a[part], b[part]));
}
