import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { type Design, demoDesign } from "../../../../shared/case/design";
import { type RibbonDrawing, ribbonScene } from "../../desk/ribbonScene";
import type { Ribbon as RibbonState } from "../../section/ribbon";
import { sweepInputs } from "../../section/sweepInputs";
import { lightPalette, type Palette } from "../../style/palette";
import { quantityText, type UnitPreferences, unitFor } from "../../units/units";
import { emit } from "../../view/emit";
import { curveTable } from "../drag-curve/curveTable";
import "../ring/ring";
import { type RingStep, stepValue } from "../ring/ring";
import { figureStyles } from "../scene-figure/figureStyles";
import { saveScene, saveTable } from "../scene-figure/saveScene";
import { SceneCanvas } from "../scene-figure/sceneCanvas";

/** Parts of its range that a key moves the ring by. */
const keySteps = 100;

/** The drag over one input; a click or its ring uses a value. Sends `section-ribbon`, `section-change` and drags. */
@customElement("ww-ribbon")
export class Ribbon extends LitElement {
  static override styles = [
    figureStyles,
    css`
      select {
        font: inherit;
        font-size: 13px;
        font-weight: 700;
        color: var(--ink);
        background: none;
        border: none;
        border-bottom: 1px solid var(--edge);
        padding: 0;
        min-height: 18px;
      }
      .picture {
        cursor: crosshair;
      }
      button.best {
        border: none;
        background: none;
        font: inherit;
        font-weight: 700;
        color: var(--accent);
        padding: 0;
        cursor: pointer;
        text-decoration: underline dotted;
      }
      .hint {
        position: absolute;
        top: 2px;
        right: 24px;
        font-size: 11px;
        background: var(--paper);
        color: var(--ink);
        padding: 0 4px;
        pointer-events: none;
      }
    `,
  ];

  @property({ attribute: false }) design: Design = demoDesign;
  @property({ attribute: false }) ribbon: RibbonState | null = null;
  /** Expected drag of the design itself. */
  @property({ attribute: false }) drag: number | null = null;
  /** Key of the input that is asked for; its ribbon may still be on its way. */
  @property() asked = "edgeRadius";
  @property({ attribute: false }) units: UnitPreferences = {};
  @property({ attribute: false }) palette: Palette = lightPalette;
  @state() private hovered: number | null = null;
  private readonly canvas = new SceneCanvas(this);
  private drawing: RibbonDrawing | null = null;

  protected override updated(): void {
    this.canvas.paint(this.drawing);
  }

  private get input() {
    return sweepInputs(this.design).find(({ key }) => key === this.ribbon?.key);
  }

  private snapped(x: number): number | null {
    const { drawing, input } = this;
    if (drawing === null || input === undefined) return null;
    const unit = unitFor(input.kind, this.units);
    const { from, to, valueAt } = drawing.xScale;
    const value = Math.min(to, Math.max(from, valueAt(x)));
    return Math.min(to, Math.max(from, unit.toSi(Number(unit.fromSi(value).toPrecision(value > 0.5 * to ? 3 : 2)))));
  }

  private use(value: number | null, event: "section-change" | "section-drag" = "section-change"): void {
    const { input } = this;
    if (value === null || input === undefined) return;
    emit(this, event, input.set(this.design, value));
  }

  private press(step: RingStep): void {
    const { input, drawing } = this;
    if (input === undefined || drawing === null) return;
    const { from, to } = drawing.xScale;
    this.use(
      stepValue(step, { value: input.of(this.design), lowest: from, highest: to, size: (to - from) / keySteps }),
    );
  }

  protected override render() {
    const { canvas, ribbon, design, input, units, drag } = this;
    const inputs = sweepInputs(design);
    const unit = input === undefined ? null : unitFor(input.kind, units);
    const value = input?.of(design) ?? Number.NaN;
    this.drawing =
      canvas.hasSize && ribbon !== null && unit !== null
        ? ribbonScene(
            {
              ribbon,
              fromSi: unit.fromSi,
              unit: unit.symbol,
              value,
              drag,
              crisisWords:
                input?.key === "speed" ? "crisis" : `crisis at ${quantityText(design.speed, "speed", units, 2)}`,
            },
            [canvas.width, canvas.height],
            this.palette,
          )
        : null;
    const { drawing } = this;
    const best = drawing?.best ?? null;
    return html`<div class="head">
        <select aria-label="Input of the ribbon" @change=${(event: Event) => emit(this, "section-ribbon", (event.target as HTMLSelectElement).value)}>
          ${inputs.map((one) => html`<option value=${one.key} ?selected=${one.key === this.asked}>${one.label.split(",")[0]}</option>`)}
        </select>
        <span class="note">Cd at ${quantityText(design.speed, "speed", units, 3)}; click to use</span>
        <span class="saves">
          <button type="button" ?disabled=${drawing === null} @click=${() => drawing && saveScene("ribbon", drawing, "png", this.palette.paper)}>PNG<span class="unseen"> of the ribbon</span></button>
          <button type="button" ?disabled=${drawing === null} @click=${() => drawing && saveScene("ribbon", drawing, "svg", this.palette.paper)}>SVG<span class="unseen"> of the ribbon</span></button>
          <button type="button" ?disabled=${ribbon === null} @click=${() => this.saveCsv()}>CSV<span class="unseen"> of the ribbon</span></button>
        </span>
        ${
          best === null || input === undefined
            ? nothing
            : html`<span class="right"><button type="button" class="best" @click=${() => this.use(best.value)}>best ${quantityText(best.value, input.kind, units, 3)}: Cd ${best.drag.toFixed(2)}</button></span>`
        }
      </div>
      <div class="picture"
        @pointermove=${(event: PointerEvent) => {
          this.hovered = this.snapped(event.offsetX);
        }}
        @pointerleave=${() => {
          this.hovered = null;
        }}
        @click=${(event: MouseEvent) => {
          if ((event.target as Element).localName !== "ww-ring") this.use(this.snapped(event.offsetX));
        }}
      ><canvas aria-hidden="true"></canvas>
        ${this.hovered === null || input === undefined ? nothing : html`<span class="hint">use ${quantityText(this.hovered, input.kind, units, 3)}</span>`}
        <ww-ring
          data-handle="ribbon"
          label="${input?.label ?? "Input"} on the ribbon"
          .value=${value}
          .lowest=${drawing?.xScale.from ?? 0}
          .highest=${drawing?.xScale.to ?? 1}
          .words=${input === undefined ? "" : quantityText(value, input.kind, units)}
          .x=${drawing === null ? -100 : drawing.xScale.at(value)}
          .y=${drawing === null || drag === null ? -100 : drawing.yScale.at(drag)}
          @ring-begin=${() => emit(this, "section-drag-begin")}
          @ring-move=${(event: CustomEvent<PageEvents["ring-move"]>) => this.use(this.snapped(event.detail.x), "section-drag")}
          @ring-end=${() => emit(this, "section-drag-end")}
          @ring-step=${(event: CustomEvent<RingStep>) => this.press(event.detail)}
        ></ww-ring>
      </div>`;
  }

  private saveCsv(): void {
    const { ribbon, input } = this;
    if (ribbon === null || input === undefined) return;
    const known = ribbon.values.flatMap((value, i) =>
      ribbon.rows[i] === null ? [] : [[value, ribbon.rows[i]] as const],
    );
    saveTable(
      "ribbon",
      curveTable(
        known.map(([, row]) => row),
        [[`${input.key}, SI`, known.map(([value]) => value)]],
      ),
    );
  }
}

declare global {
  interface PageEvents {
    /** Key of the input whose ribbon is wanted. */
    "section-ribbon": string;
  }
  interface HTMLElementTagNameMap {
    "ww-ribbon": Ribbon;
  }
}
