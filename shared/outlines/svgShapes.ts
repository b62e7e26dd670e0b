import type { OutlineSide } from "../engine/geometry/sectionSpec";
import { problem, type Result, success } from "../result";
import { ellipseSides } from "./ellipseSides";
import type { Chain, Place } from "./outline";
import { pathChains } from "./svgPath";
import { type Matrix, moved, turned } from "./svgTransform";

type Attributes = Readonly<Record<string, string>>;

/**
 * The lines of one element of an SVG drawing; null of an element that is no shape.
 * Source: W3C, Scalable Vector Graphics 1.1 (2nd ed., 2011), ch. 9, basic shapes.
 */
export function shapeChains(name: string, attributes: Attributes, matrix: Matrix): Result<Chain[]> | null {
  switch (name) {
    case "path":
      return attributes.d === undefined ? success([]) : pathChains(attributes.d, matrix);
    case "rect":
      return rectangle(attributes, matrix);
    case "circle": {
      const radius = lengthOf(attributes, "r");
      return ring(lengthOf(attributes, "cx"), lengthOf(attributes, "cy"), radius, radius, matrix);
    }
    case "ellipse":
      return ring(
        lengthOf(attributes, "cx"),
        lengthOf(attributes, "cy"),
        lengthOf(attributes, "rx"),
        lengthOf(attributes, "ry"),
        matrix,
      );
    case "polygon":
    case "polyline":
      return polygon(attributes.points ?? "", name === "polygon", matrix);
    case "line": {
      const [from, to] = [1, 2].map((i): Place => [lengthOf(attributes, `x${i}`), lengthOf(attributes, `y${i}`)]);
      return success([{ sides: [{ from: moved(matrix, from) }], end: moved(matrix, to) }]);
    }
    default:
      return null;
  }
}

/** A length without unit or in px, in the drawing's own unit; 0 where it is not given. */
function lengthOf(attributes: Attributes, key: string): number {
  const text = attributes[key];
  return text === undefined ? 0 : Number(text.trim().replace(/px$/, "") || Number.NaN);
}

function rectangle(attributes: Attributes, matrix: Matrix): Result<Chain[]> {
  const [x, y, width, height] = ["x", "y", "width", "height"].map((key) => lengthOf(attributes, key));
  if (!(width > 0 && height > 0)) return success([]);
  const given = (key: string) => (attributes[key] === undefined ? null : lengthOf(attributes, key));
  const [ownX, ownY] = [given("rx"), given("ry")];
  const rx = Math.min(ownX ?? ownY ?? 0, width / 2);
  const ry = Math.min(ownY ?? ownX ?? 0, height / 2);
  const [right, bottom] = [x + width, y + height];
  if (!(rx > 0 && ry > 0)) {
    const corners: Place[] = [
      [x, y],
      [right, y],
      [right, bottom],
      [x, bottom],
    ];
    return success([closed(corners.map((corner) => ({ from: moved(matrix, corner) })))]);
  }
  const centres: Place[] = [
    [right - rx, y + ry],
    [right - rx, bottom - ry],
    [x + rx, bottom - ry],
    [x + rx, y + ry],
  ];
  const [a, b] = [turned(matrix, [rx, 0]), turned(matrix, [0, ry])];
  const sides = centres.flatMap((centre, i): OutlineSide[] => {
    const quarter = ellipseSides(moved(matrix, centre), a, b, ((i - 1) * Math.PI) / 2, Math.PI / 2);
    return [...quarter.sides, { from: quarter.end }];
  });
  return success([closed(sides)]);
}

function ring(cx: number, cy: number, rx: number, ry: number, matrix: Matrix): Result<Chain[]> {
  if (!(rx > 0 && ry > 0)) return success([]);
  return success([
    ellipseSides(moved(matrix, [cx, cy]), turned(matrix, [rx, 0]), turned(matrix, [0, ry]), 0, 2 * Math.PI),
  ]);
}

function polygon(text: string, isClosed: boolean, matrix: Matrix): Result<Chain[]> {
  const numbers = text
    .split(/[\s,]+/)
    .filter((one) => one !== "")
    .map(Number);
  if (numbers.length % 2 !== 0) {
    return problem("outline", `a polygon has ${numbers.length} coordinates; it must have two for each point`);
  }
  const sides = Array.from(
    { length: numbers.length / 2 },
    (_, i): OutlineSide => ({
      from: moved(matrix, [numbers[2 * i], numbers[2 * i + 1]]),
    }),
  );
  if (sides.length < 2) return success([]);
  return success([isClosed ? closed(sides) : { sides: sides.slice(0, -1), end: sides[sides.length - 1].from }]);
}

function closed(sides: readonly OutlineSide[]): Chain {
  return { sides, end: sides[0].from };
}
