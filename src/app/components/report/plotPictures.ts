import type { PlotFigure } from "../../plots/plotFigure";
import { loadPlotly } from "../plot/loadPlotly";

/** A plot as a picture for paper. */
export interface PlotPicture {
  readonly title: string;
  readonly address: string;
  readonly caption: string;
}

/** Size of a picture in the units of its letters, and what its legend is given below the axes. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
  readonly legendHeight: number;
}

/** Two beside each other on a page. */
const halfPage: PictureSize = { width: 560, height: 380, legendHeight: 110 };

/** One over the width of a page. */
export const pageWide: PictureSize = { width: 760, height: 400, legendHeight: 120 };

/** Draws plots for paper; none when the plot library cannot be loaded. */
export async function plotPictures(
  figures: readonly PlotFigure[],
  size: PictureSize = halfPage,
): Promise<readonly PlotPicture[]> {
  try {
    return await Promise.all(figures.map((figure) => plotPicture(figure, size)));
  } catch {
    return [];
  }
}

async function plotPicture(figure: PlotFigure, { width, height, legendHeight }: PictureSize): Promise<PlotPicture> {
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
        margin: { l: 60, r: 10, t: 8, b: legendHeight },
      },
    },
    { format: "svg", width, height },
  );
  return { title: figure.title, address, caption: figure.caption };
}

/** Waits until the pictures under a root are ready to be printed. */
export async function picturesDrawn(root: ParentNode): Promise<void> {
  await Promise.all([...root.querySelectorAll("img")].map((image) => image.decode().catch(() => {})));
}
