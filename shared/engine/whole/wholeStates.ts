import { normalQuantile } from "../../statistics/normal";
import { WHOLE_NUMBERS } from "../constants/wholeNumbers";
import type { ConditionedBody, EdgeState, RimState } from "./conditionedFlow";
import { type DrawnFlow, drawnFlows } from "./wholeDraws";
import { WHOLE_ERROR_NAMES, type WholeErrorDraw, type WholeErrorName } from "./wholeErrors";

const LEAST_SHARE = WHOLE_NUMBERS.leastStateShare.value;

/** A coefficient's 90 % band and its mean. */
export interface CoefficientBand {
  readonly low: number;
  readonly expected: number;
  readonly high: number;
}

export type DragPart = "forebody" | "lostSuction" | "base" | "friction";
export const dragParts: readonly DragPart[] = ["forebody", "lostSuction", "base", "friction"];

/** One way in which the flow passes a body, with its share of what is likely. Coefficients on the frontal area. */
export interface WholeState {
  readonly rimState: RimState;
  readonly edgeState: EdgeState;
  readonly share: number;
  /** Azimuth from the front, rad; null where the flow leaves ahead of the rim. */
  readonly rimSeparation: number | null;
  /** False where the wake does not settle: the drag then moves by half with the number of its terms. */
  readonly settled: boolean;
  readonly dragCoefficient: CoefficientBand;
  readonly parts: Readonly<Record<DragPart, CoefficientBand>>;
  readonly basePressure: CoefficientBand;
}

/** All states of a body at one attitude in one stream, and the drag, lift and moment that they make together. */
export interface WholeOutcome {
  /** Most likely first. */
  readonly states: readonly WholeState[];
  readonly dragCoefficient: CoefficientBand;
  readonly lift: CoefficientBand;
  readonly moment: CoefficientBand;
  readonly frontalArea: number;
  readonly crisisReynolds: number;
}

/** Draws from which bands are read; the same for every body. */
const DRAWS = 512;
const TAIL = 0.05;
const BASES: Readonly<Record<WholeErrorName, number>> = {
  wideBasePressure: 2,
  acrossBasePressure: 3,
  narrowedBasePressure: 5,
  rimCrisis: 7,
  edgeBubble: 11,
  lostSuction: 13,
  friction: 17,
  tilt: 19,
  groovedWall: 23,
};

/** Evenly spread draws (Halton 1960): bands of two bodies then differ by the bodies alone. */
export const standardDraws: readonly WholeErrorDraw[] = Array.from({ length: DRAWS }, (_, i) =>
  Object.fromEntries(WHOLE_ERROR_NAMES.map((name) => [name, normalQuantile(haltonPoint(i + 1, BASES[name]))])),
) as unknown as readonly WholeErrorDraw[];

/** The states of a body: what it does in the standard draws, gathered by rim and edge. */
export function wholeStates(body: ConditionedBody): WholeOutcome {
  const byState = new Map<string, DrawnFlow[]>();
  const [drags, lifts, moments] = [new Float64Array(DRAWS), new Float64Array(DRAWS), new Float64Array(DRAWS)];
  standardDraws.forEach((draw, i) => {
    for (const flow of drawnFlows(body, draw)) {
      const key = `${flow.rimState} ${flow.edgeState}`;
      const group = byState.get(key);
      if (group === undefined) byState.set(key, [flow]);
      else group.push(flow);
      drags[i] += flow.share * dragOf(flow);
      lifts[i] += flow.share * flow.lift;
      moments[i] += flow.share * flow.moment;
    }
  });
  const states = [...byState.values()].map(stateOf).filter(({ share }) => share >= LEAST_SHARE);
  const even = new Float64Array(DRAWS).fill(1);
  return {
    states: states.sort((a, b) => b.share - a.share),
    dragCoefficient: bandOf(drags, even),
    lift: bandOf(lifts, even),
    moment: bandOf(moments, even),
    frontalArea: body.frontalArea,
    crisisReynolds: body.crisisReynolds,
  };
}

function dragOf({ forebody, lostSuction, base, friction }: DrawnFlow): number {
  return forebody + lostSuction + base + friction;
}

function stateOf(flows: readonly DrawnFlow[]): WholeState {
  const weights = Float64Array.from(flows, ({ share }) => share);
  const band = (value: (flow: DrawnFlow) => number) => bandOf(Float64Array.from(flows, value), weights);
  const [{ rimState, edgeState, branch }] = flows;
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return {
    rimState,
    edgeState,
    share: total / DRAWS,
    rimSeparation:
      branch.rimSeparation === null
        ? null
        : flows.reduce((sum, flow) => sum + (flow.share / total) * (flow.branch.rimSeparation ?? 0), 0),
    settled: flows.every((flow) => flow.branch.settled),
    dragCoefficient: band(dragOf),
    parts: {
      forebody: band(({ forebody }) => forebody),
      lostSuction: band(({ lostSuction }) => lostSuction),
      base: band(({ base }) => base),
      friction: band(({ friction }) => friction),
    },
    basePressure: band(({ basePressure }) => basePressure),
  };
}

/** Mean and 5 and 95 % quantiles of weighted values. */
function bandOf(values: Float64Array, weights: Float64Array): CoefficientBand {
  const order = Array.from(values.keys()).sort((a, b) => values[a] - values[b]);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const expected = values.reduce((sum, value, i) => sum + (weights[i] / total) * value, 0);
  const quantile = (share: number) => {
    let passed = 0;
    for (const i of order) {
      passed += weights[i];
      if (passed >= share * total) return values[i];
    }
    return values[order[order.length - 1]];
  };
  return {
    low: Math.min(expected, quantile(TAIL)),
    expected,
    high: Math.max(expected, quantile(1 - TAIL)),
  };
}

/** The i-th number of the van der Corput sequence. Source: Halton (1960), Numer. Math. 2, 84. */
function haltonPoint(i: number, base: number): number {
  let [fraction, result, left] = [1, 0, i];
  while (left > 0) {
    fraction /= base;
    result += fraction * (left % base);
    left = Math.floor(left / base);
  }
  return result;
}
