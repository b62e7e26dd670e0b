import { html } from "lit";
import { customElement, state } from "lit/decorators.js";
import { runSheetCsv } from "../../../../shared/jobs/tunnel/runSheetCsv";
import { puckBench } from "../../puck/puckBench";
import { puckView } from "../../puck/puckView";
import { workbench } from "../../section/workbench";
import { StoreController } from "../../store/storeController";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { viewStyles } from "../../style/viewStyles";
import { leftOutOfTunnel } from "../../tunnel/leftOutOfTunnel";
import { changeTable, tableDrafts, takeTable } from "../../tunnel/tableDraft";
import { designAsModel, puckAsModel } from "../../tunnel/takenModel";
import { blockWith, tunnelBench } from "../../tunnel/tunnelBench";
import "../../tunnel/tunnelEvents";
import { startTunnelSolving } from "../../tunnel/tunnelSolving";
import { tunnelView } from "../../tunnel/tunnelView";
import { Hearing } from "../../view/hearing";
import { ViewElement } from "../../view/viewElement";
import "../tunnel-plan/tunnel-plan";
import "../tunnel-results/tunnel-results";
import "../tunnel-setup/tunnel-setup";
import "../tunnel-similarity/tunnel-similarity";
import "../tunnel-surveys/tunnel-surveys";
import "../tunnel-table/tunnel-table";
import "../tunnel-uncertainty/tunnel-uncertainty";
import { tunnelViewStyles } from "./tunnel-view.styles";

/** A tunnel test from similarity and plan to reduced drag with its uncertainty. */
@customElement("ww-tunnel-view")
export class TunnelView extends ViewElement {
  private readonly bench = new StoreController(this, tunnelBench, (value) => value);
  private readonly drafts = new StoreController(this, tableDrafts, (value) => value);
  @state() private demoProblem = "";
  /** What the section that was taken last has lost; said for as long as it is the model. */
  @state() private loss: { readonly of: string; readonly sentence: string } | null = null;

  constructor() {
    super();
    adoptDocumentStyles(viewStyles);
    adoptDocumentStyles(tunnelViewStyles);
    new Hearing(this, {
      "tunnel-block": (block) => tunnelBench.change({ block }),
      "tunnel-keys": (change) => this.changeKeys(change),
      "tunnel-title": (title) => tunnelBench.change({ title }),
      "tunnel-demo": (fileName) => void this.openDemo(fileName),
      "tunnel-model": (of) => this.takeModel(of),
      "tunnel-table-text": ({ of, text }) => takeTable(of, text),
      "tunnel-table-change": ({ of, change }) => changeTable(of, change),
      "tunnel-fill-in": (plan) => takeTable("runs", runSheetCsv(plan)),
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // Its candidate can be taken here.
    void puckView.startKeeping();
    void startTunnelSolving();
  }

  protected override get pictureMaker() {
    return this.querySelector("ww-tunnel-results");
  }

  private changeKeys(change: Parameters<typeof blockWith>[1]): void {
    tunnelBench.change({ block: blockWith(tunnelBench.present.block, change) });
  }

  private takeModel(of: "candidate" | "design"): void {
    const { block } = tunnelBench.present;
    if (of === "candidate") {
      this.changeKeys(puckAsModel(block, puckBench.present.candidate));
      return;
    }
    const design = workbench.present;
    const change = designAsModel(block, design);
    const sentence = leftOutOfTunnel(design);
    this.loss = sentence === null ? null : { of: JSON.stringify(change.model?.section), sentence };
    this.changeKeys(change);
  }

  private async openDemo(fileName: string): Promise<void> {
    try {
      this.demoProblem = (await tunnelView.openDemo(fileName))[0]?.message ?? "";
    } catch {
      this.demoProblem = "The demonstration could not be loaded.";
    }
  }

  protected override render() {
    const { history, solving } = this.bench.value;
    const inputs = history.present;
    const { block, title } = inputs;
    const isLossy = this.loss?.of === JSON.stringify(block.model.section);
    return html`<div class="view-layout is-split tunnel-layout">
      <div class="view-column tunnel-column is-inputs">
        <ww-tunnel-setup .inputs=${inputs} .problem=${this.demoProblem} .leftOut=${isLossy ? (this.loss?.sentence ?? "") : ""}></ww-tunnel-setup>
        <ww-tunnel-uncertainty .block=${block} .solving=${solving}></ww-tunnel-uncertainty>
      </div>
      <div class="view-column tunnel-column is-outcome">
        <p class="report-title">${title}${this.printedOn === "" ? "" : `, printed ${this.printedOn}`}</p>
        <ww-tunnel-similarity .solving=${solving}></ww-tunnel-similarity>
        <ww-tunnel-plan .inputs=${inputs} .solving=${solving}></ww-tunnel-plan>
        <section class="view-section tunnel-section is-data" aria-labelledby="tunnel-data-heading">
          <h2 id="tunnel-data-heading">Data</h2>
          <ww-tunnel-table of="runs" .block=${block} .drafts=${this.drafts.value}></ww-tunnel-table>
        </section>
        <ww-tunnel-results class="is-largest" .inputs=${inputs} .solving=${solving} .palette=${this.palette}></ww-tunnel-results>
        <ww-tunnel-surveys .block=${block} .drafts=${this.drafts.value} .solving=${solving} .palette=${this.palette}></ww-tunnel-surveys>
      </div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-view": TunnelView;
  }
}
