import { html, nothing, type PropertyValues } from "lit";
import { customElement, state } from "lit/decorators.js";
import type { SectionSpec } from "../../../../shared/engine/geometry/sectionSpec";
import "../../cases/caseEvents";
import { CasesDesk } from "../../cases/casesDesk";
import { openCase } from "../../cases/openCase";
import { loadDemoCase } from "../../files/demoCases";
import { galleryExamples } from "../../gallery/galleryExamples";
import "../../imports/importEvents";
import { OutlineDesk } from "../../imports/outlineDesk";
import { cautions } from "../../reference/cautions";
import { ofFamily } from "../../section/sectionFields";
import { pinPresent, workbench } from "../../section/workbench";
import { dismiss, notices, tell } from "../../store/notices";
import { closeDialog, pageState } from "../../store/pageState";
import { preferences } from "../../store/preferences";
import { StoreController } from "../../store/storeController";
import { type ViewName, viewTexts } from "../../store/viewNames";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { darkPalette, lightPalette } from "../../style/palette";
import { Hearing } from "../../view/hearing";
import { LightElement } from "../../view/lightElement";
import type { ViewElement } from "../../view/viewElement";
import { outlineWorker } from "../../view/workers";
import { ShownPart } from "../../views/shownPart";
import { loadPart } from "../../views/viewRegistry";
import "../cases-dialog/cases-dialog";
import "../dialog/dialog";
import "../glossary/glossary";
import "../guide/guide";
import "../import-dialog/import-dialog";
import "../masthead/masthead";
import "../notice-area/notice-area";
import "../section-view/section-view";
import { appStyles } from "./app.styles";
import { ExtraDialogs } from "./extraDialogs";
import { laterViewNames, laterViews } from "./laterViews";

const demoName = "harbour-league-puck.json";

/** The whole page. In the light DOM, because the plots inside it must be. */
@customElement("ww-app")
export class App extends LightElement {
  private readonly page = new StoreController(this, pageState, (value) => value);
  private readonly theme = new StoreController(this, preferences, (value) => value.theme);
  private readonly notices = new StoreController(this, notices, (value) => value);
  private readonly shown = new ShownPart(this);
  private readonly cases = new CasesDesk(this);
  private readonly outlines = new OutlineDesk(() => outlineWorker(null));
  private readonly reading = new StoreController(this, this.outlines.task, (value) => value);
  private readonly extras = new ExtraDialogs(this);
  /** Views whose program was loaded; they stay. */
  @state() private loaded: ReadonlySet<ViewName> = new Set(["section"]);

  constructor() {
    super();
    adoptDocumentStyles(appStyles);
    new Hearing(this, {
      "view-choose": (view) => pageState.patch({ view }),
      "view-step": (step) => this.shown.part?.[step](),
      "theme-choose": (theme) => preferences.patch({ theme }),
      "print-report": () => this.printReport(),
      "notice-dismiss": dismiss,
      "open-dialog": (dialog) => {
        pageState.patch({ dialog });
        if (dialog === "cases") this.cases.open();
        if (dialog === "gallery" || dialog === "tour") void this.extras.open(dialog);
      },
      "close-dialog": closeDialog,
      "cases-rename": (title) => this.shown.part?.rename(title),
      "cases-choose": ({ view, isChosen }) => this.cases.choose(view, isChosen),
      "cases-save": (where) => void this.cases.save(where),
      "cases-reopen": (stored) => void this.cases.reopen(stored),
      "cases-forget": (stored) => void this.cases.forget(stored),
      "guide-step": (step) => void this.guide(step),
      "section-change": (change) => workbench.change(change),
      "section-pin": pinPresent,
      "outline-ask": (question) => void this.outlines.task.run(question),
      "outline-cancel": () => this.outlines.cancel(),
      "gallery-open": (fileName) => void this.openExample(fileName),
      "tour-stop": (stop) => this.extras.tour?.goToStop(stop),
      "tour-stream": (stream) => void this.extras.tour?.solveTour(stream),
    });
  }

  protected override willUpdate(_: PropertyValues): void {
    const { view } = this.page.value;
    if (view === "section" || this.loaded.has(view)) return;
    Promise.all([loadPart(view), laterViews[view].load()]).then(
      () => {
        this.loaded = new Set([...this.loaded, view]);
      },
      () => {
        pageState.patch({ view: "section" });
        tell("warning", `The view ${viewTexts[view]} could not be loaded. Try again when the network is back.`);
      },
    );
  }

  private printReport(): void {
    void this.querySelector<ViewElement>(`main[data-view="${this.page.value.view}"] > *`)?.printReport();
  }

  private async openExample(fileName: string): Promise<void> {
    const example = galleryExamples.find((one) => one.fileName === fileName);
    if (example === undefined) return;
    closeDialog();
    pageState.patch({ view: example.view });
    try {
      const problems = await openCase(fileName, await loadDemoCase(fileName));
      if (problems.length > 0) tell("warning", problems[0].message);
    } catch {
      tell("warning", `The example ${fileName} could not be loaded.`);
    }
  }

  private async guide(step: "demo" | "round"): Promise<void> {
    if (step === "demo") await openCase(demoName, await loadDemoCase(demoName));
    const section: SectionSpec =
      step === "demo"
        ? { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.005 }
        : ofFamily("stadium", workbench.present.section);
    workbench.change({ section, sectionName: null });
  }

  protected override render() {
    const { view, dialog } = this.page.value;
    const look = this.shown.part?.look() ?? null;
    const { cases } = this;
    return html`<ww-masthead .look=${look} .view=${view} .theme=${this.theme.value}></ww-masthead>
      ${this.loaded.has(view) ? nothing : html`<p class="loading" role="status">Loading the view ${viewTexts[view]} ...</p>`}
      ${laterViewNames.map((name) => (this.loaded.has(name) ? html`<main data-view=${name} ?hidden=${view !== name}>${laterViews[name].render()}</main>` : nothing))}
      <main data-view="section" ?hidden=${view !== "section"}><ww-section-view></ww-section-view></main>
      <footer id="cautions">
        <h2>Cautions</h2>
        <ul>${cautions.map((caution) => html`<li>${caution}</li>`)}</ul>
      </footer>
      <ww-notice-area .notices=${this.notices.value}></ww-notice-area>
      <ww-dialog heading="Cases" ?open=${dialog === "cases"} @close=${closeDialog}>
        <ww-cases-dialog .caseTitle=${look?.title ?? ""} .shown=${view} .offered=${cases.offered} .chosen=${cases.chosen} .saved=${cases.saved} .recent=${cases.recent} .unread=${cases.unread} .link=${cases.link} .said=${cases.said} .problems=${cases.problems}></ww-cases-dialog>
      </ww-dialog>
      <ww-dialog heading="Import a contour" ?open=${dialog === "import"} @close=${closeDialog}>
        <ww-import-dialog .reading=${this.reading.value}></ww-import-dialog>
      </ww-dialog>
      <ww-dialog heading="First steps" ?open=${dialog === "guide"} @close=${closeDialog}>
        <ww-guide></ww-guide>
      </ww-dialog>
      <ww-dialog heading="Worked examples" .wide=${true} ?open=${dialog === "gallery"} @close=${closeDialog}>
        ${this.extras.hasGallery ? html`<ww-gallery></ww-gallery>` : nothing}
      </ww-dialog>
      <ww-dialog heading="The drag curve of a cylinder in six stops" .wide=${true} ?open=${dialog === "tour"} @close=${closeDialog}>
        ${this.extras.tour === null || dialog !== "tour" ? nothing : html`<ww-tour .tour=${this.extras.tour.tour.value} .published=${this.extras.published} .palette=${this.page.value.isDark ? darkPalette : lightPalette}></ww-tour>`}
      </ww-dialog>
      <ww-dialog heading="Glossary" ?open=${dialog === "glossary"} @close=${closeDialog}>
        <ww-glossary></ww-glossary>
      </ww-dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-app": App;
  }
}
