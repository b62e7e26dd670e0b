import { html, LitElement } from "lit";
import { customElement } from "lit/decorators.js";
import { adoptDocumentStyles } from "../../style/documentStyles";
import type { ReportingView } from "../app/reportingView";
import "../case-panel/case-panel";
import "../conditions-panel/conditions-panel";
import "../floor-notes/floor-notes";
import "../flow-view/flow-view";
import "../key-figures/key-figures";
import "../pin-panel/pin-panel";
import "../plot-board/plot-board";
import "../report/report";
import "../section-panel/section-panel";
import "../sweep-panel/sweep-panel";
import "../trip-panel/trip-panel";
import { sectionViewStyles } from "./section-view.styles";

/** One section in one stream: its flow, its figures, its curves. In the light DOM, because the plots inside it must be. */
@customElement("ww-section-view")
export class SectionView extends LitElement implements ReportingView {
  constructor() {
    super();
    adoptDocumentStyles(sectionViewStyles);
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  printReport(): Promise<void> {
    return this.querySelector("ww-report")!.print();
  }

  protected override render() {
    return html`<div class="layout">
      <div class="stream-area">
        <ww-flow-view></ww-flow-view>
        <ww-key-figures></ww-key-figures>
        <ww-floor-notes></ww-floor-notes>
        <ww-pin-panel></ww-pin-panel>
        <ww-report></ww-report>
      </div>
      <div class="bench-area">
        <ww-case-panel></ww-case-panel>
        <ww-section-panel></ww-section-panel>
        <ww-conditions-panel></ww-conditions-panel>
        <ww-trip-panel></ww-trip-panel>
      </div>
      <div class="plots-area"><ww-plot-board></ww-plot-board><ww-sweep-panel></ww-sweep-panel></div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-section-view": SectionView;
  }
}
