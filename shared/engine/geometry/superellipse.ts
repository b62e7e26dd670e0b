import { problem, type Result, success } from "../../result";
import type { Contour } from "./contour";
import type { Path } from "./contourPiece";
import { checkLengths, checkSlenderness, firstProblem } from "./dimensionChecks";
import { joinPieces } from "./joinedContour";
import { parametricPiece } from "./parametricContour";
import { extent } from "./sectionNames";
import type { SuperellipseSpec } from "./sectionSpec";

export const smallestExponent = 2;
export const largestExponent = 20;

/**
 * |2x/length|^n + |2y/height|^n = 1 about the origin. Below n = 2 the curvature is unbounded on the axes, above 20 the
 * corners are too tight, so neither is allowed.
 */
export function buildSuperellipse(spec: SuperellipseSpec): Result<Contour> {
  const { length, height, exponent } = spec;
  const bad = firstProblem(checkLengths({ length, height }), checkSlenderness(length, height));
  if (bad) return { ok: false, problem: bad };
  if (!(exponent >= smallestExponent && exponent <= largestExponent)) {
    const message = `exponent is ${exponent}; it must be from ${smallestExponent} to ${largestExponent}`;
    return problem("exponent-out-of-range", message, "exponent");
  }
  const path = superellipsePath(length / 2, height / 2, exponent);
  const eighths = Float64Array.from({ length: 9 }, (_, i) => (i * Math.PI) / 4);
  const name = `superellipse ${extent(length, height)}, exponent ${exponent}`;
  return success(joinPieces(name, [parametricPiece(path, eighths)], true));
}

/**
 * By the polar angle t of the section squeezed to a square, from (-a, 0): unlike the usual powers of cosine and sine,
 * this has a bounded speed above 0 everywhere.
 */
function superellipsePath(a: number, b: number, n: number): Path {
  return (t) => {
    const c = Math.cos(t);
    const s = Math.sin(t);
    const cPower = Math.abs(c) ** (n - 2);
    const sPower = Math.abs(s) ** (n - 2);
    const g = cPower * c * c + sPower * s * s;
    const dg = n * s * c * (sPower - cPower);
    const ddg = n * ((c * c - s * s) * (sPower - cPower) + (n - 2) * (sPower * c * c + cPower * s * s));
    const radius = g ** (-1 / n);
    const dRadius = (-radius * dg) / (n * g);
    const ddRadius = (radius / n) * ((1 / n + 1) * (dg / g) ** 2 - ddg / g);
    return {
      x: -a * radius * c,
      y: -b * radius * s,
      dx: -a * (dRadius * c - radius * s),
      dy: -b * (dRadius * s + radius * c),
      ddx: -a * (ddRadius * c - 2 * dRadius * s - radius * c),
      ddy: -b * (ddRadius * s + 2 * dRadius * c - radius * s),
    };
  };
}
