import type { RandomDraws } from "../../statistics/randomDraws";
import { shuffledOrder } from "../../statistics/shuffle";

export const mostBlindCodes = 26;

/**
 * Three-digit codes for samples: random, so that they tell neither order nor kind; digits from 2 to 9, none twice in a
 * code, no code sharing its first digit with another while digits last, two or more digits apart from every other, and
 * none the same digits in another order, so that a misread digit does not name another puck. Common practice of sensory
 * tests (three-digit random codes); the distances are our own choice.
 * @param count 1 to 26, those taken included
 * @param taken codes in use already, which new ones must be unlike as well
 * @returns new codes
 */
export function blindCodes(count: number, draws: RandomDraws, taken: readonly string[] = []): string[] {
  if (!(Number.isInteger(count) && count >= 1 && count + taken.length <= mostBlindCodes)) {
    throw new RangeError(`codes are ${count}; with those taken there must be 1 to ${mostBlindCodes} of them.`);
  }
  for (;;) {
    const found = drawnCodes(count, draws, taken);
    if (found !== null) return found;
  }
}

const digits = ["2", "3", "4", "5", "6", "7", "8", "9"];

/** null when the codes drawn so far leave no room for another. */
function drawnCodes(count: number, draws: RandomDraws, taken: readonly string[]): string[] | null {
  const all = digits.flatMap((a) => digits.flatMap((b) => digits.map((c) => a + b + c)));
  const inOrder = all.filter((code) => new Set(code).size === 3);
  const candidates = shuffledOrder(draws, inOrder.length).map((place) => inOrder[place]);
  const codes: string[] = [];
  for (const mostAlike of [0, 1, 2, 3]) {
    for (const code of candidates) {
      if (codes.length === count) return codes;
      const others = [...taken, ...codes];
      const sameStart = others.filter((other) => other[0] === code[0]).length;
      if (sameStart <= mostAlike && others.every((other) => isUnlike(code, other))) codes.push(code);
    }
  }
  return codes.length === count ? codes : null;
}

function isUnlike(a: string, b: string): boolean {
  const apart = [...a].filter((digit, i) => digit !== b[i]).length;
  return apart >= 2 && [...a].sort().join("") !== [...b].sort().join("");
}
