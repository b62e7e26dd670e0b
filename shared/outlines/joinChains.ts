import { reversedSides } from "../engine/geometry/outlineSides";
import { apart, type Chain, chainExtent, type Place } from "./outline";

/** Parts of the drawing's size within which the ends of two lines are joined. */
const joinTolerance = 1e-5;

/** Puts chains together whose ends meet, whatever their direction, each once; closed ones stay as they are. */
export function joinChains(chains: readonly Chain[]): Chain[] {
  const size = Math.max(...chainExtent(chains));
  const near = joinTolerance * size;
  const isClosed = ({ sides, end }: Chain) => apart(sides[0].from, end) <= near;
  const open = chains.filter((chain) => !isClosed(chain));
  const cells = new Map<string, number[]>();
  const cellOf = (value: number) => Math.floor(value / (2 * near));
  open.forEach(({ sides, end }, i) => {
    for (const place of [sides[0].from, end]) {
      const key = `${cellOf(place[0])} ${cellOf(place[1])}`;
      const there = cells.get(key);
      if (there === undefined) cells.set(key, [i]);
      else there.push(i);
    }
  });
  const used = new Set<number>();
  const nextAt = (place: Place): Chain | null => {
    for (let dx = -1; dx <= 1; dx++) {
      for (let dy = -1; dy <= 1; dy++) {
        const key = `${cellOf(place[0]) + dx} ${cellOf(place[1]) + dy}`;
        const there = (cells.get(key) ?? []).filter((i) => !used.has(i));
        if (there.length > 0) cells.set(key, there);
        else cells.delete(key);
        for (const i of there) {
          const startsHere = apart(open[i].sides[0].from, place) <= near;
          if (!startsHere && apart(open[i].end, place) > near) continue;
          used.add(i);
          return startsHere ? open[i] : reversedChain(open[i]);
        }
      }
    }
    return null;
  };
  const joined: Chain[] = chains.filter(isClosed);
  open.forEach((chain, i) => {
    if (used.has(i)) return;
    used.add(i);
    let grown = [chain];
    for (const direction of ["forward", "back"]) {
      for (;;) {
        const last = grown[grown.length - 1];
        if (grown.length > 1 && apart(last.end, grown[0].sides[0].from) <= near) break;
        const next = nextAt(last.end);
        if (next === null) break;
        grown.push(next);
      }
      if (direction === "forward") grown = grown.map(reversedChain).reverse();
    }
    joined.push({ sides: grown.flatMap(({ sides }) => sides), end: grown[grown.length - 1].end });
  });
  return joined;
}

/** The same chain walked the other way. */
export function reversedChain({ sides, end }: Chain): Chain {
  // The closing line that the reversal of a closed outline would have is left out again.
  const [, ...reversed] = reversedSides([...sides, { from: end }]);
  return { sides: reversed, end: sides[0].from };
}
