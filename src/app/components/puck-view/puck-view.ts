import { html, LitElement } from "lit";
import { customElement } from "lit/decorators.js";
import { startPuckKeeping } from "../../puck/puckKeeping";
import { startPuckSolving } from "../../puck/puckSolving";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { viewStyles } from "../../style/viewStyles";
import type { ReportingView } from "../app/reportingView";
import "../puck-case/puck-case";
import "../puck-cautions/puck-cautions";
import "../puck-drag/puck-drag";
import "../puck-drawing/puck-drawing";
import "../puck-figures/puck-figures";
import "../puck-handoff/puck-handoff";
import "../puck-motion/puck-motion";
import "../puck-panel/puck-panel";
import "../puck-pins/puck-pins";
import "../puck-play/puck-play";
import "../puck-report/puck-report";
import "../puck-rules/puck-rules";
import "../puck-tradeoff/puck-tradeoff";
import { puckViewStyles } from "./puck-view.styles";

/** The whole puck: what it is, what it weighs, how it drags and moves, what the rules say, and where it is handed on. */
@customElement("ww-puck-view")
export class PuckView extends LitElement implements ReportingView {
  constructor() {
    super();
    adoptDocumentStyles(viewStyles);
    adoptDocumentStyles(puckViewStyles);
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void startPuckKeeping().then(startPuckSolving);
  }

  printReport(): Promise<void> {
    return this.querySelector("ww-puck-report")!.print();
  }

  protected override render() {
    return html`<div class="view-layout puck-layout">
      <div class="view-column puck-column is-body">
        <ww-puck-drawing></ww-puck-drawing>
        <ww-puck-cautions></ww-puck-cautions>
        <ww-puck-figures></ww-puck-figures>
        <ww-puck-rules></ww-puck-rules>
        <ww-puck-report></ww-puck-report>
      </div>
      <div class="view-column puck-column is-bench">
        <ww-puck-case></ww-puck-case>
        <ww-puck-panel></ww-puck-panel>
        <ww-puck-pins></ww-puck-pins>
        <ww-puck-play></ww-puck-play>
        <ww-puck-handoff></ww-puck-handoff>
      </div>
      <div class="view-column puck-column is-flow">
        <ww-puck-drag></ww-puck-drag>
        <ww-puck-motion></ww-puck-motion>
        <ww-puck-tradeoff></ww-puck-tradeoff>
      </div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-view": PuckView;
  }
}
