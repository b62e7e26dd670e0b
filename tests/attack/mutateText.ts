import { randomDraws } from "../../shared/statistics/randomDraws";

const oddPieces = [
  "",
  "0",
  "-1",
  "1e999",
  "nil",
  "-",
  ",",
  ";",
  "\n",
  "\t",
  '"',
  "<",
  ">",
  "Z",
  "0\nPOLYLINE\n",
  "0\nVERTEX\n",
  "é",
  " ".repeat(200),
];
const mostChanges = 3;
/** Spreads neighbouring seeds, whose first draws would resemble each other. */
const scatter = 7919;

/** One of some texts with pieces of it taken out, doubled, swapped or replaced by odd ones; equal seeds give equal texts. */
export function mutatedText(originals: readonly string[], seed: number): string {
  const draws = randomDraws(seed * scatter);
  let text = originals[draws.below(originals.length)];
  for (let change = 1 + draws.below(mostChanges); change > 0; change--) {
    const from = draws.below(text.length + 1);
    const to = Math.min(text.length, from + 1 + draws.below(draws.uniform() < 0.2 ? text.length : 12));
    const piece = text.slice(from, to);
    const kind = draws.below(9);
    if (kind === 0) text = text.slice(0, from) + text.slice(to);
    else if (kind === 1) text = text.slice(0, to) + piece + text.slice(to);
    else if (kind === 2) text = text.slice(0, from) + oddPieces[draws.below(oddPieces.length)] + text.slice(to);
    else if (kind === 3)
      text = text.slice(0, from) + String((draws.uniform() - 0.5) * 10 ** (draws.below(12) - 4)) + text.slice(to);
    else if (kind === 4) text = text.slice(0, from);
    else text = text.slice(0, from) + String(draws.below(10)) + text.slice(Math.min(text.length, from + 1));
  }
  return text;
}
