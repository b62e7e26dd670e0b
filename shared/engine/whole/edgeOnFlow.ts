import { valueInTable } from "../../numerics/tableLookup";
import { WHOLE_NUMBERS } from "../constants/wholeNumbers";
import { baseBand, speedRatioOf } from "./baseBand";
import { azimuthAtArc, type BodyLine, edgeLine, rimLine } from "./bodyLayers";
import { roundLine, separationLine } from "./separationFamily";
import { type StreamGrid, streamGrid } from "./streamGrid";
import { type SurfaceLine, surfaceLines } from "./surfaceLines";
import { type ForceParts, mixedNodes, NODE_SPEEDS, type WakeRow, wakeRow } from "./wakeRow";
import type { WholeBody } from "./wholeBody";
import { type WholeWake, wakeOf, wakeResponses } from "./wholeWake";

/** Azimuths of the rim's separation that are solved, rad. */
const AZIMUTHS = [66, 74, 82, 90, 98, 108, 118, 126, 134].map((degrees) => (degrees * Math.PI) / 180);
/** Up to here a laminar layer is looked for, and from here a turbulent one. */
const LAST_LAMINAR = 5;
const FIRST_TURBULENT = 2;
/** Base pressures at which the laminar layer is followed. */
const LAMINAR_BASES = [-0.2, -0.32, -0.44, -0.6];
const SUCTIONS = LAMINAR_BASES.map((Cpb) => -Cpb);
/** Directions in which lines leave the front point, rad: the rim, and over the edge. */
export const LINE_ANGLES = [0, 0.4, 0.8, 1.2, Math.PI / 2] as const;
/** The rim's layer is followed this far behind an assumed separation, so that one a little later is seen too, rad. */
export const BEHIND_SEPARATION = Math.PI / 15;

/** One separation line of a scan with what its layers need. */
export interface ScanRow extends WakeRow {
  readonly azimuth: number;
  /** Rim line with a turned rim's base pressure; null ahead of where one is looked for. */
  readonly turnedRim: BodyLine | null;
}

/** A line over the edge and the face, with the width of the strip that it stands for, rad at the front point. */
export interface EdgeStrip extends BodyLine {
  readonly width: number;
}

/** The flow along the mid-plane of a body as far as it depends on no Reynolds number. */
export interface EdgeOnFlow {
  readonly body: WholeBody;
  readonly grid: StreamGrid;
  readonly across: number;
  readonly rows: readonly ScanRow[];
  /** Laminar separation on the rim at the expected base pressure, rad. */
  readonly laminarAzimuth: number;
  /** Forces with a laminar rim over k, the line moving with it. */
  readonly laminar: readonly ForceParts[];
  /** The wake whose rim separates there, and its lines at {@link LINE_ANGLES}; null where a line does not go the way. */
  readonly laminarWake: WholeWake;
  readonly rim: BodyLine | null;
  readonly edges: readonly EdgeStrip[];
  /** Wakes that are open from the front edge, rim laminar and turned; null of a body without edges. */
  readonly open: { readonly laminar: WakeRow; readonly turned: WakeRow } | null;
}

const TURNED_AZIMUTH = WHOLE_NUMBERS.turnedAzimuth.value;

/** Solves the flow along the mid-plane (across the axis) over all places where the rim may separate. */
export function edgeOnFlow(body: WholeBody): EdgeOnFlow {
  const grid = streamGrid(body.flow, body.shape, 0);
  const across = body.edges === null ? 0 : 1;
  const lengthRatio = body.thickness / body.diameter;
  const lineAt = (azimuth: number) =>
    body.edges === null
      ? roundLine(azimuth)
      : separationLine(grid, body.edges, { rim: azimuth, lowerFace: true, upperFace: true });
  const expectedBase = (baseShare: number) => baseBand({ across, lengthRatio, baseShare }).expected;
  const laminarResiduals: number[][] = [];
  const rows = AZIMUTHS.map((azimuth, i): ScanRow => {
    const row = wakeRow(grid, lineAt(azimuth));
    const rimAt = (speedRatio: number) =>
      rimLine(body, equatorLine(body, wakeOf(row.responses, speedRatio)), azimuth + BEHIND_SEPARATION);
    if (i <= LAST_LAMINAR) {
      laminarResiduals.push(LAMINAR_BASES.map((Cpb) => laminarResidual(rimAt(speedRatioOf(Cpb)), azimuth)));
    }
    const turnedRim = i >= FIRST_TURBULENT ? rimAt(speedRatioOf(expectedBase(row.baseShare))) : null;
    return { ...row, azimuth, turnedRim };
  });
  const laminarAt = (Cpb: number) => {
    return crossing(laminarResiduals.map((residuals) => valueInTable(SUCTIONS, residuals, -Cpb)));
  };
  const laminarAzimuth = azimuthAt(laminarAt(expectedBase(1)));
  // The row's own nodes stand at other base pressures, and the layer leaves elsewhere at each.
  const laminar = rows[0].nodes.map((_, node) => {
    const place = laminarAt(NODE_BASES[node]);
    return betweenRows(rows, place)[node];
  });
  const laminarWake = wakeOf(wakeResponses(grid, lineAt(laminarAzimuth)), speedRatioOf(expectedBase(1)));
  const rim = rimLine(body, equatorLine(body, laminarWake), laminarAzimuth + BEHIND_SEPARATION);
  const lines =
    body.edges === null
      ? []
      : surfaceLines(body.shape, laminarWake.field, FRONT, LINE_ANGLES.slice(1), edgeReach(body));
  const { edges } = body;
  return {
    body,
    grid,
    across,
    rows,
    laminarAzimuth,
    laminar,
    laminarWake,
    rim,
    edges: edges === null ? [] : edgeStrips(lines, (line) => edgeLine(body, edges, line, 0)),
    open:
      edges === null
        ? null
        : {
            laminar: wakeRow(
              grid,
              separationLine(grid, edges, { rim: laminarAzimuth, lowerFace: body.floorGap !== null, upperFace: false }),
            ),
            turned: wakeRow(
              grid,
              separationLine(grid, edges, { rim: TURNED_AZIMUTH, lowerFace: body.floorGap !== null, upperFace: false }),
            ),
          },
  };
}

/** Strips of lines at {@link LINE_ANGLES} but the first, where they go over the edge; each reaches half-way to its neighbours. */
export function edgeStrips(lines: readonly SurfaceLine[], over: (line: SurfaceLine) => BodyLine | null): EdgeStrip[] {
  return lines.flatMap((line, i) => {
    const own = over(line);
    const from = (LINE_ANGLES[i] + LINE_ANGLES[i + 1]) / 2;
    const to = i + 2 < LINE_ANGLES.length ? (LINE_ANGLES[i + 1] + LINE_ANGLES[i + 2]) / 2 : LINE_ANGLES[i + 1];
    return own === null ? [] : [{ ...own, width: to - from }];
  });
}

export const FRONT = [-1, 0, 0] as const;
/** Cpb of the nodes of a row. */
const NODE_BASES = NODE_SPEEDS.map((speedRatio) => 1 - speedRatio ** 2);
/** How far a line is followed, over the radius: round the rim to the last azimuth. */
const REACH = 2.7;

function equatorLine({ shape }: WholeBody, wake: WholeWake) {
  return surfaceLines(shape, wake.field, FRONT, [0], REACH)[0];
}

/** Angle by which the laminar layer leaves behind the assumed azimuth, rad. */
function laminarResidual(rim: BodyLine | null, azimuth: number): number {
  if (rim === null) return Number.NEGATIVE_INFINITY;
  const { laminar, arc, count } = rim.stations;
  if (!Number.isFinite(laminar.separation)) return BEHIND_SEPARATION;
  const i = Math.min(count - 2, Math.floor(laminar.separation));
  return azimuthAtArc(rim, arc[i] + (laminar.separation - i) * (arc[i + 1] - arc[i])) - azimuth;
}

/** Fractional row where residuals fall through 0 first; the first row where all are below, the last where all are above. */
function crossing(residuals: readonly number[]): number {
  if (!(residuals[0] > 0)) return 0;
  for (let i = 1; i < residuals.length; i++) {
    if (!(residuals[i] > 0)) return i - 1 + residuals[i - 1] / (residuals[i - 1] - Math.max(residuals[i], -1));
  }
  return residuals.length - 1;
}

/** Azimuth at a fractional row, rad. */
export function azimuthAt(place: number): number {
  const i = Math.min(AZIMUTHS.length - 2, Math.floor(place));
  return AZIMUTHS[i] + (place - i) * (AZIMUTHS[i + 1] - AZIMUTHS[i]);
}

/** Fractional row of an azimuth, rad. */
export function rowAt(azimuth: number): number {
  return valueInTable(
    AZIMUTHS,
    AZIMUTHS.map((_, i) => i),
    azimuth,
  );
}

/** Forces and the base's share between the rows of a scan. */
export function betweenRows(rows: readonly WakeRow[], place: number): readonly ForceParts[] {
  const i = Math.min(rows.length - 2, Math.floor(place));
  return mixedNodes(rows[i].nodes, rows[i + 1].nodes, place - i);
}

export function baseShareAt(rows: readonly WakeRow[], place: number): number {
  const i = Math.min(rows.length - 2, Math.floor(place));
  return rows[i].baseShare + (place - i) * (rows[i + 1].baseShare - rows[i].baseShare);
}

/** First row of the scan that a turbulent layer is looked for on. */
export const firstTurbulentRow = FIRST_TURBULENT;

/** Length to follow a line over the edge and the face, over the radius. */
export function edgeReach({ thickness, diameter }: WholeBody): number {
  return FACE_REACH + (1.3 * thickness) / diameter;
}
const FACE_REACH = 2.9;
