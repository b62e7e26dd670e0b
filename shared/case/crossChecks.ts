import { mostResults, reynoldsBounds, roughnessRatioBounds } from "../document/limits";
import { checkGapRatio, SMALLEST_GAP_RATIO } from "../engine/flow/floorPlane";
import { contourExtent } from "../engine/section/contourExtent";
import type { StreamTrip } from "../engine/section/stream";
import type { Problem } from "../result";
import type { Case, CaseShape } from "./resolvedCase";

/** Relative slack of the checks, for an extent found by sampling. */
const slack = 1e-4;

/** What a case asks for that only shows when sections, fluid and stream are put together. */
export function crossChecks(theCase: Case): Problem[] {
  const tooMany = resultCount(theCase);
  if (tooMany.length > 0) return tooMany;
  const problems: Problem[] = [];
  for (const shape of theCase.shapes) {
    const width = contourExtent(shape.section, shape.incidence);
    problems.push(...reynoldsNumbers(theCase, shape, width), ...roughnessRatios(theCase, shape, width));
    problems.push(...floorGap(shape, width));
    theCase.trips.forEach((trip, i) => {
      problems.push(...tripFits(trip, i, shape, width));
    });
  }
  return problems;
}

function resultCount(theCase: Case): Problem[] {
  const { shapes, speeds, walls, turbulenceIntensities, branches } = theCase;
  const conditions = shapes.length * speeds.length * walls.length * turbulenceIntensities.length;
  const count = conditions * (branches === "both" || branches === "whereDifferent" ? 2 : 1);
  if (count <= mostResults) return [];
  const message = `the case asks for up to ${count} results (sections x stream x roughness x turbulence x branches); it must be at most ${mostResults}`;
  return [{ code: "result-count", message }];
}

function reynoldsNumbers(theCase: Case, shape: CaseShape, width: number): Problem[] {
  return theCase.speeds.flatMap((stream) => {
    if (!("speed" in stream)) return [];
    const { speed, fluid } = stream;
    const { kinematicViscosity } = fluid;
    const reynolds = (speed * width) / kinematicViscosity;
    const { from = 0, to } = reynoldsBounds;
    if (reynolds >= from * (1 - slack) && reynolds <= to * (1 + slack)) return [];
    const lowest = (from * kinematicViscosity) / width;
    const highest = (to * kinematicViscosity) / width;
    const message = `speedsMetresPerSecond: ${speed} m/s on ${shape.name} is Reynolds number ${reynolds.toPrecision(3)}; it must be from ${from} to ${to}, here ${lowest.toPrecision(3)} to ${highest.toPrecision(3)} m/s`;
    return [{ code: "reynolds-range", message, field: "speedsMetresPerSecond" }];
  });
}

function roughnessRatios(theCase: Case, shape: CaseShape, width: number): Problem[] {
  return theCase.walls.flatMap((wall) => {
    if (!("sandGrainRoughness" in wall)) return [];
    const { sandGrainRoughness: height } = wall;
    if (height / width <= roughnessRatioBounds.to * (1 + slack)) return [];
    const most = roughnessRatioBounds.to * width;
    const message = `sandGrainRoughnessMetres: ${height} m on ${shape.name} is ks/D ${(height / width).toPrecision(3)}; it must be at most ${roughnessRatioBounds.to}, here ${most.toPrecision(3)} m`;
    return [{ code: "roughness-range", message, field: "sandGrainRoughnessMetres" }];
  });
}

function floorGap({ name, floorGap: gap }: CaseShape, width: number): Problem[] {
  if (gap === null || checkGapRatio(gap / width) === null) return [];
  const least = `${(SMALLEST_GAP_RATIO * width).toPrecision(3)} m`;
  const message = `floorGapMetres: ${gap} m under ${name} is ${(gap / width).toPrecision(3)} of its height; it must be 0 (lying on the floor) or at least ${SMALLEST_GAP_RATIO} of it, here ${least}: narrower gaps are filled by boundary layers, take 0 for them`;
  return [{ code: "floor-gap", message, field: "floorGapMetres" }];
}

function tripFits(trip: StreamTrip, index: number, shape: CaseShape, width: number): Problem[] {
  const isInMetres = "arc" in trip;
  const [key, stated, arc] = isInMetres
    ? (["arcMetres", trip.arc, trip.arc] as const)
    : (["arcRatio", trip.arcRatio, trip.arcRatio * width] as const);
  const side = shape.section.perimeter / 2;
  const field = `trips[${index}].${key}`;
  const problems: Problem[] = [];
  if (!(arc < side)) {
    const most = isInMetres ? `${side.toPrecision(3)} (m)` : `${(side / width).toPrecision(3)}`;
    const message = `${field} is ${stated}, beyond the rear of ${shape.name}; it must be below ${most}`;
    problems.push({ code: "trip-position", message, field });
  }
  if ("height" in trip && !(trip.height / width <= 0.1)) {
    const heightField = `trips[${index}].heightMetres`;
    const message = `${heightField} is ${trip.height}; it must be at most 0.1 of the reference width, here ${(0.1 * width).toPrecision(3)} (m)`;
    problems.push({ code: "trip-height", message, field: heightField });
  }
  return problems;
}
