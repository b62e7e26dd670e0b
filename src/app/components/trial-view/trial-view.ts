import { html } from "lit";
import { customElement, state } from "lit/decorators.js";
import { puckBench } from "../../puck/puckBench";
import { StoreController } from "../../store/storeController";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { viewStyles } from "../../style/viewStyles";
import { puckViewDrags } from "../../trial/puckViewDrags";
import { trialBench } from "../../trial/trialBench";
import "../../trial/trialEvents";
import { cancelPower, simulatePower, startTrialSolving } from "../../trial/trialSolving";
import { trialView } from "../../trial/trialView";
import { Hearing } from "../../view/hearing";
import { ViewElement } from "../../view/viewElement";
import "../trial-drag/trial-drag";
import "../trial-order/trial-order";
import "../trial-plan/trial-plan";
import "../trial-power/trial-power";
import "../trial-ranking/trial-ranking";
import "../trial-scores/trial-scores";
import "../trial-setup/trial-setup";
import { trialPrintStyles } from "./trial-print.styles";
import { trialViewStyles } from "./trial-view.styles";

const drags = () => puckViewDrags(puckBench.value);

/** Player trials: the plan, the scores, and what they say about pucks, order, players and drag. */
@customElement("ww-trial-view")
export class TrialView extends ViewElement {
  private readonly bench = new StoreController(this, trialBench, (value) => value);
  @state() private demoProblem = "";

  constructor() {
    super();
    adoptDocumentStyles(viewStyles);
    adoptDocumentStyles(trialViewStyles);
    adoptDocumentStyles(trialPrintStyles);
    new Hearing(this, {
      "trial-change": (change) => trialBench.change(change),
      "trial-show": (inputs) => trialBench.showTrial(inputs),
      "trial-demo": () => void this.openDemo(),
      "trial-score": ({ key, typed }) => trialBench.typeScore(key, typed),
      "trial-activity": (activity) => trialBench.patch({ activity }),
      "trial-import": (importText) => trialBench.patch({ importText }),
      "trial-simulate": simulatePower,
      "trial-stop": cancelPower,
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void startTrialSolving();
  }

  protected override get pictureMaker() {
    return this.querySelector("ww-trial-ranking");
  }

  private async openDemo(): Promise<void> {
    try {
      this.demoProblem = (await trialView.openDemo())[0]?.message ?? "";
    } catch {
      this.demoProblem = "The demonstration could not be loaded.";
    }
  }

  protected override render() {
    const { history, ranking, power, activity, importText } = this.bench.value;
    const inputs = history.present;
    const result = ranking.last?.result ?? null;
    return html`<div class="view-layout trial-layout">
      <div class="view-column trial-column is-inputs">
        <ww-trial-setup .inputs=${inputs} .problem=${this.demoProblem}></ww-trial-setup>
        <ww-trial-power .inputs=${inputs} .power=${power} .palette=${this.palette}></ww-trial-power>
      </div>
      <div class="view-column trial-column">
        <p class="unseen">${inputs.title}${this.printedOn === "" ? "" : `, printed ${this.printedOn}`}</p>
        <ww-trial-plan .inputs=${inputs}></ww-trial-plan>
        <ww-trial-scores .inputs=${inputs} .activity=${activity} .importText=${importText}></ww-trial-scores>
      </div>
      <div class="view-column trial-column">
        <ww-trial-ranking .inputs=${inputs} .ranking=${ranking} .activity=${activity} .palette=${this.palette}></ww-trial-ranking>
        <ww-trial-order .result=${result}></ww-trial-order>
        <ww-trial-drag .inputs=${inputs} .result=${result} .puckDrags=${drags} .palette=${this.palette}></ww-trial-drag>
      </div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-trial-view": TrialView;
  }
}
