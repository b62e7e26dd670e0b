import { sidePoints } from "../engine/geometry/outlineSides";
import { mostSides } from "../engine/geometry/roundedPolygon";
import type { OutlineSide } from "../engine/geometry/sectionSpec";
import { sidePath } from "../engine/geometry/sidePath";
import { problem, type Result, success } from "../result";
import { apart, type Chain, closedChain, extentsOf, type Place, samePlace } from "./outline";
import { pointSides } from "./pointSides";

/** Part of the smaller extent within which the ends of short straight sides lie on lines and arcs. */
const drawnTolerance = 1e-5;

/** The outline of a drawing, and what was passed over. */
export interface ChosenOutline {
  readonly sides: readonly OutlineSide[];
  readonly remarks: readonly string[];
}

/**
 * The largest closed outline of a drawing by area; where none is closed the largest open one, whose ends are joined.
 * @param what the drawing's kind, for messages
 */
export function chooseOutline(chains: readonly Chain[], what: string): Result<ChosenOutline> {
  const usable = chains.filter(({ sides }) => sides.length > 0);
  const judged = usable.map((chain) => {
    const points = chainPoints(chain);
    const [width, height] = extentsOf(points);
    const gap = apart(chain.end, chain.sides[0].from);
    return {
      chain,
      area: Math.abs(polygonArea(points)),
      isClosed: gap <= samePlace * Math.max(width, height),
      width,
      height,
    };
  });
  const [best] = [...judged].sort((a, b) => Number(b.isClosed) - Number(a.isClosed) || b.area - a.area);
  if (best === undefined || !(best.area > 0)) {
    return problem(
      "outline",
      `the ${what} has no outline that encloses an area; draw the section as one closed outline`,
    );
  }
  const closed = judged.filter(({ isClosed, area }) => isClosed && area > 0).length;
  const remarks: string[] = [];
  if (closed > 1) remarks.push(`The ${what} has ${closed} closed outlines; the largest was read.`);
  else if (usable.length > 1) remarks.push(`The ${what} has ${usable.length} lines; one of them was read.`);
  const { sides, gap } = closedChain(best.chain);
  if (!best.isClosed) {
    const share = (100 * gap) / Math.max(best.width, best.height);
    remarks.push(`The outline is open by ${share.toPrecision(2)} % of its size; its ends were joined.`);
  }
  const drawn = asCurve(sides);
  if (drawn !== null)
    remarks.push(
      `The outline has ${sides.length} short straight sides, which were read as lines, arcs and curves through their ends.`,
    );
  return success({ sides: drawn ?? sides, remarks });
}

/** An outline of more straight sides than any polygon of the section families has stands for lines, arcs and curves. */
function asCurve(sides: readonly OutlineSide[]): readonly OutlineSide[] | null {
  if (sides.length <= mostSides || sides.some(({ bulge, controls }) => bulge !== undefined || controls !== undefined))
    return null;
  const points = sides.map(({ from }) => from);
  return pointSides(points, drawnTolerance * Math.min(...extentsOf(points))).sides;
}

/** Points along a chain. */
export function chainPoints({ sides, end }: Chain): Place[] {
  const points = sides.flatMap((side, i): Place[] => {
    const to = i + 1 < sides.length ? sides[i + 1].from : end;
    return side.bulge === undefined && side.controls === undefined ? [side.from] : sidePoints(sidePath(side, to));
  });
  return [...points, end];
}

function polygonArea(points: readonly Place[]): number {
  const [originX, originY] = points[0];
  let area = 0;
  for (let i = 0; i < points.length; i++) {
    const [x, y] = points[i];
    const [nextX, nextY] = points[(i + 1) % points.length];
    area += ((x - originX) * (nextY - originY) - (nextX - originX) * (y - originY)) / 2;
  }
  return area;
}
