import { convert } from "convert";
import type { OutlineSide } from "../engine/geometry/sectionSpec";
import { chainPoints } from "./chooseOutline";
import type { Outline, OutlineUnit, Place } from "./outline";

/** How an outline is laid into the stream. */
export interface OutlinePlacement {
  readonly unit: OutlineUnit;
  /** On top of the unit. */
  readonly scale: number;
  /** Counter-clockwise. */
  readonly quarterTurns: number;
}

/** An outline in metres: its sides, and its points where it came as a list of them. */
export interface PlacedOutline {
  readonly sides: readonly OutlineSide[];
  readonly points: readonly Place[] | null;
  /** Of a list of points, m. */
  readonly tolerance: number | null;
}

/** An outline in metres, scaled, turned, and moved so that the middle of its extent is the origin. */
export function placedOutline(outline: Outline, { unit, scale, quarterTurns }: OutlinePlacement): PlacedOutline {
  const factor = convert(1, unit).to("m") * scale;
  const turns = ((quarterTurns % 4) + 4) % 4;
  const turn = ([x, y]: Place): Place => {
    let [a, b] = [x * factor, y * factor];
    for (let k = 0; k < turns; k++) [a, b] = [-b, a];
    return [a, b];
  };
  const around = chainPoints({ sides: outline.sides, end: outline.sides[0].from }).map(turn);
  const middle = (axis: 0 | 1) => {
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const point of around) {
      low = Math.min(low, point[axis]);
      high = Math.max(high, point[axis]);
    }
    return (low + high) / 2;
  };
  const [middleX, middleY] = [middle(0), middle(1)];
  const move = (place: Place): Place => {
    const [x, y] = turn(place);
    return [x - middleX, y - middleY];
  };
  return {
    sides: outline.sides.map(({ from, bulge, controls }) => ({
      from: move(from),
      ...(bulge === undefined ? {} : { bulge }),
      ...(controls === undefined ? {} : { controls: [move(controls[0]), move(controls[1])] as const }),
    })),
    points: outline.fitted === null ? null : outline.fitted.points.map(move),
    tolerance: outline.fitted === null ? null : outline.fitted.tolerance * factor,
  };
}
