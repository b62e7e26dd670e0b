import { problem, type Result, success } from "../../result";
import { bendsFromNose } from "./bendsFromNose";
import type { Contour } from "./contour";
import { contourPoints, place } from "./contourPoints";
import { millimetres, smallestRadiusRatio } from "./dimensionChecks";
import { joinPieces } from "./joinedContour";
import type { Point } from "./lineArcContour";
import { isMirrorSymmetric } from "./mirrorSymmetry";
import { parametricPiece } from "./parametricContour";
import { periodicSpline } from "./periodicSpline";
import { extent } from "./sectionNames";
import type { FreeContourSpec } from "./sectionSpec";
import { selfCrossing } from "./selfCrossing";

/** Samples between two neighbouring points when the finished curve is checked. */
const samplesPerPoint = 6;
/** Difference between a contour and its mirror image that is put down to rounding, as a part of the perimeter. */
const mirrorTolerance = 1e-9;

/**
 * A closed spline through given points. Besides the points themselves the finished curve is checked: it must not cross
 * itself, and not turn with a smaller radius than the corners of the other families may have.
 */
export function buildFreeContour(spec: FreeContourSpec): Result<Contour> {
  const prepared = contourPoints(spec.points);
  if (!prepared.ok) return prepared;
  const { points, length, height } = prepared.value;
  const { path, knots } = periodicSpline(points);
  const smallestRadius = smallestRadiusRatio * Math.min(length, height);
  const samples: Point[] = [];
  let sharpest = { radius: Number.POSITIVE_INFINITY, at: points[0] };
  for (let i = 0; i < points.length; i++) {
    for (let j = 0; j < samplesPerPoint; j++) {
      const { x, y, dx, dy, ddx, ddy } = path(knots[i] + ((knots[i + 1] - knots[i]) * j) / samplesPerPoint);
      const radius = Math.hypot(dx, dy) ** 3 / Math.abs(dx * ddy - dy * ddx);
      if (!(radius >= sharpest.radius)) sharpest = { radius, at: [x, y] };
      samples.push([x, y]);
    }
  }
  const crossing = selfCrossing(samples);
  if (crossing) {
    const where = place(samples[crossing[0]]);
    const message = `the curve through the points crosses itself near ${where}; add points there or space them evenly`;
    return problem("curve-self-crossing", message, "points");
  }
  if (!(sharpest.radius >= smallestRadius)) {
    const found = `the curve turns with a radius of ${millimetres(sharpest.radius)} near ${place(sharpest.at)}`;
    const limit = `the smallest allowed is ${millimetres(smallestRadius)} (1 % of the smaller dimension)`;
    return problem("radius-too-small", `${found}; ${limit}: round the corner or smooth the points`, "points");
  }
  const name = `${spec.name ?? "free contour"} ${extent(length, height)}`;
  const contour = joinPieces(name, [parametricPiece(path, knots)], false);
  // The spline's own stretches are as many as its points and hang on which of them came first.
  return success({
    ...contour,
    bends: bendsFromNose(contour),
    mirrorSymmetric: isMirrorSymmetric(contour, mirrorTolerance),
  });
}
