import { html } from "lit";
import { customElement, state } from "lit/decorators.js";
import type { Problem } from "../../../../shared/result";
import "../../cases/caseEvents";
import { openCase } from "../../cases/openCase";
import { saveShownCase } from "../../cases/savedCase";
import { loadDemoCase } from "../../files/demoCases";
import { saveFile } from "../../files/saveFile";
import { chooseControls } from "../../puck/choosing";
import {
  makeBaseline,
  pinPuck,
  puckBench,
  tradeoffBench,
  unpinPuck,
  workOnPin,
  workOnPuck,
} from "../../puck/puckBench";
import { hasPuckBlock } from "../../puck/puckCaseText";
import "../../puck/puckEvents";
import { countMadePucks, handoffFiles, reportMember, sizeCore } from "../../puck/puckJobs";
import { startPuckSolving } from "../../puck/puckSolving";
import { puckView } from "../../puck/puckView";
import { cancelSearch, pauseSearch, resumeSearch, startSearch } from "../../puck/tradeoffPool";
import { StoreController } from "../../store/storeController";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { viewStyles } from "../../style/viewStyles";
import { Hearing } from "../../view/hearing";
import { ViewElement } from "../../view/viewElement";
import "../choose-report/choose-report";
import "../puck-case/puck-case";
import "../puck-choose/puck-choose";
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

const searchControls = {
  start: () => startSearch(puckBench.present),
  pause: pauseSearch,
  resume: resumeSearch,
  cancel: cancelSearch,
} as const;

/** The case that shows a choice. */
const chooseDemo = "harbour-choice.json";

/** The whole puck: what it is, what it weighs, how it drags and moves, what the rules say, and where it is handed on. */
@customElement("ww-puck-view")
export class PuckView extends ViewElement {
  private readonly bench = new StoreController(this, puckBench, (value) => value);
  private readonly search = new StoreController(this, tradeoffBench, (value) => value);
  @state() private fileProblems: readonly Problem[] = [];
  @state() private handoffMessage: { readonly text: string; readonly isProblem: boolean } | null = null;

  constructor() {
    super();
    adoptDocumentStyles(viewStyles);
    adoptDocumentStyles(puckViewStyles);
    new Hearing(this, {
      "puck-change": (change) => puckBench.change(change),
      "puck-pin": pinPuck,
      "puck-work-on": workOnPuck,
      "puck-unpin": unpinPuck,
      "puck-swap": workOnPin,
      "puck-baseline": makeBaseline,
      "puck-job": (job) => (job === "size" ? sizeCore() : countMadePucks()),
      "puck-member": reportMember,
      "puck-search": (control) => searchControls[control](),
      "puck-choose": (wanted) => (wanted === "demo" ? void this.openExample() : chooseControls[wanted]()),
      "puck-handoff": (wanted) => void this.handOff(wanted),
      "puck-save": () => void saveShownCase(),
      "case-file": ({ fileName, text }) => void this.openFile(fileName, text),
      "case-refused": (message) => {
        this.fileProblems = [{ code: "size", message }];
      },
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void puckView.startKeeping().then(startPuckSolving);
  }

  protected override get pictureMaker() {
    return this.querySelector("ww-puck-report");
  }

  private async openFile(fileName: string, loading: Promise<string>): Promise<void> {
    try {
      const text = await loading;
      this.fileProblems = hasPuckBlock(text)
        ? await openCase(fileName, text)
        : [{ code: "no-puck", message: `${fileName} has no pucks: a case for this view needs the key puck.` }];
    } catch {
      this.fileProblems = [{ code: "load", message: `${fileName} could not be loaded.` }];
    }
  }

  private openExample(): Promise<void> {
    return this.openFile(chooseDemo, loadDemoCase(chooseDemo));
  }

  private async handOff({ settings, request, ending, mediaType }: PageEvents["puck-handoff"]): Promise<void> {
    this.handoffMessage = { text: "Making the files ...", isProblem: false };
    const files = await handoffFiles(settings, request);
    if (files === null) return;
    const file = files.ok ? files.value.find(({ name }) => name.endsWith(ending)) : undefined;
    if (!files.ok) this.handoffMessage = { text: files.problem.message, isProblem: true };
    else if (file === undefined) {
      this.handoffMessage = { text: "This puck has no such file: it has no core.", isProblem: true };
    } else {
      saveFile(file.name, mediaType, file.content);
      this.handoffMessage = { text: `${file.name} is made. Hand the cautions on with it.`, isProblem: false };
    }
  }

  protected override render() {
    const known = this.bench.value;
    const { measured, problem, solveProblem } = known;
    const inputs = known.history.present;
    const { candidate, userMaterials, play, title } = inputs;
    const { units, palette } = this;
    return html`<div class="view-layout puck-layout">
      <div class="view-column puck-column is-body">
        <ww-puck-drawing .spec=${measured?.inputs.candidate.spec ?? null} .stale=${problem !== null}></ww-puck-drawing>
        <ww-puck-cautions .spec=${candidate.spec} .materials=${userMaterials}></ww-puck-cautions>
        <ww-puck-figures .inputs=${inputs} .known=${known}></ww-puck-figures>
        <ww-puck-rules .inputs=${inputs} .known=${known} .units=${units}></ww-puck-rules>
        <ww-puck-report .inputs=${inputs} .known=${known} .units=${units}></ww-puck-report>
        <ww-choose-report .inputs=${inputs} .known=${known}></ww-choose-report>
      </div>
      <div class="view-column puck-column is-bench">
        <ww-puck-case .caseTitle=${title} .problems=${this.fileProblems}></ww-puck-case>
        <ww-puck-panel .inputs=${inputs} .problem=${problem} .units=${units}></ww-puck-panel>
        <ww-puck-pins .inputs=${inputs} .known=${known}></ww-puck-pins>
        <ww-puck-play .play=${play} .problem=${problem ?? solveProblem} .units=${units}></ww-puck-play>
        <ww-puck-handoff .turbulenceIntensity=${play.turbulenceIntensities[0]} .disabled=${measured === null || problem !== null} .message=${this.handoffMessage} .units=${units}></ww-puck-handoff>
      </div>
      <div class="view-column puck-column is-flow">
        <ww-puck-drag .inputs=${inputs} .known=${known} .units=${units} .palette=${palette}></ww-puck-drag>
        <ww-puck-motion .inputs=${inputs} .known=${known} .units=${units} .palette=${palette}></ww-puck-motion>
        <ww-puck-tradeoff .inputs=${inputs} .known=${known} .run=${this.search.value} .units=${units} .palette=${palette}></ww-puck-tradeoff>
        <ww-puck-choose .inputs=${inputs} .known=${known} .units=${units} .palette=${palette}></ww-puck-choose>
      </div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-view": PuckView;
  }
}
