import { html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, state } from "lit/decorators.js";
import { loadPart } from "../../engine/viewRegistry";
import { cautions } from "../../reference/cautions";
import { tell } from "../../store/notices";
import { closeDialog, pageState, type ViewName, viewTexts } from "../../store/pageState";
import { StoreController } from "../../store/storeController";
import { adoptDocumentStyles } from "../../style/documentStyles";
import "../cases-dialog/cases-dialog";
import "../dialog/dialog";
import "../glossary/glossary";
import "../guide/guide";
import "../import-dialog/import-dialog";
import "../masthead/masthead";
import "../notice-area/notice-area";
import "../section-view/section-view";
import { appStyles } from "./app.styles";
import { laterViewNames, laterViews } from "./laterViews";
import type { ReportingView } from "./reportingView";

/** The whole page. In the light DOM, because the plots inside it must be. */
@customElement("ww-app")
export class App extends LitElement {
  private readonly view = new StoreController(this, pageState, (value) => value.view);
  /** Views whose program was loaded; they stay. */
  @state() private loaded: ReadonlySet<ViewName> = new Set(["section"]);
  private readonly dialog = new StoreController(this, pageState, (value) => value.dialog);

  constructor() {
    super();
    adoptDocumentStyles(appStyles);
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(_: PropertyValues): void {
    const view = this.view.value;
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
    void this.querySelector<ReportingView>(`main[data-view="${this.view.value}"] > *`)?.printReport();
  }

  protected override render() {
    const view = this.view.value;
    return html`<ww-masthead @print-report=${this.printReport}></ww-masthead>
      ${this.loaded.has(view) ? nothing : html`<p class="loading" role="status">Loading the view ${viewTexts[view]} ...</p>`}
      ${laterViewNames.map((name) => (this.loaded.has(name) ? html`<main data-view=${name} ?hidden=${view !== name}>${laterViews[name].render()}</main>` : nothing))}
      <main data-view="section" ?hidden=${view !== "section"}><ww-section-view></ww-section-view></main>
      <footer>
        <h2>Cautions</h2>
        <ul>${cautions.map((caution) => html`<li>${caution}</li>`)}</ul>
      </footer>
      <ww-notice-area></ww-notice-area>
      <ww-dialog heading="Cases" ?open=${this.dialog.value === "cases"} @close=${closeDialog}>
        <ww-cases-dialog .open=${this.dialog.value === "cases"}></ww-cases-dialog>
      </ww-dialog>
      <ww-dialog heading="Import a contour" ?open=${this.dialog.value === "import"} @close=${closeDialog}>
        <ww-import-dialog></ww-import-dialog>
      </ww-dialog>
      <ww-dialog heading="First steps" ?open=${this.dialog.value === "guide"} @close=${closeDialog}>
        <ww-guide></ww-guide>
      </ww-dialog>
      <ww-dialog heading="Glossary" ?open=${this.dialog.value === "glossary"} @close=${closeDialog}>
        <ww-glossary></ww-glossary>
      </ww-dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-app": App;
  }
}
