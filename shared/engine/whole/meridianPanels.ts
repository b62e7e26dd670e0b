import { gaussRule } from "../../numerics/gaussRule";
import { type PanelPolynomial, panelPolynomial } from "../../numerics/panelPolynomial";
import { problem, type Result, success } from "../../result";
import type { MeridianCurve } from "./meridianCurve";

/** One panel: the part of a curve from t1 to t2. */
export interface MeridianPanel {
  readonly curve: MeridianCurve;
  readonly t1: number;
  readonly t2: number;
  /** Length, m. */
  readonly length: number;
}

/** A meridian cut into panels with Gauss nodes. Arrays have shape [count], from the lower pole to the upper one. */
export interface MeridianPanels {
  readonly panels: readonly MeridianPanel[];
  /** Nodes on each panel. */
  readonly order: number;
  readonly polynomial: PanelPolynomial;
  readonly weights: Readonly<Float64Array>;
  readonly count: number;
  /** Distance from the axis and place along it, m. */
  readonly r: Float64Array;
  readonly z: Float64Array;
  /** Unit tangent from the lower to the upper pole; the outward normal is (tangentZ, -tangentR). */
  readonly tangentR: Float64Array;
  readonly tangentZ: Float64Array;
  /** Share of the arc length that a node stands for, m. */
  readonly ds: Float64Array;
  /** d s / d x of the panel at the node, x in [-1, 1], m. */
  readonly stretch: Float64Array;
  /** Arc length from the lower pole to the node, and of the whole meridian, m. */
  readonly arc: Float64Array;
  readonly length: number;
  /** Largest distance from the axis, m. */
  readonly radius: number;
}

/** How much longer a panel may be than its neighbour. */
const GROWTH = 2.2;
/** Panels next to an edge are this much longer than the edge's own. */
const STEP_OFF_EDGE = 1.3;

/**
 * @param curves    pieces from the lower pole to the upper one, each beginning where the last ends
 * @param order     nodes on each panel, 4 to 16
 * @param edgePanels panels on a quarter turn of an edge or of a whole spheroid, 1 or more
 */
export function meridianPanels(curves: readonly MeridianCurve[], order = 10, edgePanels = 2): Result<MeridianPanels> {
  const faulty = faultOf(curves);
  if (faulty !== null) return problem("meridian", faulty, "meridian");
  const rule = gaussRule(order);
  const polynomial = panelPolynomial(rule);
  const panels = curves.flatMap((curve, i) =>
    breaksOf(curve, curves[i - 1], curves[i + 1], edgePanels).map(([t1, t2]): MeridianPanel => {
      return { curve, t1, t2, length: lengthBetween(curve, t1, t2, rule.abscissae, rule.weights) };
    }),
  );
  const count = panels.length * order;
  const column = () => new Float64Array(count);
  const [r, z, tangentR, tangentZ, ds, stretch, arc] = [
    column(),
    column(),
    column(),
    column(),
    column(),
    column(),
    column(),
  ];
  let start = 0;
  panels.forEach(({ curve, t1, t2, length }, p) => {
    for (let k = 0; k < order; k++) {
      const i = p * order + k;
      const t = t1 + ((t2 - t1) * (rule.abscissae[k] + 1)) / 2;
      const place = curve.at(t);
      const speed = Math.hypot(place.dr, place.dz);
      r[i] = place.r;
      z[i] = place.z;
      tangentR[i] = place.dr / speed;
      tangentZ[i] = place.dz / speed;
      stretch[i] = (speed * (t2 - t1)) / 2;
      ds[i] = stretch[i] * rule.weights[k];
      arc[i] = start + lengthBetween(curve, t1, t, rule.abscissae, rule.weights);
    }
    start += length;
  });
  const radius = r.reduce((most, each) => Math.max(most, each), 0);
  return success({
    panels,
    order,
    polynomial,
    weights: rule.weights,
    count,
    r,
    z,
    tangentR,
    tangentZ,
    ds,
    stretch,
    arc,
    length: start,
    radius,
  });
}

/** Parameter of a panel's curve at x in [-1, 1]. */
export function panelParameter({ t1, t2 }: MeridianPanel, x: number): number {
  return t1 + ((t2 - t1) * (x + 1)) / 2;
}

/** d f / d s along the meridian of values at the nodes, by each panel's polynomial; shape [count]. */
export function alongMeridian(
  { panels, order, polynomial, stretch }: MeridianPanels,
  f: Readonly<Float64Array>,
): Float64Array {
  const out = new Float64Array(f.length);
  for (let p = 0; p < panels.length; p++) {
    for (let i = 0; i < order; i++) {
      let sum = 0;
      for (let k = 0; k < order; k++) sum += polynomial.differentiation[i * order + k] * f[p * order + k];
      out[p * order + i] = sum / stretch[p * order + i];
    }
  }
  return out;
}

function faultOf(curves: readonly MeridianCurve[]): string | null {
  if (curves.length === 0) return "the meridian has no pieces; it needs one or more";
  const size = curves.reduce((sum, { length }) => sum + length, 0);
  const [first, last] = [curves[0].at(0), curves[curves.length - 1].at(1)];
  if (Math.abs(first.r) > 1e-9 * size || Math.abs(last.r) > 1e-9 * size) {
    return `the meridian begins ${first.r} m and ends ${last.r} m off the axis; both must be on it`;
  }
  for (let i = 1; i < curves.length; i++) {
    const [end, start] = [curves[i - 1].at(1), curves[i].at(0)];
    if (Math.hypot(end.r - start.r, end.z - start.z) > 1e-9 * size) {
      return `piece ${i} ends at r ${end.r} m, z ${end.z} m and the next begins at r ${start.r} m, z ${start.z} m; they must meet`;
    }
  }
  return null;
}

/** Panel ends of a curve: even on what turns, growing from the edges along what is straight. */
function breaksOf(
  curve: MeridianCurve,
  before: MeridianCurve | undefined,
  after: MeridianCurve | undefined,
  edgePanels: number,
): (readonly [number, number])[] {
  const edgeStep = (edge: MeridianCurve | undefined): number =>
    edge === undefined || edge.turn === 0
      ? Number.POSITIVE_INFINITY
      : (STEP_OFF_EDGE * edge.length) / panelsOnTurn(edge, edgePanels);
  let lengths: number[];
  if (curve.turn > 0) {
    lengths = new Array(panelsOnTurn(curve, edgePanels)).fill(1);
  } else {
    lengths = gradedLengths(curve.length, edgeStep(before), edgeStep(after));
  }
  const total = lengths.reduce((sum, each) => sum + each, 0);
  let from = 0;
  return lengths.map((length, i) => {
    const to = i === lengths.length - 1 ? 1 : from + length / total;
    const pair = [from, to] as const;
    from = to;
    return pair;
  });
}

function panelsOnTurn({ turn }: MeridianCurve, edgePanels: number): number {
  return Math.max(1, Math.ceil((edgePanels * turn) / (Math.PI / 2) - 1e-9));
}

/** Panel lengths along a straight piece that grow from the sizes wanted at its two ends; in proportion, not in metres. */
function gradedLengths(length: number, atStart: number, atEnd: number): number[] {
  const front: number[] = [];
  const back: number[] = [];
  let left = length;
  let [nextFront, nextBack] = [atStart, atEnd];
  while (left > 0) {
    const next = Math.min(nextFront, nextBack, length);
    if (next >= 0.8 * left) {
      front.push(left);
      break;
    }
    if (nextFront <= nextBack) {
      front.push(next);
      nextFront *= GROWTH;
    } else {
      back.unshift(next);
      nextBack *= GROWTH;
    }
    left -= next;
  }
  return [...front, ...back];
}

function lengthBetween(
  curve: MeridianCurve,
  t1: number,
  t2: number,
  abscissae: Readonly<Float64Array>,
  weights: Readonly<Float64Array>,
): number {
  let sum = 0;
  for (let k = 0; k < abscissae.length; k++) {
    const { dr, dz } = curve.at(t1 + ((t2 - t1) * (abscissae[k] + 1)) / 2);
    sum += weights[k] * Math.hypot(dr, dz);
  }
  return (sum * (t2 - t1)) / 2;
}
