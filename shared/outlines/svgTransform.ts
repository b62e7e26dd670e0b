import type { Place } from "./outline";

/** [a, b, c, d, e, f]: x' = a x + c y + e, y' = b x + d y + f. */
export type Matrix = readonly [number, number, number, number, number, number];

export const identity: Matrix = [1, 0, 0, 1, 0, 0];

export function moved([a, b, c, d, e, f]: Matrix, [x, y]: Place): Place {
  return [a * x + c * y + e, b * x + d * y + f];
}

/** A direction, which a shift leaves as it is. */
export function turned([a, b, c, d]: Matrix, [x, y]: Place): Place {
  return [a * x + c * y, b * x + d * y];
}

/** First the inner, then the outer transformation. */
export function combined(outer: Matrix, inner: Matrix): Matrix {
  const [a, b] = turned(outer, [inner[0], inner[1]]);
  const [c, d] = turned(outer, [inner[2], inner[3]]);
  const [e, f] = moved(outer, [inner[4], inner[5]]);
  return [a, b, c, d, e, f];
}

const mostTransforms = 50;

/**
 * The matrix of a transform attribute; null where it is not understood.
 * Source: W3C, Scalable Vector Graphics 1.1 (2nd ed., 2011), sec. 7.6.
 */
export function transformMatrix(text: string): Matrix | null {
  let matrix = identity;
  const parts = text.split(")");
  if (parts.length > mostTransforms || parts.pop()?.trim() !== "") return null;
  for (const part of parts) {
    const [name, numbersText] = part.split("(");
    if (numbersText === undefined) return null;
    const numbers = numbersText
      .split(/[\s,]+/)
      .filter((one) => one !== "")
      .map(Number);
    const step = oneTransform(name.replace(/^[\s,]+|\s+$/g, ""), numbers);
    if (step === null || !step.every(Number.isFinite)) return null;
    matrix = combined(matrix, step);
  }
  return matrix;
}

function oneTransform(name: string, n: readonly number[]): Matrix | null {
  const degrees = Math.PI / 180;
  switch (name) {
    case "matrix":
      return n.length === 6 ? [n[0], n[1], n[2], n[3], n[4], n[5]] : null;
    case "translate":
      return n.length === 1 || n.length === 2 ? [1, 0, 0, 1, n[0], n[1] ?? 0] : null;
    case "scale":
      return n.length === 1 || n.length === 2 ? [n[0], 0, 0, n[1] ?? n[0], 0, 0] : null;
    case "rotate": {
      if (n.length !== 1 && n.length !== 3) return null;
      const [cosine, sine] = [Math.cos(n[0] * degrees), Math.sin(n[0] * degrees)];
      const [x, y] = [n[1] ?? 0, n[2] ?? 0];
      return [cosine, sine, -sine, cosine, x - cosine * x + sine * y, y - sine * x - cosine * y];
    }
    case "skewX":
      return n.length === 1 ? [1, 0, Math.tan(n[0] * degrees), 1, 0, 0] : null;
    case "skewY":
      return n.length === 1 ? [1, Math.tan(n[0] * degrees), 0, 1, 0, 0] : null;
    default:
      return null;
  }
}
