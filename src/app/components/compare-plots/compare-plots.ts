import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { causeValueText } from "../../../../shared/evidence/causeText";
import { answerOf, compareBench, selectedSet } from "../../compare/compareBench";
import { overlayFigure } from "../../compare/overlayFigure";
import { residualFigure } from "../../compare/residualFigure";
import type { PlotFigure } from "../../plots/plotFigure";
import { pageState } from "../../store/pageState";
import { StoreController } from "../../store/storeController";
import { darkPalette, lightPalette, type Palette } from "../../style/palette";
import { loadPlotly } from "../plot/loadPlotly";
import "../plot/plot";

interface Picture {
  readonly title: string;
  readonly address: string;
  readonly caption: string;
}

/** Measured over predicted drag, and the residuals. In the light DOM for its plots. */
@customElement("ww-compare-plots")
export class ComparePlots extends LitElement {
  private readonly bench = new StoreController(this, compareBench, (value) => value);
  private readonly isDark = new StoreController(this, pageState, (value) => value.isDark);
  @state() private pictures: readonly Picture[] = [];

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  private figures(palette: Palette): PlotFigure[] {
    const set = selectedSet(this.bench.value);
    const { answer, shown } = answerOf(this.bench.value, set);
    if (answer === null) return [];
    const input = {
      result: answer.result,
      shown: shown === null ? null : { label: causeValueText(shown.cause.key, shown.cause.value), rows: shown.rows },
    };
    return [overlayFigure(input, palette), residualFigure(input, palette)];
  }

  /** Draws the plots for paper. */
  async preparePictures(): Promise<void> {
    try {
      this.pictures = await Promise.all(this.figures(lightPalette).map(picture));
    } catch {
      this.pictures = [];
    }
    await this.updateComplete;
    await Promise.all([...this.querySelectorAll("img")].map((image) => image.decode().catch(() => {})));
  }

  protected override render() {
    const set = selectedSet(this.bench.value);
    const { problems } = answerOf(this.bench.value, set);
    if (set === null) return nothing;
    const [overlay, residuals] = this.figures(this.isDark.value ? darkPalette : lightPalette);
    return html`<section class="compare-section" aria-labelledby="compare-plots-heading">
      <h2 id="compare-plots-heading">${set.name} against the prediction</h2>
      ${problems.length > 0 ? html`<ul class="error" role="alert">${problems.slice(0, 8).map(({ message }) => html`<li>${message}</li>`)}</ul>` : nothing}
      <div class="plots">
        <ww-plot id="plot-measured" .figure=${overlay ?? null} empty="Comparing ..."></ww-plot>
        <ww-plot id="plot-residuals" .figure=${residuals ?? null} empty="Comparing ..."></ww-plot>
      </div>
      <div class="pictures">${this.pictures.map(({ title, address, caption }) => html`<div><h3>${title}</h3><img src=${address} alt=${title} /><p>${caption}</p></div>`)}</div>
    </section>`;
  }
}

async function picture(figure: PlotFigure): Promise<Picture> {
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
        margin: { l: 60, r: 10, t: 8, b: 110 },
      },
    },
    { format: "svg", width, height },
  );
  return { title: figure.title, address, caption: figure.caption };
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-compare-plots": ComparePlots;
  }
}
