import { html, LitElement } from "lit";
import { customElement, state } from "lit/decorators.js";
import { StoreController } from "../../store/storeController";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { viewStyles } from "../../style/viewStyles";
import { trialBench } from "../../trial/trialBench";
import { startTrialing } from "../../trial/trialing";
import type { ReportingView } from "../app/reportingView";
import "../trial-drag/trial-drag";
import "../trial-order/trial-order";
import "../trial-plan/trial-plan";
import "../trial-power/trial-power";
import "../trial-ranking/trial-ranking";
import "../trial-scores/trial-scores";
import "../trial-setup/trial-setup";
import { trialPrintStyles } from "./trial-print.styles";
import { trialViewStyles } from "./trial-view.styles";

/** Player trials: the plan, the scores, and what they say about pucks, order, players and drag. */
@customElement("ww-trial-view")
export class TrialView extends LitElement implements ReportingView {
  private readonly title_ = new StoreController(this, trialBench, (value) => value.history.present.title);
  @state() private printedOn = "";

  constructor() {
    super();
    adoptDocumentStyles(viewStyles);
    adoptDocumentStyles(trialViewStyles);
    adoptDocumentStyles(trialPrintStyles);
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void startTrialing();
  }

  async printReport(): Promise<void> {
    this.printedOn = new Date().toLocaleDateString();
    await this.querySelector("ww-trial-ranking")?.preparePictures();
    await this.updateComplete;
    window.print();
  }

  protected override render() {
    return html`<div class="view-layout trial-layout">
      <div class="view-column trial-column is-inputs">
        <ww-trial-setup></ww-trial-setup>
        <ww-trial-power></ww-trial-power>
      </div>
      <div class="view-column trial-column">
        <p class="unseen">${this.title_.value}${this.printedOn === "" ? "" : `, printed ${this.printedOn}`}</p>
        <ww-trial-plan></ww-trial-plan>
        <ww-trial-scores></ww-trial-scores>
      </div>
      <div class="view-column trial-column">
        <ww-trial-ranking></ww-trial-ranking>
        <ww-trial-order></ww-trial-order>
        <ww-trial-drag></ww-trial-drag>
      </div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-trial-view": TrialView;
  }
}
