import type { OutlineSide } from "../engine/geometry/sectionSpec";
import { problem, type Result, success } from "../result";
import { splineChain } from "./bSpline";
import { ellipseSides } from "./ellipseSides";
import { type DxfRecord, numberOf, numbersOf } from "./groupCodes";
import { type Chain, mostDrawnSides, type Place } from "./outline";
import { curveThrough } from "./splineSides";

const degree = Math.PI / 180;

/** The lines of a DXF drawing; those whose ends are free are still apart. */
export interface DxfChains {
  readonly chains: readonly Chain[];
  /** How many entities of each kind were passed over. */
  readonly passedOver: ReadonlyMap<string, number>;
}

/**
 * Reads LINE, ARC, CIRCLE, ELLIPSE, SPLINE, LWPOLYLINE and POLYLINE (with its VERTEX records, ended or not).
 * Source: DXF Reference, Autodesk (2011), ENTITIES section: group codes of each.
 */
export function dxfChains(entities: readonly DxfRecord[]): Result<DxfChains> {
  const chains: Chain[] = [];
  const passedOver = new Map<string, number>();
  let sides = 0;
  for (let i = 0; i < entities.length; i++) {
    const entity = entities[i];
    let chain: Result<Chain | null>;
    if (entity.type === "POLYLINE") {
      const vertices: DxfRecord[] = [];
      while (entities[i + 1]?.type === "VERTEX") vertices.push(entities[++i]);
      chain = success(polylineChain(entity, vertices.filter(isOnCurve).map(vertexOf)));
    } else if (entity.type === "LWPOLYLINE") chain = success(polylineChain(entity, lightVertices(entity)));
    else {
      const read = readers[entity.type];
      chain = read === undefined ? success(null) : read(entity);
      if (read === undefined && entity.type !== "SEQEND" && entity.type !== "VERTEX") {
        passedOver.set(entity.type, (passedOver.get(entity.type) ?? 0) + 1);
      }
    }
    if (!chain.ok) return chain;
    if (chain.value === null || chain.value.sides.length === 0) continue;
    sides += chain.value.sides.length;
    if (sides > mostDrawnSides) {
      return problem("outline", `the drawing has more than ${mostDrawnSides} lines; leave only the outline in it`);
    }
    if (!hasNumbers(chain.value)) {
      return problem(
        "outline",
        `entity ${i + 1} of the drawing, ${entity.type}, has a coordinate that is not a finite number`,
      );
    }
    chains.push(inOwnPlane.has(entity.type) && isTurnedOver(entity) ? turnedOver(chain.value) : chain.value);
  }
  return success({ chains, passedOver });
}

const readers: Readonly<Record<string, (entity: DxfRecord) => Result<Chain | null>>> = {
  LINE: (entity) => success({ sides: [{ from: placeOf(entity, 10) }], end: placeOf(entity, 11) }),
  CIRCLE: (entity) => success(arcChain(entity, 0, 2 * Math.PI)),
  ARC: (entity) => {
    const start = numberOf(entity, 50) * degree;
    return success(arcChain(entity, start, turnFrom(start, numberOf(entity, 51) * degree)));
  },
  ELLIPSE: (entity) => {
    const centre = placeOf(entity, 10);
    const a = placeOf(entity, 11);
    const share = numberOf(entity, 40) * (isTurnedOver(entity) ? -1 : 1);
    const start = numberOf(entity, 41, 0);
    return success(
      ellipseSides(centre, a, [-a[1] * share, a[0] * share], start, turnFrom(start, numberOf(entity, 42, 2 * Math.PI))),
    );
  },
  SPLINE: (entity) => {
    const controls = placesOf(entity, 10);
    if (controls.length === 0) {
      const through = placesOf(entity, 11);
      return through.length < 2 ? success(null) : success(curveThrough(through));
    }
    const given = numbersOf(entity, 41);
    return splineChain({
      degree: numberOf(entity, 71, 3),
      knots: numbersOf(entity, 40),
      controls,
      weights: given.length === controls.length ? given : controls.map(() => 1),
    });
  },
};

/** Counter-clockwise from one angle to another, rad, above 0; all the way round where they are the same. */
function turnFrom(start: number, end: number): number {
  const turn = (end - start) % (2 * Math.PI);
  return turn > 1e-9 ? turn : turn + 2 * Math.PI;
}

function arcChain(entity: DxfRecord, start: number, turn: number): Chain {
  const radius = numberOf(entity, 40);
  return ellipseSides(placeOf(entity, 10), [radius, 0], [0, radius], start, turn);
}

interface Vertex {
  readonly place: Place;
  readonly bulge: number;
}

function lightVertices({ groups }: DxfRecord): Vertex[] {
  const vertices: { x: number; y: number; bulge: number }[] = [];
  for (const { code, value } of groups) {
    const last = vertices[vertices.length - 1];
    if (code === 10) vertices.push({ x: Number(value), y: Number.NaN, bulge: 0 });
    else if (last !== undefined && code === 20) last.y = Number(value);
    else if (last !== undefined && code === 42) last.bulge = Number(value);
  }
  return vertices.map(({ x, y, bulge }) => ({ place: [x, y], bulge }));
}

function vertexOf(record: DxfRecord): Vertex {
  return { place: placeOf(record, 10), bulge: numberOf(record, 42, 0) };
}

/** Control points of a fitted polyline (flag 16) are not on it. */
function isOnCurve(record: DxfRecord): boolean {
  return (numberOf(record, 70, 0) & 16) === 0;
}

function polylineChain(entity: DxfRecord, vertices: readonly Vertex[]): Chain | null {
  if (vertices.length < 2) return null;
  const isClosed = (numberOf(entity, 70, 0) & 1) === 1;
  const sides = vertices.map(
    ({ place, bulge }): OutlineSide => (bulge === 0 ? { from: place } : { from: place, bulge }),
  );
  return isClosed
    ? { sides, end: vertices[0].place }
    : { sides: sides.slice(0, -1), end: vertices[vertices.length - 1].place };
}

function placeOf(record: DxfRecord, code: number): Place {
  return [numberOf(record, code), numberOf(record, code + 10)];
}

function placesOf(record: DxfRecord, code: number): Place[] {
  const ys = numbersOf(record, code + 10);
  return numbersOf(record, code).map((x, i): Place => [x, ys[i] ?? Number.NaN]);
}

/** Whether the entity's plane is seen from behind: then its own x points to the left. */
function isTurnedOver(entity: DxfRecord): boolean {
  return numberOf(entity, 230, 1) < 0;
}

/** Entities with coordinates of their own plane; the others give those of the drawing. */
const inOwnPlane = new Set(["LWPOLYLINE", "POLYLINE", "ARC", "CIRCLE"]);

function turnedOver({ sides, end }: Chain): Chain {
  return {
    sides: sides.map(({ from, bulge }) => ({
      from: [-from[0], from[1]],
      ...(bulge === undefined ? {} : { bulge: -bulge }),
    })),
    end: [-end[0], end[1]],
  };
}

function hasNumbers({ sides, end }: Chain): boolean {
  return (
    end.every(Number.isFinite) &&
    sides.every(({ from, bulge = 0, controls }) => [...from, bulge, ...(controls ?? []).flat()].every(Number.isFinite))
  );
}
