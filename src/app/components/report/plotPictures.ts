import type { PlotFigure } from "../../plots/plotFigure";
import { loadPlotly } from "../plot/loadPlotly";

/** A plot as a picture for paper. */
export interface PlotPicture {
  readonly title: string;
  readonly address: string;
  readonly caption: string;
}

const [width, height] = [560, 380];

/** Draws plots for paper; none when the plot library cannot be loaded. */
export async function plotPictures(figures: readonly PlotFigure[]): Promise<readonly PlotPicture[]> {
  try {
    return await Promise.all(figures.map(plotPicture));
  } catch {
    return [];
  }
}

async function plotPicture(figure: PlotFigure): Promise<PlotPicture> {
  const plotly = await loadPlotly();
  const address = await plotly.toImage(
    {
      data: [...figure.data],
      layout: {
        ...figure.layout,
        width,
        height,
        paper_bgcolor: "#ffffff",
        showlegend: true,
        legend: { orientation: "h", x: 0, y: -0.24, yanchor: "top", font: { size: 10 }, entrywidth: 112 },
        margin: { l: 60, r: 10, t: 8, b: 110 },
      },
    },
    { format: "svg", width, height },
  );
  return { title: figure.title, address, caption: figure.caption };
}

/** Prints when the pictures under a root are drawn. */
export async function printWithPictures(root: ParentNode): Promise<void> {
  await Promise.all([...root.querySelectorAll("img")].map((image) => image.decode().catch(() => {})));
  window.print();
}
