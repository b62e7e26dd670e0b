import { choleskyOf, solveLowerInPlace } from "../../numerics/cholesky";
import { normalDensity } from "../../statistics/normal";
import type { FlowCondition } from "../condition";
import { crisisKind } from "./crisisKind";
import { type DragKnots, dragAt } from "./dragKnots";
import { sourceCovariance } from "./errorCovariance";
import type { ErrorComponent, ErrorKnowledge } from "./errorKnowledge";
import { errorPoint, type SectionPoint } from "./errorPoint";
import { conditionLevel, type LevelDatum, levelErrorsAt } from "./levelProcess";
import { crisisPoint, standardShiftsAt } from "./shiftProcess";

/** Measured drag of one body in one stream, beside the engine's along its curve. */
export interface MeasuredCurve {
  readonly section: SectionPoint;
  /** Its Reynolds number does not count. */
  readonly condition: FlowCondition;
  readonly knots: DragKnots;
  /** Curves of one source share what it is off by. */
  readonly source: string;
  readonly points: readonly {
    readonly logReynolds: number;
    /** ln of the measured drag coefficient of the endless section in a free stream. */
    readonly logDrag: number;
    /** Standard deviation of the value's own scatter, in ln Cd. */
    readonly scatter: number;
  }[];
}

/** Places of a crisis that are tried, from end to end of its distribution in standard deviations. */
const SHIFT_NODES = 41;
const FURTHEST = 4;
/** Ways that the errors may be are kept up to this many, and down to this probability. */
const MOST_COMPONENTS = 40;
const LEAST_WEIGHT = 1e-4;

/**
 * What is known of the engine's errors once a user's own measurements have been seen: the level process is conditioned on
 * them, each source with its own bias; the place of a crisis is weighed by how likely the points are with it there, so
 * that points about a crisis speak of its place and not of the level. One body after the other; exact but for the places
 * that are tried and for ways that are too unlikely to be kept. Rasmussen & Williams (2006), eq. 2.23 to 2.30.
 */
export function learnErrors(knowledge: ErrorKnowledge, curves: readonly MeasuredCurve[]): ErrorKnowledge {
  return curves.filter(({ points }) => points.length > 0).reduce(learnCurve, knowledge);
}

interface Tried {
  readonly component: ErrorComponent;
  readonly standardShift: number;
  readonly data: readonly LevelDatum[];
  readonly logWeight: number;
}

function learnCurve(knowledge: ErrorKnowledge, curve: MeasuredCurve): ErrorKnowledge {
  const tried = knowledge.flatMap((component) => triedShifts(component, curve));
  const most = Math.max(...tried.map(({ logWeight }) => logWeight));
  const kept = tried
    .map((each) => ({ ...each, weight: Math.exp(each.logWeight - most) }))
    .filter(({ weight }) => weight > LEAST_WEIGHT)
    .sort((a, b) => b.weight - a.weight)
    .slice(0, MOST_COMPONENTS);
  const total = kept.reduce((sum, { weight }) => sum + weight, 0);
  const point = crisisPoint(errorPoint(curve.section, curve.condition, "critical"));
  return kept.map(({ component: { level, shifts }, standardShift, data, weight }) => ({
    weight: weight / total,
    level: conditionLevel([...level.data, ...data], level.parameters),
    shifts: Number.isNaN(standardShift) ? shifts : [...shifts, { point, standardShift }],
  }));
}

/** The places that the crisis of a curve may have, each with the probability of the place and of the points with it. */
function triedShifts(component: ErrorComponent, curve: MeasuredCurve): Tried[] {
  const { level, shifts, weight } = component;
  const { section, condition, knots, points } = curve;
  const { parameters } = level;
  const own = crisisPoint(errorPoint(section, condition, "critical"));
  const standard = standardShiftsAt(shifts, [own], parameters);
  const middle = standard.mean[0];
  const spread = Math.sqrt(standard.covariance[0]);
  const { mean, deviation } = parameters.crisisShift[crisisKind(section.shape, condition.turbulenceIntensity)];
  const at = (standardShift: number) =>
    points.map(({ logReynolds }) => dragAt(knots, logReynolds + mean + deviation * standardShift));
  const nodes = Array.from({ length: SHIFT_NODES }, (_, i) => FURTHEST * ((2 * i) / (SHIFT_NODES - 1) - 1));
  const regimes = new Set(nodes.flatMap((node) => at(middle + spread * node).map(({ regime }) => regime)));
  const tried = (standardShift: number, logPrior: number): Tried => {
    const answers = at(Number.isNaN(standardShift) ? middle : standardShift);
    const data = points.map(
      ({ logReynolds, logDrag, scatter }, i): LevelDatum => ({
        point: errorPoint(section, { ...condition, reynolds: Math.exp(logReynolds) }, answers[i].regime),
        error: logDrag - answers[i].logDrag,
        scatter,
        source: curve.source,
      }),
    );
    const logWeight = Math.log(weight) + logPrior + logLikelihood(component, data);
    return { component, standardShift, data, logWeight };
  };
  // Without a crisis in reach of any point nothing is said of its place.
  if (regimes.size === 1 || spread === 0) return [tried(spread === 0 ? middle : Number.NaN, 0)];
  const total = nodes.reduce((sum, node) => sum + normalDensity(node), 0);
  return nodes.map((node) => tried(middle + spread * node, Math.log(normalDensity(node) / total)));
}

/** ln of the density of measured errors, jointly, before they are known. */
function logLikelihood({ level }: ErrorComponent, data: readonly LevelDatum[]): number {
  const n = data.length;
  const { parameters } = level;
  const { mean, covariance } = levelErrorsAt(
    level,
    data.map(({ point }) => point),
  );
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      covariance[i * n + j] += sourceCovariance(data[i].point.regime, data[j].point.regime, parameters);
    }
    covariance[i * n + i] += data[i].scatter ** 2;
  }
  const factor = choleskyOf(covariance, n);
  const residual = Float64Array.from(data, ({ error }, i) => error - mean[i]);
  solveLowerInPlace(factor, residual);
  let sum = 0;
  for (let i = 0; i < n; i++) sum -= residual[i] ** 2 / 2 + Math.log(factor[i * n + i]);
  return sum;
}
