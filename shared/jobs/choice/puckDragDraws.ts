import { CHECKED_LEVEL } from "../../engine/trust/checkedLevel";
import { bodyCorrelation } from "../../engine/trust/errorCovariance";
import { type ErrorPoint, errorPoint } from "../../engine/trust/errorPoint";
import { choleskyFactor } from "../../statistics/correlationMatrix";
import type { RandomDraws } from "../../statistics/randomDraws";
import { type DragAttitude, dragAreaAt, dragAreaBands } from "../durability/public";
import type { PuckResult } from "../puck/public";

/** Drag areas of all pucks in common draws, m^2, shape [pucks][draws]. */
export type DragDraws = (attitude: DragAttitude, speed: number) => Float64Array[] | string;

/**
 * Joint draws of the pucks' drag. Each puck keeps the band of its own row; how far two pucks' errors go together is what
 * the engine's error model says of two bodies that are as alike as they are (a Gaussian copula), and the water's
 * turbulence is the same for all. Upright and flat share their error, the flow along the axis has its own.
 */
export function puckDragDraws(
  pucks: readonly PuckResult[],
  draws: number,
  kinematicViscosity: number,
  random: RandomDraws,
): DragDraws {
  const points = pucks.map((puck) => likenessPoint(puck, kinematicViscosity));
  const correlations = points.map((a) => points.map((b) => bodyCorrelation(a, b, CHECKED_LEVEL.parameters)));
  const factor = choleskyFactor(correlations);
  if (factor === null) throw new RangeError("the errors of the pucks have no joint distribution.");
  const correlated = () => {
    const found = pucks.map(() => new Float64Array(draws));
    for (let k = 0; k < draws; k++) {
      const normals = pucks.map(() => random.normal());
      found.forEach((column, i) => {
        for (let j = 0; j <= i; j++) column[k] += factor[i][j] * normals[j];
      });
    }
    return found;
  };
  const edgeOn = correlated();
  const faceOn = correlated();
  const water = Float64Array.from({ length: draws }, () => random.uniform());
  return (attitude, speed) => {
    const found: Float64Array[] = [];
    for (const [i, puck] of pucks.entries()) {
      const bands = dragAreaBands(puck, attitude, speed);
      if (bands.length === 0) return `the drag of ${puck.name} is not known`;
      const errors = attitude === "faceOn" ? faceOn[i] : edgeOn[i];
      found.push(errors.map((error, k) => dragAreaAt(bands[Math.floor(water[k] * bands.length)], error)));
    }
    return found;
  };
}

/** Where a puck stands among bodies, by its profile section. */
function likenessPoint({ puck, drag, sandGrainRoughnessMetres }: PuckResult, kinematicViscosity: number): ErrorPoint {
  const { diameterMetres: d, thicknessMetres: t, edge, rim } = puck;
  const isRounded = edge.kind === "radius";
  const roughness = Math.max(sandGrainRoughnessMetres, rim.kind === "rough" ? rim.sandGrainRoughnessMetres : 0);
  const row = drag[0];
  return errorPoint(
    {
      shape: isRounded ? "rectangle" : "other",
      logLengthToHeight: Math.log(d / t),
      cornerRadiusToHeight: isRounded ? Math.min(0.5, edge.edgeRadiusMetres / t) : 0,
    },
    {
      reynolds: ((row?.speedMetresPerSecond ?? 1) * t) / kinematicViscosity,
      sandGrainRoughnessRatio: roughness / t,
      turbulenceIntensity: (row?.turbulencePercent ?? 1) / 100,
    },
    "subcritical",
  );
}
