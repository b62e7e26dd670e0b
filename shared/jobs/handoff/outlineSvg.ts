import { arcOf, type Outline, outlinePoints } from "./outline";
import { svgNumber, svgText } from "./svgText";

/** Empty space round the outline, mm. */
const margin = 2;

/** An outline as an SVG drawing at its true size in mm: one closed path, arcs kept as arcs, y upward. */
export function outlineSvg(outline: Outline): string {
  const points = outlinePoints(outline, 1e-6);
  const xs = points.map(([x]) => 1000 * x);
  const ys = points.map(([, y]) => 1000 * y);
  const [left, right] = extent(xs);
  const [bottom, top] = extent(ys);
  const width = svgNumber(right - left + 2 * margin);
  const height = svgNumber(top - bottom + 2 * margin);
  const box = `${svgNumber(left - margin)} ${svgNumber(-top - margin)} ${width} ${height}`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${box}">`,
    `  <title>${svgText(outline.name)}</title>`,
    `  <path d="${outlinePath(outline)}" fill="none" stroke="black" stroke-width="0.25"/>`,
    "</svg>",
    "",
  ].join("\n");
}

/** The path data of an outline in mm, y turned to SVG's downward axis. */
export function outlinePath({ vertices }: Outline): string {
  const place = ({ x, y }: { readonly x: number; readonly y: number }) =>
    `${svgNumber(1000 * x)} ${svgNumber(-1000 * y)}`;
  const steps = vertices.map((vertex, i) => {
    const next = vertices[(i + 1) % vertices.length];
    if (vertex.bulge === 0) return `L ${place(next)}`;
    const { radius, turn } = arcOf(vertex, next);
    const r = svgNumber(1000 * radius);
    // Turning left with y up is turning anticlockwise on the screen: sweep flag 0.
    return `A ${r} ${r} 0 ${Math.abs(turn) > Math.PI ? 1 : 0} ${turn > 0 ? 0 : 1} ${place(next)}`;
  });
  return `M ${place(vertices[0])} ${steps.join(" ")} Z`;
}

function extent(values: readonly number[]): [number, number] {
  return values.reduce<[number, number]>(
    ([low, high], value) => [Math.min(low, value), Math.max(high, value)],
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
  );
}
