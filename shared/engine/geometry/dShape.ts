import { problem, type Result, success } from "../../result";
import type { Contour } from "./contour";
import type { ContourPiece, Path } from "./contourPiece";
import {
  checkAtLeast,
  checkAtMost,
  checkLengths,
  checkRadius,
  checkSlenderness,
  firstProblem,
  millimetres,
} from "./dimensionChecks";
import { joinPieces } from "./joinedContour";
import { arcPiece, linePiece, type Point } from "./lineArcContour";
import { parametricPiece } from "./parametricContour";
import { extent } from "./sectionNames";
import type { DShapeSpec } from "./sectionSpec";

/** Shortest nose as a fraction of the height; a shorter one would turn more sharply than the allowed corners. */
const shortestNoseRatio = 0.1;

/** A half-ellipse nose, straight sides and a flat face with two rounded corners; the middle of its length at x = 0. */
export function buildDShape(spec: DShapeSpec): Result<Contour> {
  const { length, height, noseLength, cornerRadius, flatSide } = spec;
  const bad = firstProblem(
    checkLengths({ length, height, noseLength }),
    checkSlenderness(length, height),
    checkRadius("cornerRadius", cornerRadius, Math.min(length, height), {
      value: height / 2,
      words: "half the height",
    }),
    checkAtLeast("noseLength", noseLength, { value: shortestNoseRatio * height, words: "10 % of the height" }),
    checkAtMost("noseLength", noseLength, { value: length - cornerRadius, words: "the length less the corner radius" }),
  );
  if (bad) return { ok: false, problem: bad };
  if (flatSide !== "front" && flatSide !== "rear") {
    return problem("unknown-side", `flat side is "${flatSide}"; use "front" or "rear"`, "flatSide");
  }
  const detail = `nose ${millimetres(noseLength)}, corner radius ${millimetres(cornerRadius)}`;
  const name = `D-section ${extent(length, height)}, ${detail}, flat ${flatSide}`;
  return success(joinPieces(name, dShapePieces(spec), true));
}

/** Counter-clockwise from the upper end of the nose, laid out with the flat rearward, then turned by half a turn or not. */
function dShapePieces({ length, height, noseLength, cornerRadius, flatSide }: DShapeSpec): ContourPiece[] {
  const sign = flatSide === "rear" ? 1 : -1;
  const heading = flatSide === "rear" ? 0 : Math.PI;
  const top = height / 2;
  const noseX = noseLength - length / 2;
  const cornerX = Math.max(length / 2 - cornerRadius, noseX);
  const cornerY = Math.max(top - cornerRadius, 0);
  const place = (x: number, y: number): Point => [sign * x, sign * y];
  const line = (start: Point, end: Point) =>
    Math.hypot(end[0] - start[0], end[1] - start[1]) > 1e-12 * length ? [linePiece(start, end)] : [];
  const nose: Path = (t) => {
    const cosine = Math.cos(t);
    const sine = Math.sin(t);
    return {
      x: sign * (noseX + noseLength * cosine),
      y: sign * top * sine,
      dx: -sign * noseLength * sine,
      dy: sign * top * cosine,
      ddx: -sign * noseLength * cosine,
      ddy: -sign * top * sine,
    };
  };
  const end = length / 2;
  return [
    parametricPiece(
      nose,
      [2, 3, 4, 5, 6].map((quarter) => (quarter * Math.PI) / 4),
    ),
    ...line(place(noseX, -top), place(cornerX, -top)),
    arcPiece(place(cornerX, -cornerY), cornerRadius, heading - Math.PI / 2, Math.PI / 2),
    ...line(place(end, -cornerY), place(end, cornerY)),
    arcPiece(place(cornerX, cornerY), cornerRadius, heading, Math.PI / 2),
    ...line(place(cornerX, top), place(noseX, top)),
  ];
}
