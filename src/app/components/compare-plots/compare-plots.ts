import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { causeValueText } from "../../../../shared/jobs/evidence/causeText";
import { answerOf, compareBench, selectedSet } from "../../compare/compareBench";
import { overlayFigure } from "../../compare/overlayFigure";
import { residualFigure } from "../../compare/residualFigure";
import type { PlotFigure } from "../../plots/plotFigure";
import { pageState } from "../../store/pageState";
import { StoreController } from "../../store/storeController";
import { darkPalette, lightPalette, type Palette } from "../../style/palette";
import "../plot/plot";
import { type PlotPicture, pageWide, picturesDrawn, plotPictures } from "../report/plotPictures";

/** Measured over predicted drag, and the residuals. In the light DOM for its plots. */
@customElement("ww-compare-plots")
export class ComparePlots extends LitElement {
  private readonly bench = new StoreController(this, compareBench, (value) => value);
  private readonly isDark = new StoreController(this, pageState, (value) => value.isDark);
  @state() private pictures: readonly PlotPicture[] = [];

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
    this.pictures = await plotPictures(this.figures(lightPalette), pageWide);
    await this.updateComplete;
    await picturesDrawn(this);
  }

  protected override render() {
    const set = selectedSet(this.bench.value);
    const { problems } = answerOf(this.bench.value, set);
    if (set === null) return nothing;
    const [overlay, residuals] = this.figures(this.isDark.value ? darkPalette : lightPalette);
    return html`<section class="view-section compare-section" aria-labelledby="compare-plots-heading">
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

declare global {
  interface HTMLElementTagNameMap {
    "ww-compare-plots": ComparePlots;
  }
}
