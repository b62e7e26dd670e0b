import type { FluidProperties } from "../engine/fluid/fluidSpec";
import { patternSource } from "../engine/pattern/equivalentRoughness";
import type { ResultRow } from "../engine/section/resultRow";
import { floorNotes } from "../engine/solve/floorNotes";
import type { PatternWall } from "./resolvedCase";

/** Holds for every result of the engine. */
export const screeningCaution =
  "Screening estimates for an infinitely long section in a steady, unbounded stream. Use them to shortlist, then measure; they prove neither safety nor compliance with any rule.";

/** Pa. */
const standardAtmosphere = 101325;

/** Cautions that depend on the fluid and the results. */
export function cautionsFor(fluid: FluidProperties | null, rows: readonly ResultRow[]): string[] {
  const cautions = [screeningCaution, ...layerCautions(rows), ...floorCautions(rows)];
  if (fluid === null) return cautions;
  const speeds = rows.flatMap((row) => (row.speedMetresPerSecond === null ? [] : [row.speedMetresPerSecond]));
  const fastest = speeds.reduce((most, speed) => Math.max(most, speed), 0);
  // Below a Mach number of 0.3 the density changes by less than 5 %: common practice, no source.
  if (fluid.speedOfSound !== null && fastest > 0.3 * fluid.speedOfSound) {
    cautions.push(
      `Speeds up to ${fastest.toPrecision(3)} m/s exceed 0.3 of the speed of sound (${fluid.speedOfSound.toPrecision(3)} m/s): the flow is no longer incompressible, which is assumed here.`,
    );
  }
  const isLiquid = fluid.density > 100;
  const deepestSuction = rows.reduce((most, row) => Math.max(most, suction(row, fluid.density)), 0);
  if (isLiquid && deepestSuction > standardAtmosphere) {
    cautions.push(
      `The lowest pressure is ${(deepestSuction / 1000).toFixed(0)} kPa below that of the stream, more than one atmosphere: near the surface the liquid would cavitate, which is not modelled.`,
    );
  }
  return cautions;
}

/** What a roughness rests on that was estimated from a pattern; none where it was given. */
export function patternCautions(wall: PatternWall | null): string[] {
  if (wall === null) return [];
  const { sandGrainRoughness, insideMeasured } = wall.estimate;
  const reach = insideMeasured ? "" : " The pattern lies outside the surfaces that were measured: a rough guess.";
  return [
    `Sand-grain roughness ${Number((1000 * sandGrainRoughness).toPrecision(3))} mm is estimated from the pattern of ${wall.pattern.kind}. Source: ${patternSource}${reach}`,
  ];
}

/** Of results that were asked for by another layer method than the engine's own. */
function layerCautions(rows: readonly ResultRow[]): string[] {
  if (!rows.some(({ layerMethod }) => layerMethod === "textbook")) return [];
  return [
    "The sections' boundary layers are those of the textbook methods (Thwaites, Michel, Head), for comparison: transition as in a quiet stream, turbulent layers as on a smooth wall. Their drag was neither calibrated nor checked. Pucks, tunnel tests and comparisons with measurements keep to the integral method.",
  ];
}

/** The floor's notes at the smallest gap, where it matters most; every row has its own applicability besides. */
function floorCautions(rows: readonly ResultRow[]): string[] {
  const gaps = rows.flatMap(({ floorGapMetres, referenceWidth }) =>
    floorGapMetres === null ? [] : [floorGapMetres / referenceWidth],
  );
  return gaps.length === 0 ? [] : floorNotes(gaps.reduce((least, gap) => Math.min(least, gap)));
}

/** How far the lowest pressure of a result lies below the stream's, Pa; 0 where it is not known. */
function suction(row: ResultRow, density: number): number {
  if (row.speedMetresPerSecond === null || row.minimumPressureCoefficient === null) return 0;
  return -row.minimumPressureCoefficient * 0.5 * density * row.speedMetresPerSecond ** 2;
}
