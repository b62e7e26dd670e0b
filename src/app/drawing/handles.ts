import type { Design } from "../../../shared/case/design";
import { SMALLEST_GAP_RATIO } from "../../../shared/engine/flow/floorPlane";
import type { SectionNodes } from "../../../shared/engine/geometry/sectionNodes";
import type { RuleWindow } from "../section/ruleWindow";
import { dimension, withDimension } from "../section/sectionFields";
import type { QuantityKind } from "../units/units";
import { nearestArc, pointAtArc } from "./contourArc";

/** A point of the drawing that can be taken hold of. Body axes, m. */
export interface Handle {
  readonly key: string;
  readonly label: string;
  readonly kind: QuantityKind;
  readonly point: readonly [number, number];
  /** SI */
  readonly value: number;
  readonly lowest: number;
  readonly highest: number;
  /** Value that belongs to a point, SI; not yet held to the range. */
  readonly valueAt: (x: number, y: number) => number;
  /** The change of the design that gives the quantity a value. */
  readonly change: (value: number) => Partial<Design>;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly middleX: number;
  readonly middleY: number;
}

/** Held to the handle's range. */
export function heldValue(handle: Handle, value: number): number {
  return Math.min(handle.highest, Math.max(handle.lowest, value));
}

/**
 * The handles of a design. The last solved nodes give their places; the design gives their values; a rule window, when
 * there is one, narrows their ranges.
 */
export function handles(design: Design, nodes: SectionNodes, window: RuleWindow | null = null): Handle[] {
  const box = boundingBox(nodes);
  const list: Handle[] = [];
  const { section } = design;
  const add = (
    key: string,
    label: string,
    point: readonly [number, number],
    range: readonly [number, number],
    valueAt: Handle["valueAt"],
  ) => {
    const value = dimension(section, key);
    if (!Number.isFinite(value)) return;
    const allowed = window?.ranges[key];
    list.push({
      key,
      label,
      kind: "length",
      point,
      value,
      lowest: Math.max(range[0], allowed?.from ?? 0),
      highest: Math.min(range[1], allowed?.to ?? Number.POSITIVE_INFINITY),
      valueAt,
      change: (next) => ({ section: withDimension(section, key, next), sectionName: null }),
    });
  };
  const size: readonly [number, number] = [1e-4, 100];
  add("length", "Length", [box.right, box.middleY], size, (x) => 2 * (x - box.middleX));
  add("height", "Height", [box.middleX, box.top], size, (_, y) => 2 * (y - box.middleY));
  add(
    "diameter",
    "Diameter",
    [box.right, box.middleY],
    size,
    (x, y) => 2 * Math.hypot(x - box.middleX, y - box.middleY),
  );
  add("inscribedDiameter", "Inscribed diameter", [box.middleX, box.top], size, (_, y) => 2 * (y - box.middleY));
  const small = Math.min(dimension(section, "length"), dimension(section, "height"));
  if (section.family === "roundedRectangle") {
    const r = section.edgeRadius;
    add(
      "edgeRadius",
      "Edge radius",
      [box.left + r, box.top - r],
      [0.01 * small, 0.5 * small],
      (x, y) => (x - box.left + box.top - y) / 2,
    );
  }
  if (section.family === "dShape") {
    const r = section.cornerRadius;
    const flat = section.flatSide === "front" ? box.left : box.right;
    const inward = section.flatSide === "front" ? 1 : -1;
    add(
      "cornerRadius",
      "Corner radius",
      [flat + inward * r, box.top - r],
      [0.01 * small, 0.5 * section.height],
      (x, y) => (inward * (x - flat) + box.top - y) / 2,
    );
  }
  if (section.family === "bevelledRectangle") {
    add(
      "bevelLength",
      "Bevel along the stream",
      [box.left + section.bevelLength, box.top],
      [0.01 * small, 0.49 * section.length],
      (x) => x - box.left,
    );
    add(
      "bevelHeight",
      "Bevel across the stream",
      [box.left, box.top - section.bevelHeight],
      [0.01 * small, 0.49 * section.height],
      (_, y) => box.top - y,
    );
  }
  list.push(incidenceHandle(design, nodes, box), ...floorHandle(design, nodes), ...tripHandles(design, nodes));
  return list;
}

/** The arm ahead of the nose that turns the section. */
function incidenceHandle({ incidence }: Design, { centroid }: SectionNodes, box: Box): Handle {
  const arm = 1.55 * Math.max(box.middleX - box.left, box.top - box.middleY);
  return {
    key: "incidence",
    label: "Incidence",
    kind: "angle",
    point: [centroid[0] - arm, centroid[1]],
    value: incidence,
    lowest: -Math.PI / 2,
    highest: Math.PI / 2,
    valueAt: (x, y) => incidence + Math.atan2(y - centroid[1], -(x - centroid[0])),
    change: (next) => ({ incidence: next }),
  };
}

/** The floor itself, below the centroid; it is pulled down from its least gap. A section that lies on it is lifted by the field. */
function floorHandle({ incidence, floorGap }: Design, nodes: SectionNodes): Handle[] {
  if (floorGap === null || floorGap === 0) return [];
  const [upX, upY] = [-Math.sin(incidence), Math.cos(incidence)];
  const heights = Array.from(nodes.x, (x, i) => upX * x + upY * nodes.y[i]);
  const bottom = heights.reduce((least, height) => Math.min(least, height));
  const width = heights.reduce((most, height) => Math.max(most, height)) - bottom;
  const drop = upX * nodes.centroid[0] + upY * nodes.centroid[1] - bottom + floorGap;
  return [
    {
      key: "floorGap",
      label: "Gap to the floor",
      kind: "length",
      point: [nodes.centroid[0] - drop * upX, nodes.centroid[1] - drop * upY],
      value: floorGap,
      lowest: SMALLEST_GAP_RATIO * width,
      highest: 100,
      valueAt: (x, y) => bottom - (upX * x + upY * y),
      change: (next) => ({ floorGap: next }),
    },
  ];
}

function tripHandles({ trips }: Design, nodes: SectionNodes): Handle[] {
  return trips.map((trip, i) => ({
    key: `trip-${i}`,
    label: `Trip ${i + 1}, ${trip.side} side, arc from the nose`,
    kind: "length",
    point: pointAtArc(nodes, trip.side === "lower" ? trip.arc : -trip.arc),
    value: trip.arc,
    lowest: 0.002 * nodes.perimeter,
    highest: 0.49 * nodes.perimeter,
    valueAt: (x, y) => {
      const arc = nearestArc(nodes, x, y);
      return trip.side === "lower" ? arc : nodes.perimeter - arc;
    },
    change: (next) => ({ trips: trips.map((one, k) => (k === i ? { ...one, arc: next } : one)) }),
  }));
}

function boundingBox(nodes: SectionNodes): Box {
  const left = nodes.x.reduce((least, x) => Math.min(least, x), Number.POSITIVE_INFINITY);
  const right = nodes.x.reduce((most, x) => Math.max(most, x), Number.NEGATIVE_INFINITY);
  const bottom = nodes.y.reduce((least, y) => Math.min(least, y), Number.POSITIVE_INFINITY);
  const top = nodes.y.reduce((most, y) => Math.max(most, y), Number.NEGATIVE_INFINITY);
  return { left, right, top, middleX: (left + right) / 2, middleY: (bottom + top) / 2 };
}
