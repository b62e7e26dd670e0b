import { html, nothing, svg } from "lit";
import type { Data, PlotlyHTMLElement } from "plotly.js-dist-min";
import { linePaths } from "../../plots/linePaths";
import { plotMargin } from "../../plots/plotFigure";

/**
 * The newest lines over the last full drawing, on the axes that are drawn there. The size is the drawing's own: asking
 * the page for it here would lay out the whole page once for every plot.
 * @param drawn  the element of the last full drawing
 */
export function plotOverlay(drawn: Partial<PlotlyHTMLElement>, data: readonly Data[]) {
  const { xaxis, yaxis, width = 0, height = 0 } = drawn.layout ?? {};
  const isDrawn = width > plotMargin.l + plotMargin.r && height > plotMargin.t + plotMargin.b;
  if (!isDrawn || !xaxis?.range || !yaxis?.range) return nothing;
  const window = {
    left: plotMargin.l,
    top: plotMargin.t,
    width: width - plotMargin.l - plotMargin.r,
    height: height - plotMargin.t - plotMargin.b,
    xRange: xaxis.range as [number, number],
    yRange: yaxis.range as [number, number],
    xLogarithmic: xaxis.type === "log",
    yLogarithmic: yaxis.type === "log",
  };
  return html`<svg class="plot-overlay" viewBox="0 0 ${width} ${height}" width=${width} height=${height} aria-hidden="true">
    <svg x=${window.left} y=${window.top} width=${window.width} height=${window.height} viewBox="${window.left} ${window.top} ${window.width} ${window.height}">
      ${linePaths(data, window).map(
        (line) =>
          svg`<path d=${line.path} fill="none" stroke=${line.color} stroke-width=${line.width} stroke-dasharray=${line.dash || "none"}></path>`,
      )}
    </svg>
  </svg>`;
}
