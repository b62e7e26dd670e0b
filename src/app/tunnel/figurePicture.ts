import { loadPlotly } from "../components/plot/loadPlotly";
import type { PlotFigure } from "../plots/plotFigure";

/** A figure drawn for paper. */
export interface FigurePicture {
  readonly title: string;
  readonly address: string;
  readonly caption: string;
}

/** Draws a figure as an image with its legend below. */
export async function figurePicture(figure: PlotFigure): Promise<FigurePicture> {
  const plotly = await loadPlotly();
  const [width, height] = [760, 400];
  const address = await plotly.toImage(
    {
      data: [...figure.data],
      layout: {
        ...figure.layout,
        width,
        height,
        paper_bgcolor: "#ffffff",
        showlegend: true,
        legend: { orientation: "h", x: 0, y: -0.22, yanchor: "top", font: { size: 10 } },
        margin: { l: 60, r: 10, t: 8, b: 120 },
      },
    },
    { format: "svg", width, height },
  );
  return { title: figure.title, address, caption: figure.caption };
}
