import type { Data, PlotlyHTMLElement } from "plotly.js-dist-min";
import { legendEntries } from "../../plots/legendEntries";
import type { PlotFigure } from "../../plots/plotFigure";
import { loadPlotly } from "./loadPlotly";

/**
 * Hands the browser a figure as a picture with title and legend. Rejects when the plot library cannot be loaded.
 * @param data  the traces that are not hidden
 * @param paper  colour behind the figure
 */
export async function downloadPicture(
  figure: PlotFigure,
  data: readonly Data[],
  format: "png" | "svg",
  paper: string,
): Promise<void> {
  const plotly = await loadPlotly();
  const rows = legendEntries(figure.data).length;
  const [width, height] = [1200, 760 + 22 * rows];
  await plotly.downloadImage(
    {
      data,
      layout: {
        ...figure.layout,
        width,
        height,
        title: { text: figure.title },
        margin: { l: 80, r: 30, t: 60, b: 80 + 22 * rows },
        paper_bgcolor: paper,
        showlegend: true,
        legend: { orientation: "v", x: 0, y: -0.16, yanchor: "top" },
      },
    } as unknown as PlotlyHTMLElement,
    { format, filename: `wakewright-${figure.key}`, width, height },
  );
}
