import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { causeValueText } from "../../../../shared/jobs/evidence/causeText";
import type { MeasuredSetInputs } from "../../compare/compareInputs";
import { overlayFigure } from "../../compare/overlayFigure";
import { residualFigure } from "../../compare/residualFigure";
import { noAnswer, type SetAnswer } from "../../compare/setAnswer";
import type { PlotFigure } from "../../plots/plotFigure";
import { lightPalette, type Palette } from "../../style/palette";
import { problemList } from "../fault-list/faultList";
import "../plot/plot";
import { LightElement } from "../../view/lightElement";
import { type PlotPicture, pageWide, picturesDrawn, plotPictures } from "../report/plotPictures";

/** Measured over predicted drag, and the residuals. In the light DOM for its plots. */
@customElement("ww-compare-plots")
export class ComparePlots extends LightElement {
  @property({ attribute: false }) set: MeasuredSetInputs | null = null;
  /** What is known of the set. */
  @property({ attribute: false }) known: SetAnswer = noAnswer;
  @property({ attribute: false }) palette: Palette = lightPalette;
  @state() private pictures: readonly PlotPicture[] = [];

  private figures(palette: Palette): PlotFigure[] {
    const { answer, shown } = this.known;
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
    const { set } = this;
    const { problems } = this.known;
    if (set === null) return nothing;
    const [overlay, residuals] = this.figures(this.palette);
    return html`<section class="view-section compare-section" aria-labelledby="compare-plots-heading">
      <h2 id="compare-plots-heading">${set.name} against the prediction</h2>
      ${problemList(problems)}
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
