import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { ResultRow } from "../../../../shared/engine/section/resultRow";
import type { MeasuredCorrection } from "../../../../shared/jobs/evidence/carriedCorrection";
import type { LiveCurves } from "../../../../workers/solverApi";
import { layerQuantities } from "../../plots/layerFigure";
import type { PositionMeasure } from "../../plots/surfacePosition";
import type { LayerChoice } from "../../section/sectionTools";
import type { Pin, Solved } from "../../section/solved";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { lightPalette, type Palette } from "../../style/palette";
import { emit } from "../../view/emit";
import "../plot/plot";
import { LightElement } from "../../view/lightElement";
import { boardDragCurve, boardLayer, boardPressure, boardSeparation, boardStrouhal } from "./boardFigures";
import { plotBoardStyles } from "./plot-board.styles";
import { remembered } from "./remembered";

type Pins = readonly Pin[];
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
export class PlotBoard extends LightElement {
  @property({ attribute: false }) solved: Solved | null = null;
  @property({ attribute: false }) curves: LiveCurves | null = null;
  @property({ attribute: false }) pins: Pins = [];
  /**
   * True once there is a solution, or a reason why there is none. Published points alone would load the plot library,
   * whose start takes a second, before the first figures are shown.
   */
  @property({ attribute: false }) isAnswered = false;
  /** True while the solution is that of another design, which cannot be solved. */
  @property({ type: Boolean }) stale = false;
  /** True while a handle is held. */
  @property({ type: Boolean }) dragging = false;
  @property({ attribute: false }) caseRows: Rows = noRows;
  /** A measured offset that is carried; null for none. */
  @property({ attribute: false }) offset: MeasuredCorrection | null = null;
  @property({ attribute: false }) palette: Palette = lightPalette;
  @property({ attribute: false }) layerChoice: LayerChoice = "all";
  @property() measure: PositionMeasure = "angle";
  /** The plot that is shown; "all" for every one. */
  @property() shown: "all" | "pressure" | "drag" | "separation" | "layer" | "shedding" = "all";
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

  protected override render() {
    const { solved, curves, pins, stale, dragging, palette } = this;
    const rows = this.caseShown ? this.caseRows : noRows;
    const shows = (plot: PlotBoard["shown"]) => this.shown === "all" || this.shown === plot;
    return html`<div class="board-head">
        ${
          shows("pressure")
            ? html`<label>Surface position by
          <select @change=${(event: Event) =>
            emit(this, "section-measure", (event.target as HTMLSelectElement).value === "arc" ? "arc" : "angle")}>
            <option value="angle" ?selected=${this.measure === "angle"}>angle</option>
            <option value="arc" ?selected=${this.measure === "arc"}>arc length</option>
          </select>
        </label>`
            : nothing
        }
        ${
          shows("layer")
            ? html`<label>Layer quantity
          <select @change=${(event: Event) =>
            emit(this, "section-tools", { layerChoice: (event.target as HTMLSelectElement).value as LayerChoice })}>
            ${layerTexts.map(([value, words]) => html`<option value=${value} ?selected=${value === this.layerChoice}>${words}</option>`)}
          </select>
        </label>`
            : nothing
        }
        ${
          shows("drag") || shows("separation") || shows("shedding")
            ? html`<label><input type="checkbox" .checked=${this.caseShown} @change=${(event: Event) => {
                this.caseShown = (event.target as HTMLInputElement).checked;
              }} /> results of the case</label>`
            : nothing
        }
      </div>
      <div class="board">
        ${shows("pressure") ? html`<ww-plot id="plot-pressure" .figure=${this.pressure(solved, pins, this.measure, palette)} .stale=${stale} .lively=${dragging}></ww-plot>` : nothing}
        ${shows("drag") ? html`<ww-plot id="plot-drag" .figure=${this.isAnswered ? this.drag(solved, curves, pins, rows, palette, this.offset) : null} .stale=${stale} .lively=${dragging}></ww-plot>` : nothing}
        ${shows("separation") ? html`<ww-plot id="plot-separation" .figure=${this.separation(curves, pins, rows, palette)} .stale=${stale} .lively=${dragging}></ww-plot>` : nothing}
        ${this.layers.map(({ quantity, figure }) =>
          shows("layer") && (this.layerChoice === "all" || this.layerChoice === quantity)
            ? html`<ww-plot id="plot-layer-${quantity}" .figure=${figure(solved, pins, palette)} .stale=${stale} .lively=${dragging}></ww-plot>`
            : nothing,
        )}
        ${shows("shedding") ? html`<ww-plot id="plot-strouhal" .figure=${this.strouhal(curves, pins, rows, palette)} .stale=${stale} .lively=${dragging}></ww-plot>` : nothing}
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-plot-board": PlotBoard;
  }
}
