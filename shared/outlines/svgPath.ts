import { SVGPathData } from "svg-pathdata";
import type { OutlineSide } from "../engine/geometry/sectionSpec";
import { problem, type Result, success } from "../result";
import { curveSide } from "./curveSide";
import { ellipseSides } from "./ellipseSides";
import { type Chain, mostDrawnSides, type Place } from "./outline";
import { type Matrix, moved, turned } from "./svgTransform";

/** The parts of a path (library svg-pathdata), moved by a matrix: lines and arcs of circles as they are, all else as cubic curves. */
export function pathChains(text: string, matrix: Matrix): Result<Chain[]> {
  let commands: SVGPathData["commands"];
  try {
    commands = new SVGPathData(text).toAbs().normalizeHVZ(false).normalizeST().commands;
  } catch {
    const start = JSON.stringify(text.trim().slice(0, 20));
    return problem("outline", `the path that starts with ${start} could not be read; check its commands and numbers`);
  }
  if (commands.length > mostDrawnSides) {
    return problem("outline", `a path has ${commands.length} commands; it must have at most ${mostDrawnSides}`);
  }
  const chains: Chain[] = [];
  let sides: OutlineSide[] = [];
  let start: Place = [0, 0];
  let here: Place = [0, 0];
  const finish = () => {
    if (sides.length > 0) chains.push({ sides, end: moved(matrix, here) });
    sides = [];
  };
  const at = (x: number, y: number): Place => moved(matrix, [x, y]);
  for (const command of commands) {
    const from = moved(matrix, here);
    switch (command.type) {
      case SVGPathData.MOVE_TO:
        finish();
        here = [command.x, command.y];
        start = here;
        break;
      case SVGPathData.CLOSE_PATH:
        if (here[0] !== start[0] || here[1] !== start[1]) sides.push({ from });
        here = start;
        finish();
        break;
      case SVGPathData.LINE_TO:
        sides.push({ from });
        here = [command.x, command.y];
        break;
      case SVGPathData.CURVE_TO:
        sides.push(curveSide(from, at(command.x1, command.y1), at(command.x2, command.y2), at(command.x, command.y)));
        here = [command.x, command.y];
        break;
      case SVGPathData.QUAD_TO: {
        // A parabola as a cubic: controls at two thirds of the way to its own.
        const middle = at(command.x1, command.y1);
        const to = at(command.x, command.y);
        const third = (end: Place): Place => [
          end[0] + (2 / 3) * (middle[0] - end[0]),
          end[1] + (2 / 3) * (middle[1] - end[1]),
        ];
        sides.push(curveSide(from, third(from), third(to), to));
        here = [command.x, command.y];
        break;
      }
      case SVGPathData.ARC: {
        const to: Place = [command.x, command.y];
        const arc = arcBetween(here, to, command, matrix);
        sides.push(...(arc ?? [{ from }]));
        here = to;
        break;
      }
      default:
        return problem("outline", "a path has a command that is not understood");
    }
  }
  finish();
  return success(chains);
}

interface ArcCommand {
  readonly rX: number;
  readonly rY: number;
  readonly xRot: number;
  readonly sweepFlag: 0 | 1;
  readonly lArcFlag: 0 | 1;
}

/**
 * The arc of an ellipse between two places; null where it is a straight line or nothing.
 * Source: W3C, Scalable Vector Graphics 1.1 (2nd ed., 2011), appendix F.6.5 and F.6.6.
 */
function arcBetween(from: Place, to: Place, command: ArcCommand, matrix: Matrix): readonly OutlineSide[] | null {
  let [rx, ry] = [Math.abs(command.rX), Math.abs(command.rY)];
  if (from[0] === to[0] && from[1] === to[1]) return [];
  if (!(rx > 0 && ry > 0)) return null;
  const phi = (command.xRot * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(phi), Math.sin(phi)];
  const [halfX, halfY] = [(from[0] - to[0]) / 2, (from[1] - to[1]) / 2];
  const [x, y] = [cosine * halfX + sine * halfY, cosine * halfY - sine * halfX];
  const tooSmall = (x / rx) ** 2 + (y / ry) ** 2;
  if (tooSmall > 1) {
    rx *= Math.sqrt(tooSmall);
    ry *= Math.sqrt(tooSmall);
  }
  const share = (x / rx) ** 2 + (y / ry) ** 2;
  const reach = Math.sqrt(Math.max(0, 1 / share - 1)) * (command.lArcFlag === command.sweepFlag ? -1 : 1);
  const [cx, cy] = [(reach * rx * y) / ry, (-reach * ry * x) / rx];
  const centre: Place = [
    cosine * cx - sine * cy + (from[0] + to[0]) / 2,
    sine * cx + cosine * cy + (from[1] + to[1]) / 2,
  ];
  const start = Math.atan2((y - cy) / ry, (x - cx) / rx);
  const end = Math.atan2((-y - cy) / ry, (-x - cx) / rx);
  const full = 2 * Math.PI;
  const forward = end - start - full * Math.floor((end - start) / full);
  const turn = command.sweepFlag === 1 ? forward : forward - full;
  if (!Number.isFinite(turn) || turn === 0) return null;
  const a = turned(matrix, [cosine * rx, sine * rx]);
  const b = turned(matrix, [-sine * ry, cosine * ry]);
  const { sides } = ellipseSides(moved(matrix, centre), a, b, start, turn);
  // The start as it was given, without the rounding of the centre.
  return sides.map((side, i) => (i === 0 ? { ...side, from: moved(matrix, from) } : side));
}
