import { html, LitElement } from "lit";
import { customElement, state } from "lit/decorators.js";
import type { ResultRow } from "../../../../shared/case/resultRow";
import type { MeasuredCorrection } from "../../../../shared/evidence/carriedCorrection";
import type { LiveCurves } from "../../../../workers/solverApi";
import { carriedOffset } from "../../compare/carriedOffset";
import type { LayerQuantity } from "../../plots/layerFigure";
import type { PositionMeasure } from "../../plots/surfacePosition";
import { caseRun } from "../../store/caseRun";
import { pageState } from "../../store/pageState";
import { preferences } from "../../store/preferences";
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

/** All plots of the present design, the pinned candidates and the open case. In the light DOM, as plots must be. */
@customElement("ww-plot-board")
export class PlotBoard extends LitElement {
  private readonly bench = new StoreController(this, workbench, (value) => value);
  private readonly caseRows = new StoreController(this, caseRun, (value) => value.rows);
  private readonly offset = new StoreController(this, carriedOffset, (value) => value);
  private readonly isDark = new StoreController(this, pageState, (value) => value.isDark);
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
  private readonly layer = remembered((solved: Solved | null, pins: Pins, quantity: LayerQuantity, palette: Palette) =>
    boardLayer({ solved, pins }, quantity, palette),
  );
  private readonly strouhal = remembered((curves: LiveCurves | null, pins: Pins, rows: Rows, palette: Palette) =>
    boardStrouhal({ curves, pins }, rows, palette),
  );
  @state() private layerQuantity: LayerQuantity = "momentumThickness";
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
          <select @change=${(event: Event) => {
            this.layerQuantity = (event.target as HTMLSelectElement).value as LayerQuantity;
          }}>
            <option value="momentumThickness">momentum thickness θ</option>
            <option value="shapeFactor">shape factor H</option>
            <option value="skinFriction">skin friction Cf</option>
          </select>
        </label>
        <label><input type="checkbox" .checked=${this.caseShown} @change=${(event: Event) => {
          this.caseShown = (event.target as HTMLInputElement).checked;
        }} /> results of the case</label>
      </div>
      <div class="board">
        <ww-plot id="plot-pressure" .figure=${this.pressure(solved, pins, this.measure.value, palette)} .stale=${stale} .lively=${bench.dragging}></ww-plot>
        <ww-plot id="plot-drag" .figure=${this.drag(solved, curves, pins, rows, palette, this.offset.value)} .stale=${stale} .lively=${bench.dragging}></ww-plot>
        <ww-plot id="plot-separation" .figure=${this.separation(curves, pins, rows, palette)} .stale=${stale} .lively=${bench.dragging}></ww-plot>
        <ww-plot id="plot-layer" .figure=${this.layer(solved, pins, this.layerQuantity, palette)} .stale=${stale} .lively=${bench.dragging}></ww-plot>
        <ww-plot id="plot-strouhal" .figure=${this.strouhal(curves, pins, rows, palette)} .stale=${stale} .lively=${bench.dragging}></ww-plot>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-plot-board": PlotBoard;
  }
}
