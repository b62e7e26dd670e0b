import { html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { PlotlyHTMLElement } from "plotly.js-dist-min";
import { saveFile } from "../../files/saveFile";
import type { PlotFigure } from "../../plots/plotFigure";
import { tableCsv } from "../../plots/tableCsv";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { loadPlotly } from "./loadPlotly";
import { plotStyles } from "./plot.styles";

const mostTableRows = 500;

/**
 * Draws one plot figure, with its table and its exports. The only component that touches the plot library. Renders in
 * the light DOM, because that library puts its styles into the document.
 */
@customElement("ww-plot")
export class PlotElement extends LitElement {
  /** What to draw; null shows the empty text. */
  @property({ attribute: false }) figure: PlotFigure | null = null;
  /** Said when there is nothing to draw yet. */
  @property() empty = "Nothing computed yet.";
  /** True when the numbers belong to an older input. */
  @property({ type: Boolean }) stale = false;

  @state() private tableShown = false;
  @state() private loadFailed = false;
  private drawing = false;
  private drawAgain = false;
  private sizes: ResizeObserver | null = null;

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
    if (this.hasUpdated) void this.updateComplete.then(() => this.start());
  }

  protected override firstUpdated(): void {
    this.start();
  }

  private start(): void {
    if (!this.isConnected) return;
    this.sizes?.disconnect();
    this.sizes = new ResizeObserver(() => void this.draw());
    this.sizes.observe(this.area);
    void this.draw();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.sizes?.disconnect();
    this.sizes = null;
    const { area } = this;
    void loadPlotly().then(
      (plotly) => {
        if (!this.isConnected) plotly.purge(area);
      },
      () => {},
    );
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has("figure") && changed.get("figure") !== undefined) void this.draw();
  }

  /** Draws the newest figure; while one drawing runs, later calls are folded into one more. */
  private async draw(): Promise<void> {
    if (this.figure === null || !this.isConnected) return;
    if (this.drawing) {
      this.drawAgain = true;
      return;
    }
    this.drawing = true;
    try {
      const plotly = await loadPlotly();
      do {
        this.drawAgain = false;
        const { figure, area } = this;
        if (figure === null || !this.isConnected || area.clientWidth === 0) break;
        const layout = { ...figure.layout, width: area.clientWidth, height: area.clientHeight };
        await plotly.react(area, [...figure.data], layout, {
          displaylogo: false,
          responsive: false,
          modeBarButtonsToRemove: ["lasso2d", "select2d", "toImage"],
          displayModeBar: "hover" as unknown as boolean,
        });
      } while (this.drawAgain);
      this.loadFailed = false;
    } catch {
      this.loadFailed = true;
    } finally {
      this.drawing = false;
    }
  }

  private async exportImage(format: "png" | "svg"): Promise<void> {
    const { figure } = this;
    if (figure === null) return;
    const plotly = await loadPlotly();
    await plotly.downloadImage(this.area as unknown as PlotlyHTMLElement, {
      format,
      filename: `wakewright-${figure.key}`,
      width: 1200,
      height: 750,
    });
  }

  private exportCsv(): void {
    if (this.figure) saveFile(`wakewright-${this.figure.key}.csv`, "text/csv", tableCsv(this.figure.table));
  }

  protected override render() {
    const { figure } = this;
    const titleId = `${this.id || figure?.key || "plot"}-title`;
    return html`<figure class=${this.stale ? "is-stale" : ""} aria-labelledby=${titleId}>
      <div class="plot-head">
        <h3 id=${titleId}>${figure?.title ?? this.title}${this.stale ? " (stale)" : ""}</h3>
        ${
          figure
            ? html`<div class="plot-actions">
              <button type="button" aria-expanded=${this.tableShown} @click=${() => {
                this.tableShown = !this.tableShown;
              }}>Table<span class="unseen"> of ${figure.title}</span></button>
              <button type="button" @click=${this.exportCsv}>CSV<span class="unseen"> of ${figure.title}</span></button>
              <button type="button" @click=${() => this.exportImage("png")}>PNG<span class="unseen"> of ${figure.title}</span></button>
              <button type="button" @click=${() => this.exportImage("svg")}>SVG<span class="unseen"> of ${figure.title}</span></button>
            </div>`
            : nothing
        }
      </div>
      <div class="plot-area ${figure ? "" : "is-empty"}" role="img" aria-label=${figure ? `Plot: ${figure.title}. ${figure.caption} The button Table shows its numbers.` : this.empty}></div>
      ${figure ? nothing : html`<p class="plot-empty">${this.empty}</p>`}
      ${this.loadFailed ? html`<p class="plot-empty" role="status">The plot library could not be loaded. The table still works.</p>` : nothing}
      ${figure ? html`<figcaption>${figure.caption}</figcaption>` : nothing}
      ${figure && this.tableShown ? this.renderTable(figure) : nothing}
    </figure>`;
  }

  private renderTable({ title, table }: PlotFigure) {
    const shown = table.rows.slice(0, mostTableRows);
    return html`<div class="table-scroll" tabindex="0" role="region" aria-label="Numbers of ${title}">
      <table>
        <thead><tr>${table.columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
        <tbody>${shown.map((row) => html`<tr>${row.map((cell) => html`<td>${cellText(cell)}</td>`)}</tr>`)}</tbody>
      </table>
      ${
        table.rows.length > shown.length
          ? html`<p>The first ${shown.length} of ${table.rows.length} rows; the CSV file has all.</p>`
          : nothing
      }
    </div>`;
  }
}

function cellText(cell: string | number | null): string {
  if (cell === null) return "–";
  return typeof cell === "number" ? String(Number(cell.toPrecision(5))) : cell;
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-plot": PlotElement;
  }
}
