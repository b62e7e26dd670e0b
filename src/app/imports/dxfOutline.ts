import DxfParser, { type IEntity, type ILwpolylineEntity, type IPolylineEntity } from "dxf-parser";
import { problem, type Result } from "../../../shared/result";
import { largestImportBytes, makeOutline, type Outline } from "./outline";

interface Corner {
  readonly x: number;
  readonly y: number;
  /** Tangent of a quarter of the arc's angle to the next corner; positive counter-clockwise (DXF group 42). */
  readonly bulge?: number;
}

/** DXF header variable $INSUNITS. */
const unitOfCode: Readonly<Record<number, Outline["unitKey"]>> = { 1: "in", 4: "mm", 5: "cm", 6: "m" };

/** Reads the first closed polyline of a DXF drawing, arcs between its corners included. */
export function dxfOutline(text: string): Result<Outline> {
  if (text.length > largestImportBytes) {
    return problem("import", `The file has ${text.length} characters; at most ${largestImportBytes} are read.`);
  }
  let entities: readonly IEntity[];
  let unitCode: unknown;
  try {
    const drawing = new DxfParser().parseSync(text);
    if (drawing === null) return problem("import", "The file is no DXF drawing.");
    entities = drawing.entities;
    unitCode = drawing.header?.$INSUNITS;
  } catch {
    return problem("import", "The file could not be read as a DXF drawing (text DXF is needed, not binary).");
  }
  const polylines = entities.filter(isPolyline).filter((polyline) => polyline.vertices.length >= 2);
  const [chosen] = [...polylines].sort((a, b) => Number(isClosed(b)) - Number(isClosed(a)));
  if (chosen === undefined) {
    return problem(
      "import",
      `The drawing has ${entities.length} entities and no polyline; draw the outline as one closed polyline.`,
    );
  }
  const said = polylines.length > 1 ? [`The drawing has ${polylines.length} polylines; one was read.`] : [];
  if (!isClosed(chosen)) said.push("The polyline is open; its ends were joined.");
  return makeOutline(walk(chosen.vertices), unitOfCode[Number(unitCode)] ?? null, said);
}

function isPolyline(entity: IEntity): entity is ILwpolylineEntity | IPolylineEntity {
  return entity.type === "LWPOLYLINE" || entity.type === "POLYLINE";
}

function isClosed(polyline: ILwpolylineEntity | IPolylineEntity): boolean {
  const { vertices } = polyline;
  const first = vertices[0];
  const last = vertices[vertices.length - 1];
  return polyline.shape === true || (first.x === last.x && first.y === last.y);
}

/** Corners with the arcs between them sampled every 7.5 degrees. */
function walk(corners: readonly Corner[]): [number, number][] {
  const points: [number, number][] = [];
  corners.forEach((from, i) => {
    const to = corners[(i + 1) % corners.length];
    points.push([from.x, from.y]);
    const bulge = from.bulge ?? 0;
    const angle = 4 * Math.atan(bulge);
    const chord = Math.hypot(to.x - from.x, to.y - from.y);
    if (bulge === 0 || chord === 0) return;
    const radius = chord / (2 * Math.sin(Math.abs(angle) / 2));
    const apothem = radius * Math.cos(Math.abs(angle) / 2) * Math.sign(bulge);
    const centreX = (from.x + to.x) / 2 - (apothem * (to.y - from.y)) / chord;
    const centreY = (from.y + to.y) / 2 + (apothem * (to.x - from.x)) / chord;
    const start = Math.atan2(from.y - centreY, from.x - centreX);
    const steps = Math.max(2, Math.ceil(Math.abs(angle) / (Math.PI / 24)));
    for (let k = 1; k < steps; k++) {
      const at = start + (angle * k) / steps;
      points.push([centreX + radius * Math.cos(at), centreY + radius * Math.sin(at)]);
    }
  });
  return points;
}
