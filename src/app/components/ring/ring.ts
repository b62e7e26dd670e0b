import { css, html, LitElement } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { emit } from "../../view/emit";

/** How a key moves a ring: by so many steps, or to an end. */
export type RingStep = { readonly steps: number } | { readonly end: "lowest" | "highest" };

/** A tenth of a step, for the hand and for keys alike, while Shift is held. */
const fineSteps = 0.1;
const pageSteps = 10;

/**
 * A handle over a picture: by pointer, touch or keys. Arrows move it one step, with Shift a tenth, Page keys ten, Home and
 * End to its ends; Escape gives back what was before the drag. Sends `ring-begin`, `ring-move` with its place in the
 * picture, `ring-end`, and `ring-step`.
 */
@customElement("ww-ring")
export class Ring extends LitElement {
  static override shadowRootOptions = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = css`
    :host {
      position: absolute;
      left: 0;
      top: 0;
      width: 28px;
      height: 28px;
      margin: -14px 0 0 -14px;
      will-change: transform;
    }
    .grip {
      width: 28px;
      height: 28px;
      border-radius: 50%;
      display: grid;
      place-items: center;
      cursor: grab;
      outline: none;
      touch-action: none;
    }
    .grip::before {
      content: "";
      width: var(--ring-size, 16px);
      height: var(--ring-size, 16px);
      border-radius: 50%;
      background: var(--sheet);
      border: 3px solid var(--accent);
      box-sizing: border-box;
    }
    .grip:hover::before,
    .grip.is-held::before {
      background: var(--accent);
    }
    .grip:focus-visible {
      box-shadow: 0 0 0 3px var(--focus);
    }
    @media (pointer: coarse) {
      :host,
      .grip {
        width: 44px;
        height: 44px;
      }
      :host {
        margin: -22px 0 0 -22px;
      }
    }
    @media print {
      :host {
        display: none;
      }
    }
  `;

  /** Its place in the picture around it, px. */
  @property({ type: Number }) x = 0;
  @property({ type: Number }) y = 0;
  @property() label = "";
  @property({ type: Number }) value = 0;
  @property({ type: Number }) lowest = 0;
  @property({ type: Number }) highest = 1;
  /** The value in words. */
  @property() words = "";
  @state() private isHeld = false;
  private box: DOMRect | null = null;

  protected override updated(): void {
    this.style.transform = `translate(${this.x}px, ${this.y}px)`;
  }

  private take(event: PointerEvent): void {
    if (event.button !== 0) return;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    this.box =
      this.parentElement?.getBoundingClientRect() ?? (this.getRootNode() as ShadowRoot).host.getBoundingClientRect();
    this.isHeld = true;
    emit(this, "ring-begin");
  }

  private move(event: PointerEvent): void {
    if (!this.isHeld || this.box === null) return;
    emit(this, "ring-move", {
      x: event.clientX - this.box.left,
      y: event.clientY - this.box.top,
      isFine: event.shiftKey || event.altKey,
    });
  }

  private release(): void {
    if (!this.isHeld) return;
    this.isHeld = false;
    emit(this, "ring-end");
  }

  private press(event: KeyboardEvent): void {
    const step = keyStep(event.key, event.shiftKey);
    if (step === null) return;
    event.preventDefault();
    emit(this, "ring-step", step);
  }

  protected override render() {
    return html`<div
      class="grip ${this.isHeld ? "is-held" : ""}"
      role="slider"
      tabindex="0"
      aria-label=${this.label}
      aria-valuenow=${this.value}
      aria-valuemin=${this.lowest}
      aria-valuemax=${this.highest}
      aria-valuetext=${this.words}
      title="${this.label}: ${this.words}"
      @pointerdown=${this.take}
      @pointermove=${this.move}
      @pointerup=${this.release}
      @pointercancel=${this.release}
      @keydown=${this.press}
    ></div>`;
  }
}

function keyStep(key: string, isFine: boolean): RingStep | null {
  const one = isFine ? fineSteps : 1;
  switch (key) {
    case "ArrowUp":
    case "ArrowRight":
      return { steps: one };
    case "ArrowDown":
    case "ArrowLeft":
      return { steps: -one };
    case "PageUp":
      return { steps: pageSteps };
    case "PageDown":
      return { steps: -pageSteps };
    case "Home":
      return { end: "lowest" };
    case "End":
      return { end: "highest" };
    default:
      return null;
  }
}

/** The value that a key leads to: a multiple of the step that it moved by, within the range. */
export function stepValue(
  step: RingStep,
  { value, lowest, highest, size }: { value: number; lowest: number; highest: number; size: number },
): number {
  if ("end" in step) return step.end === "lowest" ? lowest : highest;
  const unit = size * Math.min(1, Math.abs(step.steps));
  const next = Math.round((value + step.steps * size) / unit) * unit;
  return Math.min(highest, Math.max(lowest, Number(next.toPrecision(12))));
}

declare global {
  interface PageEvents {
    "ring-begin": undefined;
    /** In the picture's px. */
    "ring-move": { readonly x: number; readonly y: number; readonly isFine: boolean };
    "ring-end": undefined;
    "ring-step": RingStep;
  }
  interface HTMLElementTagNameMap {
    "ww-ring": Ring;
  }
}
