/** Points (interleaved x, y) as an SVG path, rounded to 0.01 view-box units. */
export function svgPath(points: ArrayLike<number>, closed = false): string {
  let path = "";
  for (let i = 0; i + 1 < points.length; i += 2) {
    path += `${i === 0 ? "M" : "L"}${round(points[i])} ${round(points[i + 1])}`;
  }
  return closed && path !== "" ? `${path}Z` : path;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
