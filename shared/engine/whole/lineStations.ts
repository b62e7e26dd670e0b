import { laminarLayer } from "../layer/laminarLayer";
import type { SideStations } from "../layer/sideStations";
import type { SurfaceLine } from "./surfaceLines";

/**
 * A streamline of the surface as the boundary layer takes it: lengths over the body's width D across the axis, from the
 * stagnation point to an assumed separation.
 * @param referenceLength D, m
 * @param end             arc length of the assumed separation, m, beyond the third point of the line
 * @returns stations whose positions are indices of the line, the stagnation point at -1 and the end at its fraction
 */
export function lineStations(line: SurfaceLine, referenceLength: number, end: number): SideStations {
  let inner = 0;
  while (inner < line.count && line.arc[inner] < end - 1e-9 * referenceLength) inner++;
  if (inner < 3) throw new RangeError(`the line has ${inner} points ahead of ${end} m; it must have 3 or more.`);
  const count = inner + (inner < line.count ? 2 : 1);
  const column = () => new Float64Array(count);
  const [arc, position, speed, curvature, spacing] = [column(), column(), column(), column(), column()];
  position[0] = -1;
  curvature[0] = line.curvature[0] * referenceLength;
  // The spacing vanishes at the stagnation point; the layer starts behind it, and a logarithm must not meet 0.
  spacing[0] = line.spacing[0] / 2;
  for (let i = 0; i < inner; i++) {
    arc[i + 1] = line.arc[i] / referenceLength;
    position[i + 1] = i;
    speed[i + 1] = line.speed[i];
    curvature[i + 1] = line.curvature[i] * referenceLength;
    spacing[i + 1] = line.spacing[i];
  }
  if (inner < line.count) {
    const share = (end - line.arc[inner - 1]) / (line.arc[inner] - line.arc[inner - 1]);
    const between = (values: Float64Array) => values[inner - 1] + share * (values[inner] - values[inner - 1]);
    const last = count - 1;
    arc[last] = end / referenceLength;
    position[last] = inner - 1 + share;
    speed[last] = between(line.speed);
    curvature[last] = between(line.curvature) * referenceLength;
    spacing[last] = between(line.spacing);
  }
  const gradient = gradientOf(arc, speed);
  return {
    count,
    arc,
    position,
    speed,
    gradient,
    curvature,
    spacing,
    laminar: laminarLayer(arc, speed, gradient, spacing),
  };
}

/** Slopes of the parabola through each point and its neighbours. */
function gradientOf(arc: Float64Array, speed: Float64Array): Float64Array {
  const last = arc.length - 1;
  return arc.map((_, i) => {
    const m = Math.min(last - 1, Math.max(1, i));
    const [before, after] = [arc[m] - arc[m - 1], arc[m + 1] - arc[m]];
    const [slopeBefore, slopeAfter] = [(speed[m] - speed[m - 1]) / before, (speed[m + 1] - speed[m]) / after];
    const middle = (slopeBefore * after + slopeAfter * before) / (before + after);
    const bend = (slopeAfter - slopeBefore) / (before + after);
    return middle + 2 * bend * (arc[i] - arc[m]);
  });
}
