import type { SectionNodes } from "../../../shared/engine/geometry/sectionNodes";

/** An arc length brought into [0, perimeter). */
export function wrapArc(arc: number, perimeter: number): number {
  return ((arc % perimeter) + perimeter) % perimeter;
}

/** Point of the contour at an arc length from the nose, m, on the straight line between two nodes. */
export function pointAtArc(nodes: SectionNodes, arc: number): readonly [number, number] {
  const at = wrapArc(arc, nodes.perimeter);
  let low = 0;
  let high = nodes.count;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (nodes.arc[middle] <= at) low = middle;
    else high = middle;
  }
  const next = (low + 1) % nodes.count;
  const end = next === 0 ? nodes.perimeter : nodes.arc[next];
  const share = end > nodes.arc[low] ? (at - nodes.arc[low]) / (end - nodes.arc[low]) : 0;
  return [nodes.x[low] + share * (nodes.x[next] - nodes.x[low]), nodes.y[low] + share * (nodes.y[next] - nodes.y[low])];
}

/**
 * Points from one arc length counter-clockwise to another, interleaved x and y, m: both ends and the nodes between them.
 */
export function arcPolyline(nodes: SectionNodes, from: number, to: number): number[] {
  const start = wrapArc(from, nodes.perimeter);
  const span = wrapArc(to - from, nodes.perimeter);
  const points: number[] = [...pointAtArc(nodes, start)];
  const first = nodes.arc.findIndex((arc) => arc > start);
  const begin = first === -1 ? 0 : first;
  for (let k = 0; k < nodes.count; k++) {
    const node = (begin + k) % nodes.count;
    const along = wrapArc(nodes.arc[node] - start, nodes.perimeter);
    if (along >= span || (k > 0 && along === 0)) break;
    points.push(nodes.x[node], nodes.y[node]);
  }
  points.push(...pointAtArc(nodes, start + span));
  return points;
}

/** Arc length from the nose of the contour node nearest to a point, m. */
export function nearestArc(nodes: SectionNodes, x: number, y: number): number {
  return nodes.arc[nearestNode(nodes, x, y)];
}

/** The contour node nearest to a point. */
export function nearestNode(nodes: SectionNodes, x: number, y: number): number {
  let nearest = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < nodes.count; i++) {
    const distance = (nodes.x[i] - x) ** 2 + (nodes.y[i] - y) ** 2;
    if (distance < least) {
      least = distance;
      nearest = i;
    }
  }
  return nearest;
}
