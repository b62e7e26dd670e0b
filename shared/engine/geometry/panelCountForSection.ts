import type { Contour } from "./contour";
import { gradingMap, nodeDensity } from "./gradingMap";

export const fewestDefaultPanels = 160;
export const mostDefaultPanels = 600;
/** Nodes wanted in a quarter turn as sharp as the sharpest bend. */
const nodesPerQuarterTurn = 12;
/** The same for families with a smooth natural parameter, on which sums over nodes converge exponentially. */
const naturalNodesPerQuarterTurn = 4;
/** Largest ratio wanted between the arc lengths of neighbouring panels. */
const largestGrowth = 2;
/** Panels of the trial division on which that ratio is looked at. */
const trialPanels = 400;

/**
 * A number of panels that suits a contour: enough for 12 nodes (4 on an ellipse) in a quarter turn as sharp as its
 * sharpest bend, neighbouring panels no more than 2 : 1 in length, even, from 160 to 600. A starting point for a convergence check, not a proof of one. (Own rule. In
 * attached flow past rounded rectangles, bevels, D-sections, triangles and polygons the speeds at the nodes were within
 * 0.5 % of the largest speed of those with 2000 panels, and within 0.8 % on a polygon with 24 sides.)
 */
export function panelCountForSection(contour: Contour): number {
  const { perimeter, bends, naturalParameter } = contour;
  const quarterTurn = (radius: number) => Math.min((radius * Math.PI) / 2, perimeter / 4);
  let needed = fewestDefaultPanels;
  if (naturalParameter) {
    const samples = 256;
    for (let i = 0; i < samples; i++) {
      const { arc, arcRate } = naturalParameter((2 * Math.PI * i) / samples);
      const share = quarterTurn(1 / Math.abs(contour.at(arc).curvature)) / (2 * Math.PI * arcRate);
      needed = Math.max(needed, naturalNodesPerQuarterTurn / share);
    }
  } else {
    const density = nodeDensity(contour);
    for (const bend of bends) {
      if (bend.turning === 0) continue;
      const share = density.at(bend.arc) * quarterTurn(bend.length / Math.abs(bend.turning));
      needed = Math.max(needed, nodesPerQuarterTurn / share);
    }
    needed = Math.max(needed, (trialPanels * trialGrowth(contour)) / Math.log(largestGrowth));
  }
  return Math.min(2 * Math.ceil(needed / 2), mostDefaultPanels);
}

/** Largest logarithm of the ratio of neighbouring panel lengths on the trial division. */
function trialGrowth(contour: Contour): number {
  const map = gradingMap(contour);
  const last = contour.mirrorSymmetric ? trialPanels / 2 : trialPanels;
  let growth = 0;
  let previous = map(0).arcRate;
  for (let i = 1; i <= last; i++) {
    const { arcRate } = map((2 * Math.PI * i) / trialPanels);
    growth = Math.max(growth, Math.abs(Math.log(arcRate / previous)));
    previous = arcRate;
  }
  return growth;
}
