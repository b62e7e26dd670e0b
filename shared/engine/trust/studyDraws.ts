import { choleskyFactor } from "../../statistics/correlationMatrix";
import { randomDraws } from "../../statistics/randomDraws";
import type { FlowCondition } from "../condition";
import type { Regime } from "../solution";
import { crisisKind } from "./crisisKind";
import { type DragKnots, dragAt } from "./dragKnots";
import { bodyCorrelation, type ErrorParameters } from "./errorCovariance";
import { type ErrorPoint, errorPoint, type SectionPoint } from "./errorPoint";
import { type LevelProcess, levelErrorsAt } from "./levelProcess";

/** A stream that a body may meet, and the engine's drag around it. */
export interface StudyStream {
  readonly condition: FlowCondition;
  readonly knots: DragKnots;
}

/**
 * One body at one condition of a study. Where the stream is not known (turbulence, finish, speed, as ranges), it has
 * several, equally likely ones: the same number for every body, in the same order, since all meet the same water.
 */
export interface StudyBody {
  readonly section: SectionPoint;
  readonly streams: readonly StudyStream[];
}

export interface StudyDraws {
  /** ln Cd of every body, shape [bodies][draws]; a draw is the same world for all bodies. */
  readonly logDrag: readonly Float64Array[];
  /** Share of draws past the crisis, shape [bodies]. */
  readonly pastCrisisShare: readonly number[];
}

/**
 * Draws of ln Cd that are common to all bodies of a study: shift of the crisis and level error are correlated between
 * bodies by how alike they are, and the unknown stream is the same for all.
 * @param count of draws
 * @param seed  whole number; equal seeds give equal draws
 * @throws RangeError when the bodies have different numbers of streams
 */
export function studyDraws(level: LevelProcess, bodies: readonly StudyBody[], count: number, seed: number): StudyDraws {
  const streams = bodies[0]?.streams.length ?? 0;
  for (const { streams: own } of bodies) {
    if (own.length !== streams || streams === 0) {
      throw new RangeError(
        `a body has ${own.length} streams and the first ${streams}; all need the same number, 1 or more.`,
      );
    }
  }
  const draws = randomDraws(seed);
  const shiftFactor = semidefiniteFactor(shiftCorrelations(bodies, level.parameters));
  const states = bodies.map(({ streams: own }) =>
    own.map(({ knots }) => [...new Set(knots.regimes)].map((regime): Regime => regime)),
  );
  const points: ErrorPoint[] = [];
  const places = bodies.map(({ section, streams: own }, i) =>
    own.map(
      ({ condition }, j) =>
        new Map(states[i][j].map((regime) => [regime, points.push(errorPoint(section, condition, regime)) - 1])),
    ),
  );
  const errors = levelErrorsAt(level, points);
  const levelFactor = semidefiniteFactor(rowsOf(errors.covariance, points.length));
  const logDrag = bodies.map(() => new Float64Array(count));
  const past = bodies.map(() => 0);
  const shiftDraw = new Float64Array(bodies.length);
  const levelDraw = new Float64Array(points.length);
  for (let k = 0; k < count; k++) {
    const stream = Math.floor(draws.uniform() * streams);
    for (let i = 0; i < shiftDraw.length; i++) shiftDraw[i] = draws.normal();
    for (let i = 0; i < levelDraw.length; i++) levelDraw[i] = draws.normal();
    bodies.forEach(({ section, streams: own }, i) => {
      const { condition, knots } = own[stream];
      const { mean, deviation } =
        level.parameters.crisisShift[crisisKind(section.shape, condition.turbulenceIntensity)];
      const shift = mean + deviation * rowTimes(shiftFactor[i], shiftDraw);
      const answer = dragAt(knots, Math.log(condition.reynolds) + shift);
      const place = places[i][stream].get(answer.regime)!;
      logDrag[i][k] = answer.logDrag + errors.mean[place] + rowTimes(levelFactor[place], levelDraw);
      if (answer.regime !== "subcritical") past[i]++;
    });
  }
  return { logDrag, pastCrisisShare: past.map((n) => n / count) };
}

/** Correlations of the shifts: by shape, roughness and turbulence, whatever the Reynolds number is. */
function shiftCorrelations(bodies: readonly StudyBody[], parameters: ErrorParameters): number[][] {
  const points = bodies.map(({ section, streams }) => ({
    ...errorPoint(section, streams[0].condition, "critical"),
    logReynolds: 0,
  }));
  return points.map((a) => points.map((b) => bodyCorrelation(a, b, parameters)));
}

function rowsOf(matrix: Readonly<Float64Array>, size: number): number[][] {
  return Array.from({ length: size }, (_, i) => Array.from(matrix.subarray(i * size, (i + 1) * size)));
}

function semidefiniteFactor(matrix: readonly (readonly number[])[]): number[][] {
  const factor = choleskyFactor(matrix);
  if (factor === null) throw new RangeError("the errors of the study have no joint distribution.");
  return factor;
}

function rowTimes(row: readonly number[], draws: Readonly<Float64Array>): number {
  let sum = 0;
  for (let i = 0; i < row.length; i++) sum += row[i] * draws[i];
  return sum;
}
