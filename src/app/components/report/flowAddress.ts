import { flowScene } from "../../drawing/flowScene";
import { streamFrame } from "../../drawing/streamFrame";
import { sceneAddress } from "../../scene/sceneSvg";
import type { Solved } from "../../section/solved";
import { lightPalette } from "../../style/palette";
import { quantityText, type UnitPreferences } from "../../units/units";

/** Size of the picture on paper, in the units of its letters. */
const [width, height] = [760, 200];

/** The flow round a solved section as an address for an image. */
export function flowAddress({ design, solution }: Solved, units: UnitPreferences): string {
  const { nodes } = solution;
  let reach = 0;
  for (let i = 0; i < nodes.count; i++) {
    reach = Math.max(reach, Math.hypot(nodes.x[i] - nodes.centroid[0], nodes.y[i] - nodes.centroid[1]));
  }
  const frame = streamFrame(nodes.centroid, design.incidence, (0.4 * height) / reach, [0.4 * width, 0.5 * height]);
  const words = { stream: `stream ${quantityText(design.speed, "speed", units, 3)} →`, isSmall: false };
  return sceneAddress(flowScene(solution, frame, [width, height], lightPalette, words));
}
