import type { SectionNodes } from "../../../shared/engine/geometry/sectionNodes";
import { isSealed } from "../../../shared/engine/section/sealedSide";
import type { SectionState, SideSolution } from "../../../shared/engine/solution";
import { degreesOf } from "../../../shared/numerics/degreesAndPercent";
import type { Shape } from "../scene/scene";
import type { Palette } from "../style/palette";
import type { StreamFrame } from "./streamFrame";
import { contourArc, wallPoint } from "./wallPoint";

/** Two sides that leave within so many degrees of each other are told once. */
const sameAngle = 2;
/** Room that a label to the left of its place needs, px. */
const widestLabel = 170;

/** Where the layers leave, and how, written beside the wall with a line to the place. */
export function separationLabels(
  nodes: SectionNodes,
  state: SectionState,
  width: number,
  frame: StreamFrame,
  [pictureWidth, pictureHeight]: readonly [number, number],
  palette: Palette,
): Shape[] {
  const sides = (["upper", "lower"] as const).filter((side) => !isSealed(state[side]));
  const isAlike =
    sides.length === 2 &&
    state.upper.state === state.lower.state &&
    Math.abs(degreesOf(state.upper.separationAngle - state.lower.separationAngle)) < sameAngle;
  const labels: Shape[] = [];
  const put = (side: "upper" | "lower", arc: number, text: string, lean: number, rise: number) => {
    const { x, y } = wallPoint(nodes, arc);
    const [px, py] = frame.toView(x, y);
    const out = side === "upper" ? -1 : 1;
    const ty = Math.max(34, Math.min(pictureHeight - 36, py + out * rise));
    const isEnd = lean < 0 && px + lean > widestLabel;
    const tx = Math.max(12, Math.min(pictureWidth - 12, lean < 0 && !isEnd ? 12 : px + lean));
    labels.push(
      { kind: "lines", lines: [[px, py, tx, ty - (out < 0 ? -2 : 10)]], stroke: palette.ink, width: 0.9 },
      {
        kind: "text",
        x: tx,
        y: ty,
        text,
        fill: palette.ink,
        size: 11.5,
        rim: palette.water,
        anchor: isEnd ? "end" : "start",
      },
    );
  };
  for (const side of isAlike ? (["lower"] as const) : sides) {
    const solution = state[side];
    put(side, solution.separationContourArc, leavingText(solution), 30, 46);
    if (solution.bubble !== null) {
      const { separationArc, reattachmentArc } = solution.bubble;
      const length = Math.round((reattachmentArc - separationArc) * width * 1e4) / 10;
      put(side, contourArc(solution, side, width, separationArc), `bubble, back on after ${length} mm`, -26, 66);
    }
  }
  return labels;
}

function leavingText({ state, separationAngle }: SideSolution): string {
  const angle = `${degreesOf(separationAngle).toFixed(0)}°`;
  return state === "laminar separation" ? `laminar, leaves at ${angle}` : `turbulent, leaves at ${angle}`;
}
