import type { SectionNodes } from "../../shared/engine/geometry/sectionNodes";

/**
 * The nodes of the mirror image in the x axis (y becomes -y). The order is reversed too, so that the walk stays
 * counter-clockwise and starts at the same node 0.
 */
export function mirrorNodes(nodes: SectionNodes): SectionNodes {
  const { count, perimeter } = nodes;
  const pick = (values: Float64Array, sign: number) => values.map((_, i) => sign * values[i === 0 ? 0 : count - i]);
  return {
    ...nodes,
    x: pick(nodes.x, 1),
    y: pick(nodes.y, -1),
    tangentX: pick(nodes.tangentX, -1),
    tangentY: pick(nodes.tangentY, 1),
    ds: pick(nodes.ds, 1),
    arc: nodes.arc.map((_, i) => (i === 0 ? 0 : perimeter - nodes.arc[count - i])),
    curvature: pick(nodes.curvature, 1),
    centroid: [nodes.centroid[0], -nodes.centroid[1]],
  };
}

/**
 * The nodes turned counter-clockwise about the origin by an angle, rad. Node 0 and the arc lengths stay with the body,
 * so node 0 is the nose of the section as it was; a turned section no longer counts as mirror-symmetric.
 */
export function rotateNodes(nodes: SectionNodes, angle: number): SectionNodes {
  if (!Number.isFinite(angle)) throw new RangeError(`angle is ${angle}; it must be a finite number of radians.`);
  const cosine = Math.cos(angle);
  const sine = Math.sin(angle);
  const across = (u: Float64Array, v: Float64Array) => u.map((_, i) => cosine * u[i] - sine * v[i]);
  const up = (u: Float64Array, v: Float64Array) => u.map((_, i) => sine * u[i] + cosine * v[i]);
  const [x, y] = nodes.centroid;
  return {
    ...nodes,
    x: across(nodes.x, nodes.y),
    y: up(nodes.x, nodes.y),
    tangentX: across(nodes.tangentX, nodes.tangentY),
    tangentY: up(nodes.tangentX, nodes.tangentY),
    centroid: [cosine * x - sine * y, sine * x + cosine * y],
    mirrorSymmetric: nodes.mirrorSymmetric && angle === 0,
  };
}

/** The nodes moved along x and y, m. */
export function moveNodes(nodes: SectionNodes, alongX: number, alongY: number): SectionNodes {
  const [x, y] = nodes.centroid;
  return {
    ...nodes,
    x: nodes.x.map((value) => value + alongX),
    y: nodes.y.map((value) => value + alongY),
    centroid: [x + alongX, y + alongY],
    mirrorSymmetric: nodes.mirrorSymmetric && alongY === 0,
  };
}

/** The nodes with every length multiplied by a factor above 0 about the origin. */
export function scaleNodes(nodes: SectionNodes, factor: number): SectionNodes {
  if (!(factor > 0 && factor < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`factor is ${factor}; it must be above 0 and finite.`);
  }
  const scaled = (values: Float64Array) => values.map((value) => factor * value);
  return {
    ...nodes,
    x: scaled(nodes.x),
    y: scaled(nodes.y),
    ds: scaled(nodes.ds),
    arc: scaled(nodes.arc),
    curvature: nodes.curvature.map((value) => value / factor),
    perimeter: factor * nodes.perimeter,
    area: factor * factor * nodes.area,
    centroid: [factor * nodes.centroid[0], factor * nodes.centroid[1]],
  };
}
