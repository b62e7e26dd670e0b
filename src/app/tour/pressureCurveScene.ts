import type { LiveSolution } from "../../../shared/engine/section/solveLive";
import { surfacePositions } from "../plots/surfacePosition";
import { evenTicks, horizontalAxis, levels, scaleOf } from "../scene/axes";
import type { Scene, Shape } from "../scene/scene";
import { risingState } from "../section/solved";
import type { Palette } from "../style/palette";

const margin = { left: 34, right: 10, top: 10, bottom: 24 } as const;

/** Cp over the angle from the front, suction upward: the upper side thick, the lower thin, the last stop dashed. */
export function pressureCurveScene(
  solution: LiveSolution,
  before: LiveSolution | null,
  [width, height]: readonly [number, number],
  palette: Palette,
): Scene {
  const sides = sidesOf(solution);
  const others = before === null ? null : sidesOf(before);
  const all = [...sides.upper, ...sides.lower, ...(others?.upper ?? [])];
  const lowest = Math.min(-1.5, ...all.map(([, cp]) => cp));
  const x = scaleOf(0, 180, margin.left, width - margin.right);
  const y = scaleOf(1.1, lowest * 1.08, height - margin.bottom, margin.top);
  const line = (side: readonly (readonly [number, number])[]) => side.flatMap(([angle, cp]) => [x.at(angle), y.at(cp)]);
  const shapes: Shape[] = [
    ...levels(y, margin.left, width - margin.right, evenTicks(lowest, 1, 5), palette),
    ...horizontalAxis(x, height - margin.bottom, [0, 45, 90, 135, 180], (tick) => `${tick}°`, palette),
  ];
  if (others !== null) {
    shapes.push({ kind: "lines", lines: [line(others.upper)], stroke: palette.outline, width: 1.4, dash: [5, 4] });
  }
  shapes.push(
    { kind: "lines", lines: [line(sides.lower)], stroke: palette.accent, width: 1.4 },
    { kind: "lines", lines: [line(sides.upper)], stroke: palette.accent, width: 2.8, round: true },
  );
  return { width, height, shapes };
}

type Side = readonly (readonly [number, number])[];

/** Angle from the front, degrees, and Cp of both sides, from the front on. */
function sidesOf(solution: LiveSolution): { readonly upper: Side; readonly lower: Side } {
  const state = risingState(solution);
  if (state === null) return { upper: [], lower: [] };
  const degrees = surfacePositions(solution.nodes, "angle", solution.incidence, solution.referenceWidth);
  const points = Array.from(degrees, (angle, n) => [angle, state.pressureCoefficient[n]] as const);
  const rising = (side: (readonly [number, number])[]) => side.sort((a, b) => a[0] - b[0]);
  return {
    upper: rising(points.filter(([angle]) => angle >= 0)),
    lower: rising(points.filter(([angle]) => angle <= 0).map(([angle, cp]) => [-angle, cp] as const)),
  };
}
