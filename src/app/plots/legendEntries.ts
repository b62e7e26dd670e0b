import type { Data } from "plotly.js-dist-min";
import { asScatter } from "./scatterTrace";

/** One line of a plot's legend. */
export interface LegendEntry {
  readonly name: string;
  readonly color: string;
  /** SVG dash pattern; empty for a solid line; null when there is no line. */
  readonly dash: string | null;
  readonly width: number;
  readonly symbol: string | null;
}

const dashPatterns: Readonly<Record<string, string>> = {
  solid: "",
  dash: "7 4",
  dot: "1.5 4",
  dashdot: "7 3 1.5 3",
  longdash: "11 4",
  longdashdot: "11 3 1.5 3",
};

/** SVG dash pattern of a named dash. */
export function dashPattern(dash: unknown): string {
  return dashPatterns[String(dash)] ?? "";
}

/** The legend of a figure's traces, without those that stay out of it. */
export function legendEntries(data: readonly Data[]): LegendEntry[] {
  return data.map(asScatter).flatMap((trace) => {
    if (trace.showlegend === false || trace.name === undefined) return [];
    const hasLine = trace.mode?.includes("lines") === true;
    const hasMarker = trace.mode?.includes("markers") === true;
    const isHollow = trace.marker?.line !== undefined && !String(trace.marker.symbol).startsWith("star-diamond");
    const markerColor = isHollow ? (trace.marker?.line?.color ?? trace.marker?.color) : trace.marker?.color;
    return [
      {
        name: trace.name,
        color: String((hasLine ? trace.line?.color : markerColor) ?? "currentColor"),
        dash: hasLine ? dashPattern(trace.line?.dash) : null,
        width: hasLine ? Number(trace.line?.width ?? 2) : 0,
        symbol: hasMarker ? String(trace.marker?.symbol ?? "circle") : null,
      },
    ];
  });
}
