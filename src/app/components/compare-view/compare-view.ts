import { html, LitElement } from "lit";
import { customElement, state } from "lit/decorators.js";
import { compareBench } from "../../compare/compareBench";
import { startComparing } from "../../compare/comparing";
import { startPuckKeeping } from "../../puck/puckKeeping";
import { cautions } from "../../reference/cautions";
import { StoreController } from "../../store/storeController";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { viewStyles } from "../../style/viewStyles";
import type { ReportingView } from "../app/reportingView";
import "../compare-carry/compare-carry";
import "../compare-causes/compare-causes";
import "../compare-import/compare-import";
import "../compare-plots/compare-plots";
import "../compare-sets/compare-sets";
import "../compare-setup/compare-setup";
import "../compare-tables/compare-tables";
import { compareViewStyles } from "./compare-view.styles";

/** Measurements held against the prediction: what was measured, how far apart the two are, and what could explain it. */
@customElement("ww-compare-view")
export class CompareView extends LitElement implements ReportingView {
  private readonly caseTitle = new StoreController(this, compareBench, (value) => value.history.present.title);
  @state() private printedOn = "";

  constructor() {
    super();
    adoptDocumentStyles(viewStyles);
    adoptDocumentStyles(compareViewStyles);
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // Its candidate can be taken here.
    void startPuckKeeping();
    void startComparing();
  }

  async printReport(): Promise<void> {
    this.printedOn = new Date().toLocaleDateString();
    await this.querySelector("ww-compare-plots")?.preparePictures();
    await this.updateComplete;
    window.print();
  }

  protected override render() {
    return html`<div class="view-layout compare-layout">
      <div class="view-column compare-column is-inputs">
        <ww-compare-sets></ww-compare-sets>
        <ww-compare-import></ww-compare-import>
        <ww-compare-setup></ww-compare-setup>
      </div>
      <div class="view-column compare-column is-outcome">
        <div class="view-section compare-section on-paper"><h2>${this.caseTitle.value}</h2><p>Prediction against measurement. Wakewright, printed ${this.printedOn}.</p></div>
        <ww-compare-plots></ww-compare-plots>
        <ww-compare-tables></ww-compare-tables>
        <ww-compare-causes></ww-compare-causes>
        <ww-compare-carry></ww-compare-carry>
        <div class="view-section compare-section on-paper"><h2>Cautions</h2><ul>${cautions.map((caution) => html`<li>${caution}</li>`)}</ul></div>
      </div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-compare-view": CompareView;
  }
}
