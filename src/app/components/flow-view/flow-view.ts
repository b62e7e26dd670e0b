import { html, LitElement, nothing, svg } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { guard } from "lit/directives/guard.js";
import { type Design, demoDesign } from "../../../../shared/case/design";
import { type Handle, handles, heldValue } from "../../drawing/handles";
import { localValues } from "../../drawing/localValues";
import { type StreamFrame, streamFrame } from "../../drawing/streamFrame";
import type { RuleWindow } from "../../section/ruleWindow";
import type { Solved } from "../../section/solved";
import { controlStyles } from "../../style/sharedStyles";
import { quantityText, type UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import { floorWords } from "./floorDrawing";
import { flowViewStyles } from "./flow-view.styles";
import { legend } from "./legend";
import { stepped } from "./stepped";
import { stillDrawing } from "./stillDrawing";

/**
 * The section in its stream: streamlines, wake, the kinds of layer on the surface, marks, and handles that change the
 * design by pointer or keyboard. Sends `section-change`, `section-drag-begin`, `section-drag` and `section-drag-end`.
 */
@customElement("ww-flow-view")
export class FlowView extends LitElement {
  static override styles = [controlStyles, flowViewStyles];

  @property({ attribute: false }) design: Design = demoDesign;
  @property({ attribute: false }) solved: Solved | null = null;
  /** True while the drawing is of another design, which cannot be solved. */
  @property({ type: Boolean }) stale = false;
  /** Complete solutions drawn since the page was opened. */
  @property({ type: Number }) solveCount = 0;
  /** Ranges that handles are held in; null when they move freely. */
  @property({ attribute: false }) rules: RuleWindow | null = null;
  @property({ attribute: false }) units: UnitPreferences = {};
  @state() private width = 0;
  @state() private heldKey: string | null = null;
  @state() private local = "";
  @state() private localNode = -1;
  private reach = 0;
  private sizes: ResizeObserver | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    this.sizes = new ResizeObserver(() => {
      this.width = Math.round(this.clientWidth);
    });
    this.sizes.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.sizes?.disconnect();
  }

  private get height(): number {
    return Math.round(Math.min(Math.max(250, this.width * 0.42), 760));
  }

  /** The scale keeps still while a handle is held, so that the drawing does not run away from the pointer. */
  private frameOf({ solution }: Solved): StreamFrame {
    const { nodes } = solution;
    if (this.heldKey === null || this.reach === 0) {
      let reach = 0;
      for (let i = 0; i < nodes.count; i++) {
        reach = Math.max(reach, Math.hypot(nodes.x[i] - nodes.centroid[0], nodes.y[i] - nodes.centroid[1]));
      }
      const steps = Math.ceil(Math.log(reach) / Math.log(1.25) - 1e-9);
      this.reach = 1.25 ** steps;
    }
    const scale = Math.min(this.width * 0.2, this.height * 0.34) / this.reach;
    return streamFrame(nodes.centroid, this.design.incidence, scale, [this.width * 0.36, this.height * 0.5]);
  }

  private bodyPoint(event: PointerEvent, frame: StreamFrame): readonly [number, number] {
    const box = this.renderRoot.querySelector(".drawing")!.getBoundingClientRect();
    return frame.toBody(
      ((event.clientX - box.left) * this.width) / box.width,
      ((event.clientY - box.top) * this.height) / box.height,
    );
  }

  private take(event: PointerEvent, handle: Handle): void {
    if (event.button !== 0) return;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    this.heldKey = handle.key;
    emit(this, "section-drag-begin");
  }

  private move(event: PointerEvent, handle: Handle, frame: StreamFrame): void {
    if (this.heldKey !== handle.key) return;
    emit(this, "section-drag", handle.change(heldValue(handle, handle.valueAt(...this.bodyPoint(event, frame)))));
  }

  private release(): void {
    this.heldKey = null;
    emit(this, "section-drag-end");
  }

  private press(event: KeyboardEvent, handle: Handle): void {
    const next = stepped(handle, event.key, event.shiftKey);
    if (next === null) return;
    event.preventDefault();
    emit(this, "section-change", handle.change(heldValue(handle, next)));
  }

  private look(event: PointerEvent, solved: Solved, frame: StreamFrame): void {
    if (this.heldKey !== null) return;
    const found = localValues(solved, ...this.bodyPoint(event, frame));
    this.local = found?.text ?? "";
    this.localNode = found?.node ?? -1;
  }

  protected override render() {
    const { solved, stale, solveCount } = this;
    return html`<div class="frame ${stale ? "is-stale" : ""}" data-solve-count=${solveCount}>
        ${solved && this.width > 0 ? this.renderDrawing(solved) : html`<svg class="drawing" viewBox="0 0 100 42" aria-hidden="true"></svg>`}
      </div>
      ${legend}
      <p class="local" aria-live="off">${this.local || "Point at the surface for local values; drag a round handle, or focus it and use the arrow keys."}</p>`;
  }

  private renderDrawing(solved: Solved) {
    const { nodes } = solved.solution;
    const frame = this.frameOf(solved);
    const { design } = this;
    return html`<svg
      class="drawing"
      role="group"
      aria-label=${`Section in the stream: ${nodes.name}`}
      viewBox="0 0 ${this.width} ${this.height}"
      height=${this.height}
      @pointermove=${(event: PointerEvent) => this.look(event, solved, frame)}
      @pointerleave=${() => {
        this.local = "";
        this.localNode = -1;
      }}
    >
      ${guard([solved, this.width, this.reach, design.incidence], () => stillDrawing(solved, frame, [this.width, this.height]))}
      ${floorWords(solved, frame, [this.width, this.height], this.units)}
      ${this.localNode >= 0 ? this.renderLocal(frame.toView(nodes.x[this.localNode], nodes.y[this.localNode])) : nothing}
      <g aria-hidden="true">
        <text class="words" x="14" y="24">stream → ${quantityText(design.speed, "speed", this.units)}</text>
        <text class="words" x="14" y=${this.height - 14}>${nodes.name}</text>
      </g>
      ${handles(design, nodes, this.rules)
        .filter(({ point }) => frame.toView(...point)[1] < this.height)
        .map((handle) => this.renderHandle(handle, frame))}
    </svg>`;
  }

  private renderLocal([x, y]: readonly [number, number]) {
    return svg`<circle cx=${x} cy=${y} r="4" fill="var(--ink)"></circle>`;
  }

  private renderHandle(handle: Handle, frame: StreamFrame) {
    const [x, y] = frame.toView(...handle.point);
    const text = quantityText(handle.value, handle.kind, this.units);
    return svg`<g
      class="handle ${this.heldKey === handle.key ? "is-held" : ""}"
      data-handle=${handle.key}
      role="slider"
      tabindex="0"
      aria-label=${`${handle.label}, handle`}
      aria-valuenow=${handle.value}
      aria-valuemin=${handle.lowest}
      aria-valuemax=${handle.highest}
      aria-valuetext=${text}
      transform="translate(${x} ${y})"
      @pointerdown=${(event: PointerEvent) => this.take(event, handle)}
      @pointermove=${(event: PointerEvent) => this.move(event, handle, frame)}
      @pointerup=${this.release}
      @pointercancel=${this.release}
      @keydown=${(event: KeyboardEvent) => this.press(event, handle)}
    >
      <title>${handle.label}: ${text}</title>
      <circle class="reach" r="18"></circle>
      <circle class="ring" r="13"></circle>
      <circle class="knob" r="7"></circle>
    </g>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-flow-view": FlowView;
  }
}
