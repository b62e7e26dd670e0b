import type { Data } from "plotly.js-dist-min";
import { dashPattern } from "./legendEntries";
import { asScatter } from "./scatterTrace";

/** The drawing area inside a plot and what its axes show. */
export interface PlotWindow {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** Axis coordinates: exponents of ten on a logarithmic axis. */
  readonly xRange: readonly [number, number];
  readonly yRange: readonly [number, number];
  readonly xLogarithmic: boolean;
  readonly yLogarithmic: boolean;
}

export interface LinePath {
  readonly path: string;
  readonly color: string;
  readonly width: number;
  readonly dash: string;
}

/**
 * The lines of a figure as SVG paths. Drawn over a plot while a handle is dragged, when a redraw by the plot library
 * would hold up the page.
 */
export function linePaths(data: readonly Data[], window: PlotWindow): LinePath[] {
  const toX = scale(window.xRange, window.xLogarithmic, window.left, window.left + window.width);
  const toY = scale(window.yRange, window.yLogarithmic, window.top + window.height, window.top);
  return data.flatMap((one) => {
    const trace = asScatter(one);
    if (!trace.mode?.includes("lines") || trace.fill !== undefined) return [];
    const { x, y } = trace;
    if (x === undefined || y === undefined) return [];
    let path = "";
    let pen = "M";
    for (let i = 0; i < x.length; i++) {
      const [px, py] = [toX(x[i]), toY(y[i])];
      if (!Number.isFinite(px) || !Number.isFinite(py)) {
        pen = "M";
        continue;
      }
      path += `${pen}${px.toFixed(1)} ${py.toFixed(1)}`;
      pen = "L";
    }
    const { color, width, dash } = trace.line ?? {};
    return [{ path, color: String(color ?? "currentColor"), width: Number(width ?? 2), dash: dashPattern(dash) }];
  });
}

function scale(range: readonly [number, number], logarithmic: boolean, from: number, to: number) {
  return (value: number | null): number => {
    if (value === null) return Number.NaN;
    const at = logarithmic ? Math.log10(value) : value;
    return from + ((at - range[0]) / (range[1] - range[0])) * (to - from);
  };
}
