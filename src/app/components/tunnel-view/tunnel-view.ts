import { html, LitElement } from "lit";
import { customElement, state } from "lit/decorators.js";
import { startPuckKeeping } from "../../puck/puckKeeping";
import { StoreController } from "../../store/storeController";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { viewStyles } from "../../style/viewStyles";
import { tunnelBench } from "../../tunnel/tunnelBench";
import { startTunnelSolving } from "../../tunnel/tunnelSolving";
import type { ReportingView } from "../app/reportingView";
import "../tunnel-data/tunnel-data";
import "../tunnel-plan/tunnel-plan";
import "../tunnel-results/tunnel-results";
import "../tunnel-setup/tunnel-setup";
import "../tunnel-similarity/tunnel-similarity";
import "../tunnel-surveys/tunnel-surveys";
import "../tunnel-uncertainty/tunnel-uncertainty";
import { tunnelViewStyles } from "./tunnel-view.styles";

/** A tunnel test from similarity and plan to reduced drag with its uncertainty. */
@customElement("ww-tunnel-view")
export class TunnelView extends LitElement implements ReportingView {
  private readonly title_ = new StoreController(this, tunnelBench, (value) => value.history.present.title);
  @state() private printedOn = "";

  constructor() {
    super();
    adoptDocumentStyles(viewStyles);
    adoptDocumentStyles(tunnelViewStyles);
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // Its candidate can be taken here.
    void startPuckKeeping();
    void startTunnelSolving();
  }

  async printReport(): Promise<void> {
    this.printedOn = new Date().toLocaleDateString();
    await this.querySelector("ww-tunnel-results")?.preparePictures();
    await this.updateComplete;
    window.print();
  }

  protected override render() {
    return html`<div class="view-layout tunnel-layout">
      <div class="view-column tunnel-column is-inputs">
        <ww-tunnel-setup></ww-tunnel-setup>
        <ww-tunnel-uncertainty></ww-tunnel-uncertainty>
      </div>
      <div class="view-column tunnel-column is-outcome">
        <p class="report-title">${this.title_.value}${this.printedOn === "" ? "" : `, printed ${this.printedOn}`}</p>
        <ww-tunnel-similarity></ww-tunnel-similarity>
        <ww-tunnel-plan></ww-tunnel-plan>
        <ww-tunnel-data></ww-tunnel-data>
        <ww-tunnel-results></ww-tunnel-results>
        <ww-tunnel-surveys></ww-tunnel-surveys>
      </div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-view": TunnelView;
  }
}
