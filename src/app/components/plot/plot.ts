import { html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Data, ModeBarDefaultButtons, PlotlyHTMLElement } from "plotly.js-dist-min";
import { saveFile } from "../../files/saveFile";
import { legendEntries } from "../../plots/legendEntries";
import type { PlotFigure } from "../../plots/plotFigure";
import { asScatter } from "../../plots/scatterTrace";
import { tableCsv } from "../../plots/tableCsv";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { downloadPicture } from "./downloadPicture";
import { DrawQueue } from "./drawQueue";
import { loadPlotly } from "./loadPlotly";
import { plotStyles } from "./plot.styles";
import { plotOverlay } from "./plotOverlay";
import { plotTable } from "./plotTable";
import { swatch } from "./swatch";

const drawings = new DrawQueue();

/**
 * All that the tool bar offers, named one by one: the library's own choice also uploads the figure to a service, and a
 * later version may add others of that kind.
 */
const toolbar: ModeBarDefaultButtons[][] = [
  ["zoom2d", "pan2d"],
  ["zoomIn2d", "zoomOut2d", "autoScale2d", "resetScale2d"],
];

/**
 * Draws one plot figure, with its legend, its table and its exports. The only component that touches the plot library.
 * Renders in the light DOM, because that library puts its styles into the document.
 */
@customElement("ww-plot")
export class PlotElement extends LitElement {
  /** What to draw; null shows the empty text. */
  @property({ attribute: false }) figure: PlotFigure | null = null;
  /** Said when there is nothing to draw yet. */
  @property() empty = "Nothing computed yet.";
  /** True when the numbers belong to an older input. */
  @property({ type: Boolean }) stale = false;
  /** True while a handle is dragged: newer lines are laid over the last full drawing, which would take too long. */
  @property({ type: Boolean }) lively = false;

  @state() private tableShown = false;
  @state() private loadFailed = false;
  @state() private hiddenNames: ReadonlySet<string> = new Set();
  private drawn: PlotFigure | null = null;
  private inSight = false;
  private sizes: ResizeObserver | null = null;
  private sight: IntersectionObserver | null = null;
  /** True when it was to be drawn out of sight, for instance in another size. */
  private isLate = false;

  constructor() {
    super();
    adoptDocumentStyles(plotStyles);
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  private get area(): HTMLElement {
    return this.querySelector<HTMLElement>(".plot-area")!;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.updateComplete.then(() => this.watch());
  }

  private watch(): void {
    if (!this.isConnected || this.sizes !== null) return;
    this.sizes = new ResizeObserver(() => this.requestDraw());
    this.sizes.observe(this);
    this.sight = new IntersectionObserver(
      (entries) => {
        this.inSight = entries.at(-1)?.isIntersecting ?? false;
        if (this.inSight && (this.isLate || this.drawn !== this.figure)) this.requestDraw();
      },
      { rootMargin: "300px" },
    );
    this.sight.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.sizes?.disconnect();
    this.sight?.disconnect();
    this.sizes = null;
    this.sight = null;
    drawings.withdraw(this);
    if (this.drawn === null) return;
    this.drawn = null;
    const { area } = this;
    void loadPlotly().then(
      (plotly) => plotly.purge(area),
      () => {},
    );
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (this.lively) return;
    if (changed.has("figure") || changed.has("lively") || changed.has("hiddenNames" as keyof PlotElement))
      this.requestDraw();
  }

  /** Draws now or later in full, whether in sight or not; used before printing. */
  async drawNow(): Promise<void> {
    await this.draw();
  }

  private requestDraw(): void {
    this.isLate = !this.inSight;
    if (this.figure === null || this.isLate) return;
    drawings.request(this, () => this.draw());
  }

  private async draw(): Promise<void> {
    try {
      const plotly = await loadPlotly();
      const { figure } = this;
      if (figure === null || !this.isConnected || this.area.clientWidth === 0) return;
      const { area } = this;
      await plotly.react(
        area,
        this.shownData(figure),
        { ...figure.layout, width: area.clientWidth, height: area.clientHeight },
        {
          displaylogo: false,
          responsive: false,
          modeBarButtons: toolbar,
          plotlyServerURL: "",
        },
      );
      this.drawn = figure;
      this.loadFailed = false;
    } catch {
      this.loadFailed = true;
    }
  }

  private shownData(figure: PlotFigure): Data[] {
    return figure.data.filter((trace) => !this.hiddenNames.has(asScatter(trace).name ?? ""));
  }

  private async exportImage(format: "png" | "svg"): Promise<void> {
    const { figure } = this;
    if (figure === null) return;
    try {
      await downloadPicture(figure, this.shownData(figure), format, getComputedStyle(this).backgroundColor);
    } catch {
      this.loadFailed = true;
    }
  }

  private exportCsv(): void {
    if (this.figure) saveFile(`wakewright-${this.figure.key}.csv`, "text/csv", tableCsv(this.figure.table));
  }

  private toggle(name: string): void {
    const hidden = new Set(this.hiddenNames);
    if (!hidden.delete(name)) hidden.add(name);
    this.hiddenNames = hidden;
  }

  protected override render() {
    const { figure } = this;
    if (figure === null) {
      return html`<div class="plot-area is-empty"></div><p class="plot-empty">${this.empty}</p>`;
    }
    const titleId = `${this.id || figure.key}-title`;
    const suffix = html`<span class="unseen"> of ${figure.title}</span>`;
    return html`<figure class="${this.stale ? "is-stale" : ""} ${this.lively ? "is-lively" : ""}" aria-labelledby=${titleId}>
      <div class="plot-head">
        <h3 id=${titleId}>${figure.title}${this.stale ? " (stale)" : ""}</h3>
        <div class="plot-actions">
          <button type="button" aria-expanded=${this.tableShown} @click=${() => {
            this.tableShown = !this.tableShown;
          }}>Table${suffix}</button>
          <button type="button" @click=${this.exportCsv}>CSV${suffix}</button>
          <button type="button" @click=${() => this.exportImage("png")}>PNG${suffix}</button>
          <button type="button" @click=${() => this.exportImage("svg")}>SVG${suffix}</button>
        </div>
      </div>
      <div class="plot-stack">
        <div class="plot-area" role="group" aria-label="Picture of ${figure.title}; the button Table shows its numbers"></div>
        ${this.lively && this.inSight ? plotOverlay(this.area as Partial<PlotlyHTMLElement>, this.shownData(figure)) : nothing}
      </div>
      ${this.loadFailed ? html`<p class="plot-empty" role="status">The plot library could not be loaded. The table still works.</p>` : nothing}
      <ul class="plot-legend" aria-label="Curves of ${figure.title}">
        ${legendEntries(figure.data).map(
          (entry) =>
            html`<li><button type="button" aria-pressed=${!this.hiddenNames.has(entry.name)} @click=${() => this.toggle(entry.name)}>${swatch(entry)}${entry.name}</button></li>`,
        )}
      </ul>
      <figcaption>${figure.caption}</figcaption>
      ${this.tableShown ? plotTable(figure) : nothing}
    </figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-plot": PlotElement;
  }
}
