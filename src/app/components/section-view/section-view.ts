import { html } from "lit";
import { customElement, state } from "lit/decorators.js";
import type { Problem } from "../../../../shared/result";
import "../../cases/caseEvents";
import { openCase } from "../../cases/openCase";
import { carriedOffset } from "../../compare/carriedOffset";
import { demoRulesName, loadDemoRules } from "../../puck/demoRules";
import { cancelCase, runCaseFile } from "../../section/caseRunning";
import { readRuleWindow } from "../../section/ruleWindow";
import "../../section/sectionEvents";
import { caseRun, ruleWindow, sectionTools, sweep } from "../../section/sectionStores";
import { cancelSweep, pauseSweep, resumeSweep, startSweep } from "../../section/sweepPool";
import { pinPresent, unpin, workbench } from "../../section/workbench";
import { tell } from "../../store/notices";
import { preferences } from "../../store/preferences";
import { StoreController } from "../../store/storeController";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { Hearing } from "../../view/hearing";
import { ViewElement } from "../../view/viewElement";
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

  protected override render() {
    const { history, solved, curves, pins, problem, stale, solveCount, dragging } = this.bench.value;
    const { units, palette } = this;
    const design = history.present;
    const { pattern, layerChoice } = this.tools.value;
    const [rules, run, offset, measure] = [this.rules.value, this.run.value, this.offset.value, this.measure.value];
    const perimeter = solved?.solution.nodes.perimeter ?? null;
    const isOfAnother = stale && problem !== null;
    return html`<div class="layout">
      <div class="stream-area">
        <ww-flow-view .design=${design} .solved=${solved} .stale=${isOfAnother} .solveCount=${solveCount} .rules=${rules} .units=${units}></ww-flow-view>
        <ww-key-figures .solved=${solved} .problem=${problem} .stale=${isOfAnother} .offset=${offset} .units=${units}></ww-key-figures>
        <ww-floor-notes .floor=${solved?.solution.floor ?? null}></ww-floor-notes>
        <ww-pin-panel .solved=${solved} .pins=${pins} .stale=${stale}></ww-pin-panel>
        <ww-report .solved=${solved} .curves=${curves} .pins=${pins} .problem=${problem} .run=${run} .offset=${offset} .measure=${measure} .units=${units}></ww-report>
      </div>
      <div class="bench-area">
        <ww-case-panel .run=${run} .problems=${this.fileProblems}></ww-case-panel>
        <ww-section-panel .design=${design} .problem=${problem} .rules=${rules} .units=${units}></ww-section-panel>
        <ww-conditions-panel .design=${design} .problem=${problem} .pattern=${pattern} .perimeter=${perimeter} .units=${units}></ww-conditions-panel>
        <ww-trip-panel .trips=${design.trips} .perimeter=${perimeter ?? 0.2} .units=${units}></ww-trip-panel>
      </div>
      <div class="plots-area">
        <ww-plot-board .solved=${solved} .curves=${curves} .pins=${pins} .isAnswered=${solved !== null || problem !== null} .stale=${isOfAnother} .dragging=${dragging} .caseRows=${run.rows} .offset=${offset} .palette=${palette} .layerChoice=${layerChoice} .measure=${measure}></ww-plot-board>
        <ww-sweep-panel .design=${design} .sweep=${this.sweep.value} .units=${units} .palette=${palette}></ww-sweep-panel>
      </div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-section-view": SectionView;
  }
}
