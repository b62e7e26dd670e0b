import { html } from "lit";
import { customElement, state } from "lit/decorators.js";
import { addSet, compareBench, removeSet, replaceSet } from "../../compare/compareBench";
import "../../compare/compareEvents";
import { cancelSearch, searchCauses, showCause, startComparing } from "../../compare/compareSolving";
import { compareView } from "../../compare/compareView";
import { designChoices } from "../../compare/designChoices";
import { importDraft } from "../../compare/keptDraft";
import { answerOf, selectedSet } from "../../compare/setAnswer";
import { tunnelOffer } from "../../compare/tunnelOffer";
import { puckBench } from "../../puck/puckBench";
import { puckView } from "../../puck/puckView";
import { cautions } from "../../reference/cautions";
import { workbench } from "../../section/workbench";
import { pageState } from "../../store/pageState";
import { StoreController } from "../../store/storeController";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { viewStyles } from "../../style/viewStyles";
import { Hearing } from "../../view/hearing";
import { ViewElement } from "../../view/viewElement";
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
export class CompareView extends ViewElement {
  private readonly bench = new StoreController(this, compareBench, (value) => value);
  private readonly draft = new StoreController(this, importDraft, (value) => value);
  private readonly offer = new StoreController(this, tunnelOffer, (value) => value);
  private readonly candidate = new StoreController(this, puckBench, (value) => value.history.present.candidate.spec);
  @state() private demoProblem = "";

  constructor() {
    super();
    adoptDocumentStyles(viewStyles);
    adoptDocumentStyles(compareViewStyles);
    // The section view's design is offered as it is when this view comes up.
    new StoreController(this, pageState, ({ view }) => view);
    new Hearing(this, {
      "compare-add": addSet,
      "compare-replace": ({ old, next }) => replaceSet(old, next),
      "compare-remove": removeSet,
      "compare-select": (selected) => compareBench.patch({ selected }),
      "compare-demo": () => void this.openDemo(),
      "compare-draft": (draft) => {
        importDraft.value = draft;
      },
      "compare-search": searchCauses,
      "compare-stop": cancelSearch,
      "compare-cause": ({ set, cause }) => void showCause(set, cause),
      "compare-carry": (carriedSet) => compareBench.change({ carriedSet }),
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // Its candidate can be taken here.
    void puckView.startKeeping();
    void startComparing();
  }

  protected override get pictureMaker() {
    return this.querySelector("ww-compare-plots");
  }

  private async openDemo(): Promise<void> {
    try {
      this.demoProblem = (await compareView.openDemo())[0]?.message ?? "";
    } catch {
      this.demoProblem = "The demonstration could not be loaded.";
    }
  }

  protected override render() {
    const { history, selected, answers } = this.bench.value;
    const { sets, carriedSet, title } = history.present;
    const set = selectedSet(history.present, selected);
    const known = answerOf(answers, set);
    const design = workbench.present;
    const choices = designChoices(history.present, design, this.candidate.value);
    return html`<div class="view-layout is-split compare-layout">
      <div class="view-column compare-column is-inputs">
        <ww-compare-sets .sets=${sets} .selected=${set} .answers=${answers} .offer=${this.offer.value} .problem=${this.demoProblem}></ww-compare-sets>
        <ww-compare-import .draft=${this.draft.value} .choices=${choices} .fluid=${design.fluid}></ww-compare-import>
        <ww-compare-setup .set=${set} .names=${sets.map(({ name }) => name)} .choices=${choices}></ww-compare-setup>
      </div>
      <div class="view-column compare-column is-outcome">
        <div class="view-section compare-section on-paper"><h2>${title}</h2><p>Prediction against measurement. Wakewright, printed ${this.printedOn}.</p></div>
        <ww-compare-plots class="is-largest" .set=${set} .known=${known} .palette=${this.palette}></ww-compare-plots>
        <ww-compare-tables .result=${known.answer?.result ?? null}></ww-compare-tables>
        <ww-compare-causes .set=${set} .known=${known}></ww-compare-causes>
        <ww-compare-carry .set=${set} .known=${known} .isCarried=${set !== null && set.name === carriedSet}></ww-compare-carry>
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
