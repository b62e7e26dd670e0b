import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { carriedOffset } from "../../compare/carriedOffset";
import type { PlotFigure } from "../../plots/plotFigure";
import { cautions } from "../../reference/cautions";
import { preferences } from "../../store/preferences";
import { StoreController } from "../../store/storeController";
import { workbench } from "../../store/workbench";
import { lightPalette } from "../../style/palette";
import { loadPlotly } from "../plot/loadPlotly";
import { boardDragCurve, boardPressure } from "../plot-board/boardFigures";
import { reportStyles } from "./report.styles";
import { reportInputs } from "./reportInputs";

/**
 * What the printed page has besides the drawing and the key figures: plots as pictures, inputs and cautions. Not to be
 * seen on the screen.
 */
@customElement("ww-report")
export class Report extends LitElement {
  static override styles = reportStyles;

  private readonly bench = new StoreController(this, workbench, (value) => value);
  private readonly units = new StoreController(this, preferences, (value) => value.units);
  @state() private pictures: readonly { readonly title: string; readonly address: string; readonly caption: string }[] =
    [];

  /** Draws the plots for paper, then opens the browser's print dialog. */
  async print(): Promise<void> {
    const bench = this.bench.value;
    const figures = [
      boardPressure(bench, preferences.value.positionMeasure, lightPalette),
      boardDragCurve(bench, [], lightPalette, carriedOffset.value),
    ];
    try {
      this.pictures = await Promise.all(figures.filter((figure) => figure !== null).map(picture));
    } catch {
      this.pictures = [];
    }
    await this.updateComplete;
    await Promise.all([...this.renderRoot.querySelectorAll("img")].map((image) => image.decode().catch(() => {})));
    window.print();
  }

  protected override render() {
    const { solved, problem } = this.bench.value;
    if (solved === null) return nothing;
    return html`<p>${problem ? html`<b>Stale:</b> the design could not be solved (${problem.message}); figures are of the last one that could.` : nothing}</p>
      <div class="plots">
        ${this.pictures.map(({ title, address, caption }) => html`<div><h2>${title}</h2><img src=${address} alt=${title} /><p>${caption}</p></div>`)}
      </div>
      <h2>Inputs</h2>
      <dl>${reportInputs(solved, this.units.value).map(([name, value]) => html`<dt>${name}</dt><dd>${value}</dd>`)}</dl>
      <h2>Cautions</h2>
      <ul>${cautions.map((caution) => html`<li>${caution}</li>`)}</ul>
      <p>Wakewright, printed ${new Date().toLocaleDateString()}.</p>`;
  }
}

async function picture(figure: PlotFigure) {
  const plotly = await loadPlotly();
  const [width, height] = [560, 380];
  const address = await plotly.toImage(
    {
      data: [...figure.data],
      layout: {
        ...figure.layout,
        width,
        height,
        paper_bgcolor: "#ffffff",
        showlegend: true,
        legend: { orientation: "h", x: 0, y: -0.24, yanchor: "top", font: { size: 10 } },
        margin: { l: 60, r: 10, t: 8, b: 110 },
      },
    },
    { format: "svg", width, height },
  );
  return { title: figure.title, address, caption: figure.caption };
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-report": Report;
  }
}
