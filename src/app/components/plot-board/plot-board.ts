import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import type { ResultRow } from "../../../../shared/engine/section/resultRow";
import type { MeasuredCorrection } from "../../../../shared/jobs/evidence/carriedCorrection";
import type { LiveCurves } from "../../../../workers/solverApi";
import { carriedOffset } from "../../compare/carriedOffset";
import { layerQuantities } from "../../plots/layerFigure";
import type { PositionMeasure } from "../../plots/surfacePosition";
import { caseRun } from "../../store/caseRun";
import { pageState } from "../../store/pageState";
import { preferences } from "../../store/preferences";
import { type LayerChoice, sectionTools } from "../../store/sectionTools";
import { StoreController } from "../../store/storeController";
import { type Solved, type Workbench, workbench } from "../../store/workbench";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { darkPalette, lightPalette, type Palette } from "../../style/palette";
import "../plot/plot";
import { boardDragCurve, boardLayer, boardPressure, boardSeparation, boardStrouhal } from "./boardFigures";
import { plotBoardStyles } from "./plot-board.styles";
import { remembered } from "./remembered";

type Pins = Workbench["pins"];
type Rows = readonly ResultRow[];

const noRows: Rows = [];

const layerTexts: readonly (readonly [LayerChoice, string])[] = [
  ["momentumThickness", "momentum thickness θ"],
  ["shapeFactor", "shape factor H"],
  ["skinFriction", "skin friction Cf"],
  ["all", "all three"],
];

/** All plots of the present design, the pinned candidates and the open case. In the light DOM, as plots must be. */
@customElement("ww-plot-board")
export class PlotBoard extends LitElement {
  private readonly bench = new StoreController(this, workbench, (value) => value);
  private readonly caseRows = new StoreController(this, caseRun, (value) => value.rows);
  private readonly offset = new StoreController(this, carriedOffset, (value) => value);
  private readonly isDark = new StoreController(this, pageState, (value) => value.isDark);
  private readonly layerChoice = new StoreController(this, sectionTools, (value) => value.layerChoice);
  private readonly measure = new StoreController(this, preferences, (value) => value.positionMeasure);
  private readonly pressure = remembered(
    (solved: Solved | null, pins: Pins, measure: PositionMeasure, palette: Palette) =>
      boardPressure({ solved, pins }, measure, palette),
  );
  private readonly drag = remembered(
    (
      solved: Solved | null,
      curves: LiveCurves | null,
      pins: Pins,
      rows: Rows,
      palette: Palette,
      correction: MeasuredCorrection | null,
    ) => boardDragCurve({ solved, curves, pins }, rows, palette, correction),
  );
  private readonly separation = remembered((curves: LiveCurves | null, pins: Pins, rows: Rows, palette: Palette) =>
    boardSeparation({ curves, pins }, rows, palette),
  );
  private readonly layers = layerQuantities.map((quantity) => ({
    quantity,
    figure: remembered((solved: Solved | null, pins: Pins, palette: Palette) =>
      boardLayer({ solved, pins }, quantity, palette),
    ),
  }));
  private readonly strouhal = remembered((curves: LiveCurves | null, pins: Pins, rows: Rows, palette: Palette) =>
    boardStrouhal({ curves, pins }, rows, palette),
  );
  @state() private caseShown = true;

  constructor() {
    super();
    adoptDocumentStyles(plotBoardStyles);
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render() {
    const bench = this.bench.value;
    const { solved, curves, pins } = bench;
    const rows = this.caseShown ? this.caseRows.value : noRows;
    const palette = this.isDark.value ? darkPalette : lightPalette;
    const stale = bench.stale && bench.problem !== null;
    // Published points alone would load the plot library, whose start takes a second, before the first figures are shown.
    const isAnswered = solved !== null || bench.problem !== null;
    return html`<div class="board-head">
        <h2>Plots</h2>
        <label>Surface position by
          <select @change=${(event: Event) =>
            preferences.patch({
              positionMeasure: (event.target as HTMLSelectElement).value === "arc" ? "arc" : "angle",
            })}>
            <option value="angle" ?selected=${this.measure.value === "angle"}>angle</option>
            <option value="arc" ?selected=${this.measure.value === "arc"}>arc length</option>
          </select>
        </label>
        <label>Layer quantity
          <select @change=${(event: Event) =>
            sectionTools.patch({ layerChoice: (event.target as HTMLSelectElement).value as LayerChoice })}>
            ${layerTexts.map(([value, words]) => html`<option value=${value} ?selected=${value === this.layerChoice.value}>${words}</option>`)}
          </select>
        </label>
        <label><input type="checkbox" .checked=${this.caseShown} @change=${(event: Event) => {
          this.caseShown = (event.target as HTMLInputElement).checked;
        }} /> results of the case</label>
      </div>
      <div class="board">
        <ww-plot id="plot-pressure" .figure=${this.pressure(solved, pins, this.measure.value, palette)} .stale=${stale} .lively=${bench.dragging}></ww-plot>
        <ww-plot id="plot-drag" .figure=${isAnswered ? this.drag(solved, curves, pins, rows, palette, this.offset.value) : null} .stale=${stale} .lively=${bench.dragging}></ww-plot>
        <ww-plot id="plot-separation" .figure=${this.separation(curves, pins, rows, palette)} .stale=${stale} .lively=${bench.dragging}></ww-plot>
        ${this.layers.map(({ quantity, figure }) =>
          this.layerChoice.value === "all" || this.layerChoice.value === quantity
            ? html`<ww-plot id="plot-layer-${quantity}" .figure=${figure(solved, pins, palette)} .stale=${stale} .lively=${bench.dragging}></ww-plot>`
            : nothing,
        )}
        <ww-plot id="plot-strouhal" .figure=${this.strouhal(curves, pins, rows, palette)} .stale=${stale} .lively=${bench.dragging}></ww-plot>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-plot-board": PlotBoard;
  }
}
