import { html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import { speedBounds } from "../../../../shared/document/limits";
import { type SpeedStripDrawing, speedStripScene } from "../../desk/speedStripScene";
import { type CrisisZones, noZones } from "../../section/crisisZone";
import { shareWords } from "../../section/sharesInWords";
import type { WorkingPoint } from "../../section/workingPoint";
import { lightPalette, type Palette } from "../../style/palette";
import { quantityText, type UnitPreferences, unitFor } from "../../units/units";
import { emit } from "../../view/emit";
import "../ring/ring";
import { type RingStep, stepValue } from "../ring/ring";
import { figureStyles } from "../scene-figure/figureStyles";
import { SceneCanvas } from "../scene-figure/sceneCanvas";

const step = 0.1;

/** The speed against the drag crisis; its ring changes the stream's speed. Sends `section-drag-begin`, `section-drag`, `section-drag-end` and `section-change`. */
@customElement("ww-speed-strip")
export class SpeedStrip extends LitElement {
  static override styles = figureStyles;

  /** m/s */
  @property({ type: Number }) speed = 3;
  @property({ attribute: false }) zones: CrisisZones = noZones;
  @property({ attribute: false }) point: WorkingPoint | null = null;
  /** Expected drag well before and well past the crisis. */
  @property({ attribute: false }) sides: { readonly before: number | null; readonly past: number | null } = {
    before: null,
    past: null,
  };
  /** False while the curve that holds the crisis is on its way. */
  @property({ type: Boolean }) known = true;
  @property({ attribute: false }) units: UnitPreferences = {};
  @property({ attribute: false }) palette: Palette = lightPalette;
  private readonly canvas = new SceneCanvas(this);
  private drawing: SpeedStripDrawing | null = null;
  /** The axis as it was when the ring was taken: it stands still under the hand. */
  private held: SpeedStripDrawing["scale"] | null = null;

  protected override updated(): void {
    this.canvas.paint(this.drawing);
  }

  private get highest(): number {
    return speedBounds.to;
  }

  private move({ x }: PageEvents["ring-move"]): void {
    const scale = this.held ?? this.drawing?.scale;
    if (scale === undefined) return;
    const unit = unitFor("speed", this.units);
    const typed = Math.max(0.02, scale.valueAt(Math.min(x, scale.at(scale.to))));
    emit(this, "section-drag", { speed: Math.min(this.highest, unit.toSi(Math.round(typed * 100) / 100)) });
  }

  private press(ringStep: RingStep): void {
    const next = stepValue(ringStep, {
      value: this.speed,
      lowest: step,
      highest: Math.max(this.speed, 10),
      size: step,
    });
    emit(this, "section-change", { speed: next });
  }

  protected override render() {
    const { canvas, speed, units, point } = this;
    const unit = unitFor("speed", units);
    const shown = ({ low, mid, high }: NonNullable<CrisisZones["rising"]>) => ({
      low: unit.fromSi(low),
      mid: unit.fromSi(mid),
      high: unit.fromSi(high),
    });
    this.drawing = canvas.hasSize
      ? speedStripScene(
          {
            speed: unit.fromSi(speed),
            zones: {
              rising: this.zones.rising === null ? null : shown(this.zones.rising),
              falling: this.zones.falling === null ? null : shown(this.zones.falling),
            },
            unit: unit.symbol,
            pastWords: point === null ? "" : `: ${shareWords(point.pastCrisisShare)} past`,
            isKnown: this.known,
            ...this.sides,
          },
          [canvas.width, canvas.height],
          this.palette,
        )
      : null;
    const text = quantityText(speed, "speed", units, 3);
    return html`<div class="head"><h2>Speed</h2><span class="note">crisis zone of 9 in 10; ▸ rising, ◂ falling speed</span></div>
      <div class="picture"><canvas aria-hidden="true"></canvas>
        <ww-ring
          data-handle="strip-speed"
          label="Stream speed on the strip"
          .value=${speed}
          .lowest=${0}
          .highest=${this.highest}
          .words=${text}
          .x=${this.drawing?.scale.at(unit.fromSi(speed)) ?? -100}
          .y=${(this.drawing?.baseline ?? 0) - 38}
          @ring-begin=${() => {
            this.held = this.drawing?.scale ?? null;
            emit(this, "section-drag-begin");
          }}
          @ring-move=${(event: CustomEvent<PageEvents["ring-move"]>) => this.move(event.detail)}
          @ring-end=${() => {
            this.held = null;
            emit(this, "section-drag-end");
          }}
          @ring-step=${(event: CustomEvent<RingStep>) => this.press(event.detail)}
        ></ww-ring>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-speed-strip": SpeedStrip;
  }
}
