import { html } from "lit";
import { customElement, state } from "lit/decorators.js";
import type { Problem } from "../../../../shared/result";
import "../../cases/caseEvents";
import { openCase } from "../../cases/openCase";
import { saveShownCase } from "../../cases/savedCase";
import { loadDemoCase } from "../../files/demoCases";
import { saveFile } from "../../files/saveFile";
import { boardAnswer } from "../../puck/boardAnswer";
import { boardRows } from "../../puck/boardRows";
import { startBoardSolving } from "../../puck/boardSolving";
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
import type { PlayInputs } from "../../puck/puckInputs";
import { countMadePucks, handoffFiles, reportMember, sizeCore } from "../../puck/puckJobs";
import { startPuckSolving } from "../../puck/puckSolving";
import { puckView } from "../../puck/puckView";
import { cancelSearch, pauseSearch, resumeSearch, startSearch } from "../../puck/tradeoffPool";
import { StoreController } from "../../store/storeController";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { viewStyles } from "../../style/viewStyles";
import { quantityText, type UnitPreferences } from "../../units/units";
import { Hearing } from "../../view/hearing";
import { shownSteps, showStep, stepOf } from "../../view/shownSteps";
import { ViewElement } from "../../view/viewElement";
import "../choose-report/choose-report";
import "../answer/answer";
import "../puck-board/puck-board";
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
import "../step-nav/step-nav";
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
  private readonly steps = new StoreController(this, shownSteps, (value) => value);
  private readonly search = new StoreController(this, tradeoffBench, (value) => value);
  @state() private fileProblems: readonly Problem[] = [];
  @state() private handoffMessage: { readonly text: string; readonly isProblem: boolean } | null = null;

  constructor() {
    super();
    adoptDocumentStyles(viewStyles);
    adoptDocumentStyles(puckViewStyles);
    new Hearing(this, {
      "step-choose": (step) => showStep("puck", step),
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
    void puckView.startKeeping().then(startPuckSolving).then(startBoardSolving);
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
    const step = stepOf(this.steps.value, "puck", stepKeys);
    const on = (...keys: readonly string[]) => (step === "all" || keys.includes(step) ? "" : "is-off");
    const rows = boardRows(inputs, known);
    const words = boardAnswer(rows);
    return html`<ww-step-nav label="Steps of the puck" .steps=${puckSteps} .step=${step}>
        <span>${playWords(play, units)} <button type="button" class="is-quiet" @click=${() => showStep("puck", "drag")}>change</button></span>
      </ww-step-nav>
      <div class="puck-answer ${on("candidates", "drag")}">
        <ww-answer .words=${words === null ? null : { sentence: words, next: [] }} .problem=${problem ?? solveProblem} .stale=${problem !== null}></ww-answer>
      </div>
      <div class="puck-board ${on("candidates")}">
        <ww-puck-board .inputs=${inputs} .known=${known} .palette=${palette}></ww-puck-board>
        <p class="caution"><b>Screening estimate</b> by the joint model. A puck of 1.3 kg injures: no throws near heads or feet. Lead stays sealed. <button type="button" class="is-quiet" @click=${() => showStep("puck", "handoff")}>All cautions</button></p>
      </div>
      <div class="view-layout puck-layout ${step === "candidates" ? "is-off" : ""}" data-step=${step}>
      <div class="view-column puck-column is-body">
        <ww-puck-drawing class=${on("shape")} .spec=${measured?.inputs.candidate.spec ?? null} .stale=${problem !== null}></ww-puck-drawing>
        <ww-puck-cautions class=${on("shape", "handoff")} .spec=${candidate.spec} .materials=${userMaterials}></ww-puck-cautions>
        <ww-puck-figures class=${on("shape", "rules")} .inputs=${inputs} .known=${known}></ww-puck-figures>
        <ww-puck-rules class=${on("rules")} .inputs=${inputs} .known=${known} .units=${units}></ww-puck-rules>
        <ww-puck-report .inputs=${inputs} .known=${known} .units=${units}></ww-puck-report>
        <ww-choose-report .inputs=${inputs} .known=${known}></ww-choose-report>
      </div>
      <div class="view-column puck-column is-bench ${on("shape", "rules", "drag", "motion", "handoff")}">
        <ww-puck-case class=${on("handoff")} .caseTitle=${title} .problems=${this.fileProblems}></ww-puck-case>
        <ww-puck-panel class=${on("shape", "rules")} .inputs=${inputs} .problem=${problem} .units=${units}></ww-puck-panel>
        <ww-puck-pins class=${on("shape")} .inputs=${inputs} .known=${known}></ww-puck-pins>
        <ww-puck-play class=${on("drag", "motion")} .play=${play} .problem=${problem ?? solveProblem} .units=${units}></ww-puck-play>
        <ww-puck-handoff class=${on("handoff")} .turbulenceIntensity=${play.turbulenceIntensities[0]} .disabled=${measured === null || problem !== null} .message=${this.handoffMessage} .units=${units}></ww-puck-handoff>
      </div>
      <div class="view-column puck-column is-flow ${on("drag", "motion", "search", "choose")}">
        <ww-puck-drag class=${on("drag")} .inputs=${inputs} .known=${known} .units=${units} .palette=${palette}></ww-puck-drag>
        <ww-puck-motion class=${on("motion")} .inputs=${inputs} .known=${known} .units=${units} .palette=${palette}></ww-puck-motion>
        <ww-puck-tradeoff class=${on("search")} .inputs=${inputs} .known=${known} .run=${this.search.value} .units=${units} .palette=${palette}></ww-puck-tradeoff>
        <ww-puck-choose class=${on("choose")} .inputs=${inputs} .known=${known} .units=${units} .palette=${palette}></ww-puck-choose>
      </div>
    </div>`;
  }
}

const puckSteps = [
  { key: "candidates", label: "Candidates" },
  { key: "shape", label: "Shape" },
  { key: "rules", label: "Rules" },
  { key: "drag", label: "Drag" },
  { key: "motion", label: "Motion" },
  { key: "search", label: "Search" },
  { key: "choose", label: "Choose" },
  { key: "handoff", label: "Hand-off" },
  { key: "all", label: "All on one page" },
] as const;

const stepKeys = puckSteps.map(({ key }) => key);

/** How the pucks are used, in one line. */
function playWords({ shares, speeds, turbulenceIntensities, flatPlace }: PlayInputs, units: UnitPreferences): string {
  const total = shares.upright + shares.flat + shares.faceOn;
  const part = (share: number) => Math.round((100 * share) / total);
  const tu = turbulenceIntensities.map((one) => quantityText(one, "fraction", units, 2)).join(" and ");
  return `Play: flat ${flatPlace === "floor" ? "on the floor " : ""}${part(shares.flat)} %, upright ${part(shares.upright)}, face-on ${part(shares.faceOn)}; ${speeds[0]} to ${quantityText(speeds[speeds.length - 1], "speed", units)}; turbulence ${tu}`;
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-view": PuckView;
  }
}
