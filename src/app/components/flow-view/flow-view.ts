import { html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { type Design, demoDesign } from "../../../../shared/case/design";
import { floorShape } from "../../drawing/floorShape";
import { flowScene } from "../../drawing/flowScene";
import { type Handle, handles, heldValue } from "../../drawing/handles";
import { profileShapes } from "../../drawing/layerProfileScene";
import { layerExaggeration } from "../../drawing/layerScene";
import { type LocalValues, localValues } from "../../drawing/localValues";
import { type StreamFrame, streamFrame } from "../../drawing/streamFrame";
import type { Scene } from "../../scene/scene";
import type { OtherFlow } from "../../section/otherFlow";
import type { RuleWindow } from "../../section/ruleWindow";
import { risingState, type Solved } from "../../section/solved";
import { lightPalette, type Palette } from "../../style/palette";
import { quantityText, type UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import "../ring/ring";
import type { RingStep } from "../ring/ring";
import { saveScene } from "../scene-figure/saveScene";
import { SceneCanvas } from "../scene-figure/sceneCanvas";
import { flowViewStyles } from "./flow-view.styles";
import { snapped, stepped } from "./stepped";

/** Below this width words in the picture would only cover it, px. */
const smallWidth = 460;

/**
 * The section in its stream: streamlines, wake, pressure on the wall, the layers, and handles that change the design by
 * pointer or keyboard. Sends `section-change`, `section-drag-begin`, `section-drag`, `section-drag-end` and `section-flow`.
 */
@customElement("ww-flow-view")
export class FlowView extends LitElement {
  static override styles = flowViewStyles;

  @property({ attribute: false }) design: Design = demoDesign;
  @property({ attribute: false }) solved: Solved | null = null;
  /** True while the drawing is of another design, which cannot be solved. */
  @property({ type: Boolean }) stale = false;
  /** Complete solutions drawn since the page was opened. */
  @property({ type: Number }) solveCount = 0;
  /** Ranges that handles are held in; null when they move freely. */
  @property({ attribute: false }) rules: RuleWindow | null = null;
  /** Flows on the other side of the crisis that can be looked at, and the one that is. */
  @property({ attribute: false }) flows: readonly OtherFlow[] = [];
  @property({ attribute: false }) other: Solved | null = null;
  @property() shownFlow = "own";
  @property({ attribute: false }) units: UnitPreferences = {};
  @property({ attribute: false }) palette: Palette = lightPalette;
  @state() private heldKey: string | null = null;
  @state() private local: LocalValues | null = null;
  private readonly canvas = new SceneCanvas(this);
  private drawing: Scene | null = null;
  private reach = 0;

  protected override updated(): void {
    this.canvas.paint(this.drawing);
  }

  private get shown(): Solved | null {
    return this.shownFlow !== "own" && this.other !== null ? this.other : this.solved;
  }

  /** The scale keeps still while a handle is held, so that the drawing does not run away from the pointer. */
  private frameOf({ solution }: Solved): StreamFrame {
    const { nodes } = solution;
    if (this.heldKey === null || this.reach === 0) {
      let reach = 0;
      for (let i = 0; i < nodes.count; i++) {
        reach = Math.max(reach, Math.hypot(nodes.x[i] - nodes.centroid[0], nodes.y[i] - nodes.centroid[1]));
      }
      const steps = Math.ceil(Math.log(reach) / Math.log(1.15) - 1e-9);
      this.reach = 1.15 ** steps;
    }
    const { width, height } = this.canvas;
    const scale = Math.min(width * 0.235, height * 0.4) / this.reach;
    return streamFrame(nodes.centroid, this.design.incidence, scale, [width * 0.4, height * 0.5]);
  }

  private move({ x, y, isFine }: PageEvents["ring-move"], handle: Handle, frame: StreamFrame): void {
    if (this.heldKey !== handle.key) return;
    const value = snapped(handle, handle.valueAt(...frame.toBody(x, y)), isFine);
    emit(this, "section-drag", handle.change(heldValue(handle, value)));
  }

  private press(step: RingStep, handle: Handle): void {
    emit(this, "section-change", handle.change(heldValue(handle, stepped(handle, step))));
  }

  private look(event: PointerEvent, solved: Solved, frame: StreamFrame): void {
    if (this.heldKey !== null) return;
    const box = (event.currentTarget as Element).getBoundingClientRect();
    this.local = localValues(solved, ...frame.toBody(event.clientX - box.left, event.clientY - box.top));
  }

  private draw(solved: Solved, frame: StreamFrame): void {
    const { width, height } = this.canvas;
    const scene = flowScene(solved.solution, frame, [width, height], this.palette, {
      stream: `stream ${quantityText(solved.design.speed, "speed", this.units, 3)} →`,
      isSmall: width < smallWidth,
    });
    const { local } = this;
    this.drawing =
      local?.layer == null || local.node >= solved.solution.nodes.count
        ? scene
        : {
            ...scene,
            shapes: [
              ...scene.shapes,
              ...profileShapes(
                solved.solution.nodes,
                local.node,
                local.layer,
                layerExaggeration(risingState(solved.solution)!),
                solved.solution.referenceWidth,
                frame,
                this.palette,
              ),
            ],
          };
  }

  protected override render() {
    const { stale, solveCount, canvas, shown } = this;
    const frame = shown !== null && canvas.hasSize ? this.frameOf(shown) : null;
    if (shown !== null && frame !== null) this.draw(shown, frame);
    else this.drawing = null;
    return html`<div class="frame ${stale ? "is-stale" : ""}" data-solve-count=${solveCount}>
      <div class="picture"
        @pointermove=${(event: PointerEvent) => shown !== null && frame !== null && this.look(event, shown, frame)}
        @pointerleave=${() => {
          this.local = null;
        }}
      ><div class="drawing" role="group" aria-label=${shown === null ? "Section in the stream" : `Section in the stream: ${shown.solution.nodes.name}`}>
          <canvas aria-hidden="true"></canvas>
          ${shown !== null && frame !== null ? this.renderHandles(shown, frame) : nothing}
          ${shown?.solution.floor == null || frame === null ? nothing : html`<span class="floor">${this.floorWords(shown, frame)}</span>`}
        </div>
        ${this.renderFlows()}
        ${this.local === null ? nothing : html`<p class="local" aria-live="off">${this.local.text}</p>`}
        ${
          this.drawing === null
            ? nothing
            : html`<span class="saves">
          <button type="button" @click=${() => this.drawing && saveScene("flow", this.drawing, "png", this.palette.water)}>PNG<span class="unseen"> of the flow</span></button>
          <button type="button" @click=${() => this.drawing && saveScene("flow", this.drawing, "svg", this.palette.water)}>SVG<span class="unseen"> of the flow</span></button>
        </span>`
        }
      </div>
    </div>`;
  }

  private floorWords({ solution, design }: Solved, frame: StreamFrame): string {
    const { isOutside } = floorShape(solution.floor!, frame, this.canvas.height);
    const gap = design.floorGap ?? 0;
    return `${gap === 0 ? "on the floor" : `floor, gap ${quantityText(gap, "length", this.units)}`}${isOutside ? " ↓" : ""}`;
  }

  /** The states that the flow may be in here, the likeliest first. */
  private renderFlows() {
    if (this.flows.length < 2) return nothing;
    return html`<div class="flows" role="group" aria-label="Flow to look at">
      ${this.flows.map(
        ({
          key,
          label,
          words,
        }) => html`<button type="button" aria-pressed=${this.shownFlow === key} @click=${() => emit(this, "section-flow", key)}>
          <b>${label}</b> <span>${words}</span>
        </button>`,
      )}
    </div>`;
  }

  private renderHandles(solved: Solved, frame: StreamFrame) {
    if (this.shownFlow !== "own") return nothing;
    return handles(this.design, solved.solution.nodes, this.rules).map((handle) => {
      const [x, y] = frame.toView(...handle.point);
      if (y >= this.canvas.height) return nothing;
      return html`<ww-ring
        class="handle"
        data-handle=${handle.key}
        label="${handle.label}, handle"
        .value=${handle.value}
        .lowest=${handle.lowest}
        .highest=${handle.highest}
        .words=${quantityText(handle.value, handle.kind, this.units)}
        .x=${x}
        .y=${y}
        @ring-begin=${() => {
          this.heldKey = handle.key;
          emit(this, "section-drag-begin");
        }}
        @ring-move=${(event: CustomEvent<PageEvents["ring-move"]>) => this.move(event.detail, handle, frame)}
        @ring-end=${() => {
          this.heldKey = null;
          emit(this, "section-drag-end");
        }}
        @ring-step=${(event: CustomEvent<RingStep>) => this.press(event.detail, handle)}
      ></ww-ring>`;
    });
  }
}

declare global {
  interface PageEvents {
    /** Key of the flow to look at; "own" for the design's. */
    "section-flow": string;
  }
  interface HTMLElementTagNameMap {
    "ww-flow-view": FlowView;
  }
}
