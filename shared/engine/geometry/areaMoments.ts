import { gaussAbscissae, gaussWeights } from "../../numerics/gaussLegendre";
import type { AreaMoments, Path } from "./contourPiece";

/** Area integrals along a path; breaks are parameters, increasing, between which the path is smooth and turns little. */
export function areaMoments(path: Path, breaks: ArrayLike<number>): AreaMoments {
  let area = 0;
  let momentX = 0;
  let momentY = 0;
  for (let k = 0; k + 1 < breaks.length; k++) {
    const half = (breaks[k + 1] - breaks[k]) / 2;
    const middle = (breaks[k + 1] + breaks[k]) / 2;
    for (let i = 0; i < gaussWeights.length; i++) {
      const { x, y, dx, dy } = path(middle + half * gaussAbscissae[i]);
      const weight = half * gaussWeights[i];
      area += (weight * (x * dy - y * dx)) / 2;
      momentX += (weight * x * x * dy) / 2;
      momentY -= (weight * y * y * dx) / 2;
    }
  }
  return { area, x: momentX, y: momentY };
}
