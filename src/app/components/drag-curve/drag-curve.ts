import { html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { LiveCurves } from "../../../../workers/solverApi";
import { type DragCurveDrawing, dragCurveScene, type PublishedPoints } from "../../desk/dragCurveScene";
import { dashPattern } from "../../plots/legendEntries";
import type { CrisisZone } from "../../section/crisisZone";
import { type Pin, risingState, type Solved } from "../../section/solved";
import type { WorkingPoint } from "../../section/workingPoint";
import { lightPalette, type Palette, seriesStyle } from "../../style/palette";
import { quantityText, type UnitPreferences, unitFor } from "../../units/units";
import { emit } from "../../view/emit";
import "../ring/ring";
import { type RingStep, stepValue } from "../ring/ring";
import { figureStyles } from "../scene-figure/figureStyles";
import { saveScene, saveTable } from "../scene-figure/saveScene";
import { SceneCanvas } from "../scene-figure/sceneCanvas";
import { curveTable } from "./curveTable";

const step = 0.1;
const slowest = 0.01;

/**
 * The drag curve beside the picture. Its ring is the design: moved along the curve it changes the speed, and the picture
 * shows the flow there. Sends `section-drag-begin`, `section-drag`, `section-drag-end` and `section-change`.
 */
@customElement("ww-drag-curve")
export class DragCurve extends LitElement {
  static override styles = figureStyles;

  @property({ attribute: false }) solved: Solved | null = null;
  @property({ attribute: false }) curves: LiveCurves | null = null;
  @property({ attribute: false }) pins: readonly Pin[] = [];
  @property({ attribute: false }) published: readonly PublishedPoints[] = [];
  @property({ attribute: false }) zone: CrisisZone | null = null;
  @property({ attribute: false }) point: WorkingPoint | null = null;
  @property({ attribute: false }) units: UnitPreferences = {};
  @property({ attribute: false }) palette: Palette = lightPalette;
  private readonly canvas = new SceneCanvas(this);
  private drawing: DragCurveDrawing | null = null;
  /** The axis as it was when the ring was taken: it stands still under the hand. */
  private held: DragCurveDrawing["xScale"] | null = null;

  protected override updated(): void {
    this.canvas.paint(this.drawing);
  }

  private get speedPerReynolds(): number {
    const { design, solution } = this.solved!;
    return design.speed / solution.condition.reynolds;
  }

  private move({ x }: PageEvents["ring-move"]): void {
    const scale = this.held ?? this.drawing?.xScale;
    if (scale === undefined || this.solved === null) return;
    const reynolds = Math.min(scale.to, Math.max(scale.from, scale.valueAt(x)));
    const unit = unitFor("speed", this.units);
    const typed = Number(unit.fromSi(reynolds * this.speedPerReynolds).toPrecision(3));
    emit(this, "section-drag", { speed: Math.max(slowest, unit.toSi(typed)) });
  }

  private press(ringStep: RingStep): void {
    if (this.solved === null || this.drawing === null) return;
    const { from, to } = this.drawing.xScale;
    const size = this.speedPerReynolds;
    const { speed } = this.solved.design;
    emit(this, "section-change", {
      speed: stepValue(ringStep, { value: speed, lowest: from * size, highest: to * size, size: step }),
    });
  }

  private draw(): void {
    const { canvas, solved } = this;
    if (!canvas.hasSize || solved === null) {
      this.drawing = null;
      return;
    }
    const { condition, referenceWidth } = solved.solution;
    const drag = this.point?.expected ?? risingState(solved.solution)?.dragCoefficient ?? null;
    this.drawing = dragCurveScene(
      {
        rows: this.curves?.overReynolds ?? [],
        pins: this.pins.flatMap(({ name, design, curves }, i) => {
          const { color, dash } = seriesStyle(this.palette, i + 1);
          return curves === null
            ? []
            : [
                {
                  name: `${name}, ${design.title}`.slice(0, 34),
                  rows: curves.overReynolds,
                  color,
                  dash: dashPattern(dash) || "7 4",
                },
              ];
        }),
        published: this.published,
        zone: this.zone,
        at: drag === null ? null : { reynolds: condition.reynolds, drag },
        speedPerReynolds: this.speedPerReynolds,
        speedText: (speed) => quantityText(speed, "speed", this.units, 2),
        lengthText: `Reynolds number on D = ${quantityText(referenceWidth, "length", this.units, 3)}; Cd on D x span`,
      },
      [canvas.width, canvas.height],
      this.palette,
    );
  }

  protected override render() {
    const { solved } = this;
    this.draw();
    const { drawing } = this;
    const at = solved === null || drawing === null ? null : solved.solution.condition.reynolds;
    const drag =
      this.point?.expected ?? (solved === null ? null : (risingState(solved.solution)?.dragCoefficient ?? null));
    const speed = solved?.design.speed ?? 0;
    return html`<div class="head"><h2>Drag curve</h2><span class="note">Cd; move the ring along it to see the flow there</span>
        <span class="right saves">
          <button type="button" ?disabled=${drawing === null} @click=${() => drawing && saveScene("drag-curve", drawing, "png", this.palette.paper)}>PNG<span class="unseen"> of the drag curve</span></button>
          <button type="button" ?disabled=${drawing === null} @click=${() => drawing && saveScene("drag-curve", drawing, "svg", this.palette.paper)}>SVG<span class="unseen"> of the drag curve</span></button>
          <button type="button" ?disabled=${this.curves === null} @click=${() => this.curves && saveTable("drag-curve", curveTable(this.curves.overReynolds))}>CSV<span class="unseen"> of the drag curve</span></button>
        </span>
      </div>
      <div class="picture" role="group" aria-label="Drag coefficient over Reynolds number"><canvas aria-hidden="true"></canvas>
        <ww-ring
          data-handle="curve-speed"
          label="Stream speed along the drag curve"
          .value=${speed}
          .lowest=${(drawing?.xScale.from ?? 0) * (solved === null ? 0 : this.speedPerReynolds)}
          .highest=${(drawing?.xScale.to ?? 1) * (solved === null ? 1 : this.speedPerReynolds)}
          .words=${quantityText(speed, "speed", this.units, 3)}
          .x=${at === null || drawing === null ? -100 : drawing.xScale.at(at)}
          .y=${drag === null || drawing === null ? -100 : drawing.yScale.at(drag)}
          @ring-begin=${() => {
            this.held = this.drawing?.xScale ?? null;
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
    "ww-drag-curve": DragCurve;
  }
}
