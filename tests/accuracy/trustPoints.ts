import type { FlowCondition } from "../../shared/engine/condition";
import { referenceWidth } from "../../shared/engine/geometry/referenceWidth";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import type { CrisisKind } from "../../shared/engine/trust/bandTable";
import { crisisKind } from "../../shared/engine/trust/crisisKind";
import { type DragKnots, dragAt } from "../../shared/engine/trust/dragKnots";
import { errorPoint, type SectionPoint, sectionPoint } from "../../shared/engine/trust/errorPoint";
import type { LevelDatum } from "../../shared/engine/trust/levelProcess";
import {
  experimentOf,
  type Facility,
  type Group,
  type PublishedSource,
  type PublishedValue,
  scatterHalfWidth,
} from "../published/publishedValue";
import type { Quantity } from "../published/quantity";
import { type BandPoint, bandPoints } from "./bandPoints";
import { ninetyPercent } from "./leaveOneSourceOut";
import type { Prediction } from "./prediction";
import type { StreamCurve } from "./streamCurve";

/** A published drag coefficient of a section, with all that the error model is to say about it. */
export interface TrustPoint {
  readonly band: BandPoint;
  readonly experiment: string;
  readonly group: Group;
  readonly section: SectionPoint;
  readonly condition: FlowCondition;
  readonly kind: CrisisKind;
  readonly knots: DragKnots;
  /** ln of the measured drag, carried to a free stream where the source did not. */
  readonly logMeasured: number;
  /** Drag in a free stream over that in the source's tunnel, as far as its blockage is known. */
  readonly freeStreamFactor: number;
  /** Standard deviation of the source's own scatter, in ln Cd. */
  readonly scatter: number;
  /** True when no crisis is so near that the regime may be another: such points teach the level. */
  readonly awayFromCrisis: boolean;
}

/** A published Reynolds number of a crisis beside the engine's. */
export interface CrisisPoint {
  readonly experiment: string;
  readonly kind: CrisisKind;
  /** ln(the engine's / published). */
  readonly shift: number;
  readonly scatter: number;
}

/** A point teaches the level when the regime stays the same over this distance in ln Re on both sides. */
const crisisReach: Readonly<Record<CrisisKind, number>> = {
  "circle in a quiet stream": 0.3,
  "circle in a turbulent stream": 0.5,
  "other section": 0.5,
};
/** How far beyond its last point a curve is carried on, as ratios of Reynolds number. */
const beyondEnd = [1.35, 1.8, 2.4] as const;
/** No value is known better than this. */
const leastScatter = 0.01;

/** Every counted drag coefficient of a section that is no bound and that the engine answers. */
export function trustPoints(
  sources: readonly PublishedSource[],
  predictionOf: (quantity: Quantity) => Prediction | undefined,
): TrustPoint[] {
  const facilities = new Map(sources.map(({ name, facility }) => [name, facility]));
  const curves = new Map<StreamCurve, DragKnots>();
  return bandPoints(sources, predictionOf).flatMap((band): TrustPoint[] => {
    const { value, curve, condition, index, state } = band;
    if (value.shownOnly !== undefined || "relativeBelow" in value.scatter) return [];
    const { nodes, incidence } = curve.section;
    const own: DragKnots = {
      logReynolds: Float64Array.of(Math.log(condition.reynolds)),
      logDrag: Float64Array.of(Math.log(state.dragCoefficient)),
      regimes: [state.regime],
    };
    const knots = index === null ? own : (curves.get(curve) ?? curveKnots(curve));
    if (index !== null) curves.set(curve, knots);
    const factor = freeStreamFactor(facilities.get(band.source), value.value);
    const kind = crisisKind(band.section.shape, condition.turbulenceIntensity);
    const here = Math.log(condition.reynolds);
    const regimeAt = (shift: number) => dragAt(knots, here + shift).regime;
    return [
      {
        band,
        experiment: band.experiment,
        group: value.group,
        section: sectionPoint(band.section, nodes, referenceWidth(nodes, incidence)),
        condition,
        kind,
        knots,
        logMeasured: Math.log(value.value * factor),
        freeStreamFactor: factor,
        scatter: scatterDeviation(value),
        awayFromCrisis: [-1, -0.5, 0.5, 1].every((part) => regimeAt(part * crisisReach[kind]) === state.regime),
      },
    ];
  });
}

/** Standard deviation in the logarithm: the stated half-width is read as a 90 % band. */
function scatterDeviation(value: PublishedValue): number {
  return Math.max(leastScatter, scatterHalfWidth(value) / Math.abs(value.value) / ninetyPercent);
}

/**
 * Drag coefficient of a circle in a free stream over that in a closed tunnel that was not corrected for.
 * Source: Allen & Vincenti (1944), NACA TR 782.
 */
function freeStreamFactor(facility: Facility | undefined, measured: number): number {
  if (facility?.blockageCorrected !== false || facility.blockageRatio === null) return 1;
  const ratio = facility.blockageRatio;
  return 1 - (measured * ratio) / 2 - 2.5 * ratio ** 2;
}

/** The rising branch of a curve, carried on beyond its end. */
function curveKnots({ section, conditions, outcomes }: StreamCurve): DragKnots {
  const knots: { reynolds: number; drag: number; regime: DragKnots["regimes"][number] }[] = [];
  outcomes.forEach(({ states, rising }, i) => {
    if (rising === null) return;
    const { dragCoefficient, regime } = states[rising];
    knots.push({ reynolds: conditions[i].reynolds, drag: dragCoefficient, regime });
  });
  const end = conditions[conditions.length - 1];
  for (const ratio of beyondEnd) {
    const { states } = solveCondition(section, { ...end, reynolds: end.reynolds * ratio });
    if (states.length === 0) continue;
    const last = knots[knots.length - 1];
    const { dragCoefficient, regime } = states.find((state) => state.regime === last?.regime) ?? states[0];
    knots.push({ reynolds: end.reynolds * ratio, drag: dragCoefficient, regime });
  }
  return {
    logReynolds: Float64Array.from(knots, ({ reynolds }) => Math.log(reynolds)),
    logDrag: Float64Array.from(knots, ({ drag }) => Math.log(drag)),
    regimes: knots.map(({ regime }) => regime),
  };
}

/** Points of one source at nearly one place are one datum: nearer than this in ln Re and alike otherwise. */
const sameReynolds = 0.2;

/** What the points away from a crisis teach, neighbours on one curve taken together. */
export function levelData(points: readonly TrustPoint[]): LevelDatum[] {
  const data: (LevelDatum & { readonly count: number })[] = [];
  for (const { section, condition, band, knots, logMeasured, scatter, experiment, awayFromCrisis } of points) {
    if (!awayFromCrisis) continue;
    const point = errorPoint(section, condition, band.state.regime);
    const error = logMeasured - dragAt(knots, point.logReynolds).logDrag;
    const near = data.findIndex(
      ({ source, point: other }) =>
        source === experiment &&
        other.regime === point.regime &&
        other.shape === point.shape &&
        other.logRoughness === point.logRoughness &&
        other.turbulence === point.turbulence &&
        other.logLengthToHeight === point.logLengthToHeight &&
        other.cornerRadiusToHeight === point.cornerRadiusToHeight &&
        Math.abs(other.logReynolds - point.logReynolds) < sameReynolds,
    );
    if (near < 0) data.push({ point, error, scatter, source: experiment, count: 1 });
    else {
      const { count, ...rest } = data[near];
      const total = count + 1;
      data[near] = {
        point: { ...rest.point, logReynolds: (rest.point.logReynolds * count + point.logReynolds) / total },
        error: (rest.error * count + error) / total,
        // Mean of `total` values of this scatter.
        scatter: Math.sqrt((rest.scatter ** 2 * count ** 2 + scatter ** 2) / total ** 2),
        source: experiment,
        count: total,
      };
    }
  }
  return data.map(({ count: _, ...datum }) => datum);
}

const crisisQuantities: readonly Quantity["kind"][] = [
  "reynoldsAtDrag",
  "reynoldsAtLowestDrag",
  "criticalReynoldsRatio",
];

/** Every counted critical Reynolds number that the engine answers. */
export function crisisPoints(
  sources: readonly PublishedSource[],
  predictionOf: (quantity: Quantity) => Prediction | undefined,
): CrisisPoint[] {
  return sources.flatMap((source) =>
    source.values.flatMap((value): CrisisPoint[] => {
      const { quantity, shownOnly } = value;
      const predicted = predictionOf(quantity)?.value ?? null;
      if (shownOnly !== undefined || !crisisQuantities.includes(quantity.kind)) return [];
      if (!("section" in quantity) || predicted === null) return [];
      const shape = quantity.section.shape === "circle" ? "circle" : "other";
      return [
        {
          experiment: experimentOf(source),
          kind: crisisKind(shape, quantity.turbulenceIntensity),
          shift: Math.log(predicted / value.value),
          scatter: scatterDeviation(value),
        },
      ];
    }),
  );
}
