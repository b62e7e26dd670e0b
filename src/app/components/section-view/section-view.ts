import { html, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import type { Design } from "../../../../shared/case/design";
import type { Problem } from "../../../../shared/result";
import type { LiveCurves } from "../../../../workers/solverApi";
import "../../cases/caseEvents";
import { openCase } from "../../cases/openCase";
import { carriedOffset } from "../../compare/carriedOffset";
import { publishedFor } from "../../desk/publishedFor";
import { loadPublishedGroups, publishedGroups } from "../../desk/publishedGroups";
import { demoRulesName, loadDemoRules } from "../../puck/demoRules";
import { cautions } from "../../reference/cautions";
import { answerWords } from "../../section/answerWords";
import { cancelCase, runCaseFile } from "../../section/caseRunning";
import { crisisZones, dragBesideZone } from "../../section/crisisZone";
import { type DetailName, deskTools, detailNames } from "../../section/deskTools";
import { inputSummaries } from "../../section/inputSummaries";
import { flowsOf } from "../../section/otherFlow";
import { ribbon } from "../../section/ribbonStore";
import { readRuleWindow } from "../../section/ruleWindow";
import { ownFlow, shownFlow } from "../../section/shownFlow";
import "../../section/sectionEvents";
import { caseRun, ruleWindow, sectionTools, sweep } from "../../section/sectionStores";
import { mostPins, type Solved } from "../../section/solved";
import { cancelSweep, pauseSweep, resumeSweep, startSweep } from "../../section/sweepPool";
import { pinPresent, unpin, workbench } from "../../section/workbench";
import { workingPoint } from "../../section/workingPoint";
import { tell } from "../../store/notices";
import { preferences } from "../../store/preferences";
import { StoreController } from "../../store/storeController";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { Hearing } from "../../view/hearing";
import { ViewElement } from "../../view/viewElement";
import "../answer/answer";
import "../case-panel/case-panel";
import "../conditions-panel/conditions-panel";
import "../desk-group/desk-group";
import "../detail-tabs/detail-tabs";
import "../drag-curve/drag-curve";
import "../few-figures/few-figures";
import "../floor-notes/floor-notes";
import "../flow-view/flow-view";
import "../key-figures/key-figures";
import "../pin-panel/pin-panel";
import "../plot-board/plot-board";
import "../report/report";
import "../ribbon/ribbon";
import "../section-panel/section-panel";
import "../speed-strip/speed-strip";
import "../sweep-panel/sweep-panel";
import "../trip-panel/trip-panel";
import { sectionViewStyles } from "./section-view.styles";

const sweepControls = { pause: pauseSweep, resume: resumeSweep, cancel: cancelSweep } as const;

/** One section in one stream: its flow, its figures, its curves. In the light DOM, because the plots inside it must be. */
@customElement("ww-section-view")
export class SectionView extends ViewElement {
  private readonly bench = new StoreController(this, workbench, (value) => value);
  private readonly tools = new StoreController(this, sectionTools, (value) => value);
  private readonly rules = new StoreController(this, ruleWindow, (value) => value);
  private readonly run = new StoreController(this, caseRun, (value) => value);
  private readonly sweep = new StoreController(this, sweep, (value) => value);
  private readonly offset = new StoreController(this, carriedOffset, (value) => value);
  private readonly measure = new StoreController(this, preferences, (value) => value.positionMeasure);
  private readonly desk = new StoreController(this, deskTools, (value) => value);
  private readonly ribbon = new StoreController(this, ribbon, (value) => value);
  private readonly flow = new StoreController(this, shownFlow, (value) => value);
  private readonly published = new StoreController(this, publishedGroups, (value) => value);
  private resting: Resting | null = null;
  /** Why the file that was chosen last could not be opened. */
  @state() private fileProblems: readonly Problem[] = [];

  constructor() {
    super();
    adoptDocumentStyles(sectionViewStyles);
    new Hearing(this, {
      "section-change": (change) => workbench.change(change),
      "section-drag-begin": () => workbench.beginDrag(),
      "section-drag": (change) => workbench.drag(change),
      "section-drag-end": () => workbench.endDrag(),
      "section-pin": pinPresent,
      "section-unpin": unpin,
      "section-tools": (change) => sectionTools.patch(change),
      "section-measure": (positionMeasure) => preferences.patch({ positionMeasure }),
      "section-rules": (isHeld) => void this.holdToRules(isHeld),
      "section-sweep": ({ design, ranges }) => startSweep(design, ranges),
      "section-sweep-control": (control) => sweepControls[control](),
      "section-case": (what) => {
        const { fileName, title, text } = caseRun.value;
        if (what === "run") runCaseFile(fileName, title, text);
        else cancelCase();
      },
      "section-ribbon": (ribbonKey) => deskTools.patch({ ribbonKey }),
      "section-flow": (key) => this.chooseFlow(key),
      "desk-group": (key) => this.fold(key),
      "detail-choose": (detail) => deskTools.patch({ detail: detail as DetailName | null }),
      "case-file": ({ fileName, text }) => void this.openFile(fileName, text),
      "case-refused": (message) => {
        this.fileProblems = [{ code: "size", message }];
      },
    });
  }

  protected override get pictureMaker() {
    return this.querySelector("ww-report");
  }

  private async openFile(fileName: string, text: Promise<string>): Promise<void> {
    try {
      this.fileProblems = await openCase(fileName, await text);
    } catch {
      this.fileProblems = [{ code: "load", message: `${fileName} could not be loaded.` }];
    }
  }

  private async holdToRules(isHeld: boolean): Promise<void> {
    if (!isHeld) {
      ruleWindow.value = null;
      return;
    }
    try {
      const rules = readRuleWindow(await loadDemoRules(), demoRulesName);
      if (rules.ok) ruleWindow.value = rules.value;
      else tell("warning", rules.problem.message);
    } catch {
      tell("warning", "The demonstration rules could not be loaded.");
    }
  }

  private fold(key: string): void {
    const { openGroups } = deskTools.value;
    deskTools.patch({
      openGroups: openGroups.includes(key) ? openGroups.filter((one) => one !== key) : [...openGroups, key],
    });
  }

  private chooseFlow(key: string): void {
    const flow = flowsOf(workbench.value.solved, workbench.value.curves?.overReynolds ?? [], this.point).find(
      (one) => one.key === key,
    );
    if (flow === undefined || key === "own") shownFlow.value = ownFlow;
    else shownFlow.value = { key, design: { ...workbench.present, speed: flow.speed }, solved: null };
  }

  private get point() {
    const { solved, curves } = this.bench.value;
    return workingPoint(solved, curves);
  }

  /** What the closed details show: it may lag behind the hand, so that nothing out of sight is drawn while it moves. */
  private atRest(): Resting {
    const { solved, curves, dragging } = this.bench.value;
    if (!dragging || this.resting === null) this.resting = { solved, curves };
    return this.resting;
  }

  protected override updated(): void {
    if (this.bench.value.solved !== null) void loadPublishedGroups();
  }

  protected override render() {
    const { history, solved, curves, pins, problem, stale, solveCount, dragging } = this.bench.value;
    const { units, palette } = this;
    const design = history.present;
    const [run, offset] = [this.run.value, this.offset.value];
    const { detail, ribbonKey } = this.desk.value;
    const isOfAnother = stale && problem !== null;
    const { point } = this;
    const zones = crisisZones(curves?.overReynolds ?? []);
    const words = point === null ? null : answerWords(point, zones, curves !== null, units);
    const flow = this.flow.value;
    const rest = this.atRest();
    return html`<div class="desk">
        <ww-answer .words=${words} .trust=${point?.applicability ?? null} .reason=${point?.reason ?? null} .problem=${problem} .stale=${isOfAnother}></ww-answer>
        ${this.renderInputs(design)}
        <div class="middle">
          <ww-flow-view .design=${design} .solved=${solved} .stale=${isOfAnother} .solveCount=${solveCount} .rules=${this.rules.value}
            .flows=${dragging ? [] : flowsOf(solved, curves?.overReynolds ?? [], point)} .other=${flow.solved} .shownFlow=${flow.key} .units=${units} .palette=${palette}></ww-flow-view>
          <ww-speed-strip .speed=${design.speed} .zones=${zones} .known=${curves !== null} .point=${point} .sides=${dragBesideZone(curves?.overReynolds ?? [], zones)} .units=${units} .palette=${palette}></ww-speed-strip>
          <ww-ribbon .design=${design} .ribbon=${this.ribbon.value} .drag=${point?.expected ?? null} .asked=${ribbonKey} .units=${units} .palette=${palette}></ww-ribbon>
        </div>
        <ww-drag-curve .solved=${solved} .curves=${curves} .pins=${pins} .published=${publishedFor(design, this.published.value)} .zone=${zones.rising} .point=${point} .units=${units} .palette=${palette}></ww-drag-curve>
      </div>
      <div class="below">
        <ww-detail-tabs .tabs=${tabs} .open=${detail}></ww-detail-tabs>
        <p class="caution"><b>Screening estimate.</b> No proof of safety or of compliance with any rule. <a href="#cautions" @click=${showCautions}>All ${cautions.length} cautions</a></p>
        <div class="details">
          <ww-floor-notes .floor=${rest.solved?.solution.floor ?? null}></ww-floor-notes>
          <ww-key-figures class=${detail === "numbers" ? "" : "is-closed"} .solved=${detail === "numbers" ? solved : rest.solved} .problem=${problem} .stale=${isOfAnother} .offset=${offset} .units=${units}></ww-key-figures>
          <ww-pin-panel class=${detail === "compare" ? "" : "is-closed"} .solved=${detail === "compare" ? solved : rest.solved} .pins=${pins} .stale=${stale}></ww-pin-panel>
          ${
            isBoard(detail)
              ? html`<ww-plot-board .shown=${detail} .solved=${solved} .curves=${curves} .pins=${pins} .isAnswered=${solved !== null || problem !== null} .stale=${isOfAnother} .dragging=${dragging} .caseRows=${run.rows} .offset=${offset} .palette=${palette} .layerChoice=${this.tools.value.layerChoice} .measure=${this.measure.value}></ww-plot-board>`
              : nothing
          }
          <ww-sweep-panel class=${detail === "sweep" ? "" : "is-closed"} .design=${design} .sweep=${this.sweep.value} .units=${units} .palette=${palette}></ww-sweep-panel>
        </div>
        <ww-report .solved=${rest.solved} .curves=${rest.curves} .pins=${pins} .problem=${problem} .run=${run} .offset=${offset} .measure=${this.measure.value} .units=${units}></ww-report>
      </div>`;
  }

  private renderInputs(design: Design) {
    const { solved, problem, stale, pins } = this.bench.value;
    const { units } = this;
    const { pattern } = this.tools.value;
    const { openGroups } = this.desk.value;
    const perimeter = solved?.solution.nodes.perimeter ?? null;
    const now = inputSummaries(design, units);
    const conditions = (part: "stream" | "turbulence" | "finish" | "layers") =>
      html`<ww-conditions-panel .shown=${part} .design=${design} .problem=${problem} .pattern=${pattern} .perimeter=${perimeter} .units=${units}></ww-conditions-panel>`;
    const group = (key: string, label: string, words: string, inside: unknown) =>
      html`<ww-desk-group .key=${key} .label=${label} .now=${words} .open=${openGroups.includes(key)}>${inside}</ww-desk-group>`;
    return html`<div class="inputs" role="group" aria-label="Inputs">
      ${group("shape", "Shape", now.shape, html`<ww-section-panel .design=${design} .problem=${problem} .rules=${this.rules.value} .units=${units}></ww-section-panel>`)}
      ${group("stream", "Stream", now.stream, conditions("stream"))}
      ${group("turbulence", "Turbulence", now.turbulence, conditions("turbulence"))}
      ${group("finish", "Finish", now.finish, conditions("finish"))}
      ${group("trips", "Trips", now.trips, html`<ww-trip-panel .trips=${design.trips} .perimeter=${perimeter ?? 0.2} .units=${units}></ww-trip-panel>`)}
      ${group("layers", "Layers", now.layers, conditions("layers"))}
      ${group("case", "Case", this.run.value.title || "none open", html`<ww-case-panel .run=${this.run.value} .problems=${this.fileProblems}></ww-case-panel>`)}
      <div class="pin"><button type="button" class="is-main" ?disabled=${solved === null || stale || pins.length >= mostPins} @click=${pinPresent}>Pin this design</button>${pins.length > 0 ? html` <span>${pins.length} pinned</span>` : nothing}</div>
      <ww-few-figures .solved=${solved}></ww-few-figures>
    </div>`;
  }
}

interface Resting {
  readonly solved: Solved | null;
  readonly curves: LiveCurves | null;
}

const tabs = Object.entries(detailNames).map(([key, label]) => ({ key, label }));

const boards = ["pressure", "separation", "layer", "shedding", "drag"] as const;

function isBoard(detail: DetailName | null): detail is (typeof boards)[number] {
  return boards.some((board) => board === detail);
}

function showCautions(event: Event): void {
  event.preventDefault();
  document.querySelector("#cautions")?.scrollIntoView();
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-section-view": SectionView;
  }
}
