import { pivotedCholesky } from "../../numerics/pivotedCholesky";
import { randomDraws } from "../../statistics/randomDraws";
import type { FlowCondition } from "../condition";
import { TRUST_NUMBERS } from "../constants/trustNumbers";
import type { Regime } from "../solution";
import { regimes } from "./bandTable";
import { crisisKind } from "./crisisKind";
import { type DragKnots, dragAt } from "./dragKnots";
import type { ErrorComponent, ErrorKnowledge } from "./errorKnowledge";
import { type ErrorPoint, errorPoint, type SectionPoint } from "./errorPoint";
import { levelFactorAt } from "./levelFactor";
import { crisisPoint, standardShiftsAt } from "./shiftProcess";

/** A section in a stream that it may meet, and the engine's drag around it. */
export interface StudyStream {
  readonly section: SectionPoint;
  readonly condition: FlowCondition;
  readonly knots: DragKnots;
}

/**
 * One body at one condition of a study. Where inputs are not known (turbulence, finish, speed, sizes, as ranges), it has
 * several, equally likely ones: the same number for every body, in the same order, since all meet the same water.
 */
export interface StudyBody {
  readonly streams: readonly StudyStream[];
}

/** Draws that are common to all bodies of a study: a draw is the same world for all. */
export interface StudyDraws {
  readonly count: number;
  /** Which of the equally likely streams is the true one, shape [draws]. */
  readonly stream: Uint16Array;
  /** ln Cd of every body, shape [bodies][draws]. */
  readonly logDrag: readonly Float64Array[];
  /** Place in `regimes` of every body's state, shape [bodies][draws]. */
  readonly regime: readonly Uint8Array[];
  /** Standard normal draws of the errors that bodies share by name, shape [names][draws]. */
  readonly shared: readonly Float64Array[];
  /** Share of draws past the crisis, shape [bodies]. */
  readonly pastCrisisShare: readonly number[];
}

/** Part of the variance that a factor of the shifts may leave out. */
const LEFT_PART = 1e-9;
const SAME_ANSWER = TRUST_NUMBERS.sameAnswer.value;
const SUBCRITICAL = regimes.indexOf("subcritical");

/**
 * Draws of ln Cd that are common to all bodies of a study: shift of the crisis and level error are correlated between
 * bodies by how alike they are, and the unknown stream is the same for all. An answer that stands twice among the bodies,
 * or nearly so, has the same error both times.
 * @param count       of draws
 * @param seed        whole number; equal seeds give equal draws
 * @param sharedCount how many errors bodies share besides those of their sections
 * @param streams     how many streams every body has
 * @throws RangeError when the bodies have different numbers of streams
 */
export function studyDraws(
  knowledge: ErrorKnowledge,
  bodies: readonly StudyBody[],
  count: number,
  seed: number,
  sharedCount = 0,
  streams = bodies[0]?.streams.length ?? 1,
): StudyDraws {
  checkStreams(bodies, streams);
  const draws = randomDraws(seed);
  const stream = Uint16Array.from({ length: count }, () => Math.floor(draws.uniform() * streams));
  const shared = Array.from({ length: sharedCount }, () => Float64Array.from({ length: count }, () => draws.normal()));
  const logDrag = bodies.map(() => new Float64Array(count));
  const regime = bodies.map(() => new Uint8Array(count));
  let reached = 0;
  let from = 0;
  for (const component of knowledge) {
    reached += component.weight;
    const to = Math.min(count, Math.round(reached * count));
    if (to > from) fillFrom(component, bodies, { from, to, stream, draws, logDrag, regime });
    from = Math.max(from, to);
  }
  const past = regime.map((column) => column.reduce((sum, place) => sum + (place === SUBCRITICAL ? 0 : 1), 0));
  return { count, stream, logDrag, regime, shared, pastCrisisShare: past.map((n) => n / count) };
}

function checkStreams(bodies: readonly StudyBody[], streams: number): void {
  for (const { streams: own } of bodies) {
    if (own.length !== streams || streams === 0) {
      throw new RangeError(
        `a body has ${own.length} streams and the first ${streams}; all need the same number, 1 or more.`,
      );
    }
  }
}

interface Filled extends Pick<StudyDraws, "stream" | "logDrag" | "regime"> {
  /** First draw, and one past the last. */
  readonly from: number;
  readonly to: number;
  readonly draws: ReturnType<typeof randomDraws>;
}

function fillFrom(component: ErrorComponent, bodies: readonly StudyBody[], filled: Filled): void {
  const { from, to, stream, draws, logDrag, regime } = filled;
  const { level } = component;
  const { parameters } = level;
  const points = new DistinctPoints();
  const places = bodies.map(({ streams }) =>
    streams.map(({ section, condition, knots }) => {
      const place = new Int32Array(regimes.length).fill(-1);
      for (const own of new Set(knots.regimes)) place[regimes.indexOf(own)] = points.at(section, condition, own);
      return place;
    }),
  );
  const bodyPoints = new DistinctPoints();
  const shiftPlaces = bodies.map(({ streams }) =>
    streams.map(({ section, condition }) => bodyPoints.add(crisisPoint(errorPoint(section, condition, "critical")))),
  );
  const errors = levelFactorAt(level, points.all);
  const shifts = standardShiftsAt(component.shifts, bodyPoints.all, parameters);
  const size = bodyPoints.all.length;
  const shiftFactor = pivotedCholesky(
    Float64Array.from({ length: size }, (_, i) => shifts.covariance[i * size + i]),
    (j) => shifts.covariance.subarray(j * size, (j + 1) * size),
    LEFT_PART,
  );
  const levelDraw = new Float64Array(errors.rank);
  const answers = new DistinctPoints();
  const answerOf = Int32Array.from(points.all, (point) => answers.add(answerPoint(point)));
  const singleDraw = new Float64Array(answers.all.length);
  const shiftDraw = new Float64Array(shiftFactor.rank);
  for (let k = from; k < to; k++) {
    for (const drawn of [shiftDraw, levelDraw, singleDraw]) {
      for (let i = 0; i < drawn.length; i++) drawn[i] = draws.normal();
    }
    for (let i = 0; i < bodies.length; i++) {
      const s = stream[k];
      const { section, condition, knots } = bodies[i].streams[s];
      const { mean, deviation } = parameters.crisisShift[crisisKind(section.shape, condition.turbulenceIntensity)];
      const at = shiftPlaces[i][s];
      const standard = shifts.mean[at] + rowTimes(shiftFactor.rows, at, shiftDraw);
      const answer = dragAt(knots, Math.log(condition.reynolds) + mean + deviation * standard);
      const state = regimes.indexOf(answer.regime);
      const place = places[i][s][state];
      logDrag[i][k] =
        answer.logDrag +
        errors.mean[place] +
        rowTimes(errors.rows, place, levelDraw) +
        parameters.singleDeviation * singleDraw[answerOf[place]];
      regime[i][k] = state;
    }
  }
}

/** What a single answer has to itself it shares with answers as near as published values that are taken as one. */
function answerPoint(point: ErrorPoint): ErrorPoint {
  const near = (value: number) => Math.round(value / SAME_ANSWER);
  return {
    ...point,
    logReynolds: near(point.logReynolds),
    logRoughness: near(point.logRoughness),
    turbulence: near(point.turbulence),
  };
}

/** Points with the ones that are the same only once. */
class DistinctPoints {
  readonly all: ErrorPoint[] = [];
  readonly #places = new Map<string, number>();

  at(section: SectionPoint, condition: FlowCondition, regime: Regime): number {
    return this.add(errorPoint(section, condition, regime));
  }

  add(point: ErrorPoint): number {
    const key = Object.values(point).join(" ");
    const known = this.#places.get(key);
    if (known !== undefined) return known;
    this.#places.set(key, this.all.length);
    return this.all.push(point) - 1;
  }
}

function rowTimes(rows: Readonly<Float64Array>, row: number, draws: Readonly<Float64Array>): number {
  let sum = 0;
  const start = row * draws.length;
  for (let i = 0; i < draws.length; i++) sum += rows[start + i] * draws[i];
  return sum;
}
