import { findRoot } from "../../numerics/rootFinder";
import { intervalAt } from "../../numerics/tableLookup";
import type { SectionNodes } from "./sectionNodes";

/**
 * Position on a contour between its nodes: a real number p in [0, count), whole at the nodes, counter-clockwise.
 * Arc length between nodes is Hermite-interpolated with ds as its derivative per node step (fourth order).
 */

/** Arc length from the nose at position p, m; p is taken modulo count, so the result is in [0, perimeter). */
export function arcAtPosition(nodes: SectionNodes, p: number): number {
  const { count, arc, ds, perimeter } = nodes;
  const wrapped = p - count * Math.floor(p / count);
  const i = Math.min(Math.floor(wrapped), count - 1);
  const next = i + 1 === count ? 0 : i + 1;
  const u = wrapped - i;
  const end = next === 0 ? perimeter : arc[next];
  const u2 = u * u;
  const u3 = u2 * u;
  return (2 * u3 - 3 * u2 + 1) * arc[i] + (u3 - 2 * u2 + u) * ds[i] + (3 * u2 - 2 * u3) * end + (u3 - u2) * ds[next];
}

/**
 * The same without the wrap: it grows by the perimeter every `count` positions, so that differences along the contour
 * are right wherever they begin.
 */
export function unwrappedArc(nodes: SectionNodes, p: number): number {
  return arcAtPosition(nodes, p) + nodes.perimeter * Math.floor(p / nodes.count);
}

/** The last node at or before an arc length from the nose, m, in [0, perimeter). */
export function nodeBeforeArc({ count, arc }: SectionNodes, arcLength: number): number {
  return intervalAt(arc, arcLength, count);
}

/** Position p of an arc length from the nose, m (any real number, taken modulo the perimeter). */
export function positionAtArc(nodes: SectionNodes, arcLength: number): number {
  const { count, arc, perimeter } = nodes;
  const wrapped = arcLength - perimeter * Math.floor(arcLength / perimeter);
  const node = nodeBeforeArc(nodes, wrapped);
  const end = node + 1 === count ? perimeter : arc[node + 1];
  return findRoot((p) => arcAtPosition(nodes, p) - wrapped, node, node + 1, {
    endValues: [Math.min(0, arc[node] - wrapped), Math.max(0, end - wrapped)],
  });
}

/** Value at position p of a quantity given at the nodes, by the cubic through the four nearest nodes, periodic. */
export function interpolateAtPosition(values: Readonly<Float64Array>, p: number): number {
  const count = values.length;
  const wrapped = p - count * Math.floor(p / count);
  const i = Math.min(Math.floor(wrapped), count - 1);
  const u = wrapped - i;
  const a = values[i === 0 ? count - 1 : i - 1];
  const b = values[i];
  const c = values[(i + 1) % count];
  const d = values[(i + 2) % count];
  return (
    (-u * (u - 1) * (u - 2) * a) / 6 +
    ((u + 1) * (u - 1) * (u - 2) * b) / 2 -
    ((u + 1) * u * (u - 2) * c) / 2 +
    ((u + 1) * u * (u - 1) * d) / 6
  );
}
