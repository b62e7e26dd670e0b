import { html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property } from "lit/decorators.js";
import { demoDesign } from "../../../../shared/case/design";
import { type DragCurveDrawing, dragCurveScene, type PublishedPoints } from "../../desk/dragCurveScene";
import { type PublishedGroup, publishedFor } from "../../desk/publishedFor";
import { flowScene } from "../../drawing/flowScene";
import { streamFrame } from "../../drawing/streamFrame";
import { paintScene } from "../../scene/paintScene";
import { risingState } from "../../section/solved";
import { lightPalette, type Palette } from "../../style/palette";
import { controlStyles } from "../../style/sharedStyles";
import { pressureCurveScene } from "../../tour/pressureCurveScene";
import type { TourState } from "../../tour/tourState";
import { stopReynolds, tourStart, tourStops } from "../../tour/tourStops";
import { emit } from "../../view/emit";
import { tourStyles } from "./tour.styles";

const nothingYet: TourState = { stream: tourStart, stop: 0, curve: [], flows: tourStops.map(() => null) };

/** Ends of the sliders: ks / D as powers of ten, turbulence as a fraction. */
const roughnessPowers = [-5.5, -2] as const;
const turbulenceEnds = [0, 0.05] as const;

/**
 * Six stops on the drag curve of a circular cylinder, each with its flow, its pressure and the published points that show
 * it. Sends `tour-stop` and `tour-stream`.
 */
@customElement("ww-tour")
export class Tour extends LitElement {
  static override styles = [controlStyles, tourStyles];

  @property({ attribute: false }) tour: TourState = nothingYet;
  @property({ attribute: false }) published: readonly PublishedGroup[] = [];
  @property({ attribute: false }) palette: Palette = lightPalette;
  private sizes: ResizeObserver | null = null;
  private curve: DragCurveDrawing | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    this.sizes = new ResizeObserver(() => this.requestUpdate());
    this.sizes.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.sizes?.disconnect();
  }

  private box(name: string): readonly [HTMLCanvasElement, number, number] | null {
    const canvas = this.renderRoot.querySelector<HTMLCanvasElement>(`canvas[data-picture=${name}]`);
    const box = canvas?.parentElement;
    return canvas == null || box == null || box.clientWidth < 40 ? null : [canvas, box.clientWidth, box.clientHeight];
  }

  protected override updated(_: PropertyValues): void {
    const { flows, stop } = this.tour;
    const flow = flows[stop];
    const before = stop > 0 ? flows[stop - 1] : null;
    const [picture, pressure, curve] = [this.box("flow"), this.box("pressure"), this.box("curve")];
    if (flow !== null && picture !== null) {
      const [canvas, width, height] = picture;
      const frame = streamFrame(flow.nodes.centroid, 0, (0.3 * height) / (flow.referenceWidth / 2), [
        0.34 * width,
        0.5 * height,
      ]);
      const words = {
        stream: `stream → Re ${flow.condition.reynolds.toExponential(1).replace("+", "")}`,
        isSmall: false,
      };
      paintScene(canvas, flowScene(flow, frame, [width, height], this.palette, words));
    }
    if (flow !== null && pressure !== null) {
      const [canvas, width, height] = pressure;
      paintScene(canvas, pressureCurveScene(flow, before, [width, height], this.palette));
    }
    if (curve !== null && this.curve !== null) paintScene(curve[0], this.curve);
  }

  /** The sources of a stop are named with their points; the others stand aside. */
  private get points(): readonly PublishedPoints[] {
    const { stream, stop } = this.tour;
    const { sources, sandGrainRoughnessRatio } = tourStops[stop];
    const design = {
      ...demoDesign,
      section: { family: "circle", diameter: 0.1 } as const,
      turbulenceIntensity: stream.turbulenceIntensity,
      sandGrainRoughness: 0.1 * (sandGrainRoughnessRatio ?? stream.sandGrainRoughnessRatio),
    };
    const all = publishedFor(design, this.published);
    const own = all.filter(({ source }) => sources.includes(source));
    return own.length > 0 ? own : all.slice(0, 2);
  }

  private drawCurve(): void {
    const size = this.box("curve");
    const { curve, flows, stop } = this.tour;
    const flow = flows[stop];
    if (size === null || curve.length === 0) {
      this.curve = null;
      return;
    }
    this.curve = dragCurveScene(
      {
        rows: curve,
        pins: [],
        published: this.points,
        zone: null,
        at: flow === null ? null : { reynolds: flow.condition.reynolds, drag: risingState(flow)?.dragCoefficient ?? 0 },
        range: [1e4, 1e7],
        speedPerReynolds: 1,
        speedText: null,
        lengthText: "Reynolds number on the diameter; thick: expected with its band, thin: the computed states",
      },
      [size[1], size[2]],
      this.palette,
    );
  }

  protected override render() {
    const { stop, flows, stream, curve } = this.tour;
    const { title, words, sources } = tourStops[stop];
    const flow = flows[stop];
    const state = flow === null ? null : risingState(flow);
    this.drawCurve();
    const drawing = this.curve;
    return html`<div class="lead" @keydown=${this.press}>
        <div class="number">${stop + 1}<small> of ${tourStops.length}</small></div>
        <p class="sentence" role="status"><b>${title}</b> ${state === null ? "Solving ..." : words(state)}</p>
        <div class="moves">
          <button type="button" ?disabled=${stop === 0} @click=${() => emit(this, "tour-stop", stop - 1)}>‹ Back</button>
          <button type="button" class="is-main" ?disabled=${stop === tourStops.length - 1} @click=${() => emit(this, "tour-stop", stop + 1)}>Stop ${Math.min(stop + 2, tourStops.length)} ›</button>
        </div>
      </div>
      <div class="pictures">
        <figure><div class="picture" role="img" aria-label="The flow at this stop"><canvas data-picture="flow"></canvas></div></figure>
        <figure><figcaption><b>Pressure around the cylinder</b> Cp over the angle from the front, suction upward; upper side thick, stop before dashed</figcaption>
          <div class="picture" role="img" aria-label="Pressure over the angle from the front"><canvas data-picture="pressure"></canvas></div></figure>
      </div>
      <div class="stops">${tourStops.map(
        (one, i) =>
          html`<button type="button" aria-current=${i === stop ? "step" : "false"} @click=${() => emit(this, "tour-stop", i)}>${i + 1} <b>${one.title.replace(".", "")}</b></button>`,
      )}</div>
      <figure class="curve"><div class="picture" role="group" aria-label="Drag coefficient over Reynolds number"><canvas data-picture="curve"></canvas>
        ${
          drawing === null
            ? nothing
            : tourStops.map((one, i) => {
                const own = flows[i];
                const drag = own === null ? null : (risingState(own)?.dragCoefficient ?? null);
                if (drag === null) return nothing;
                const x = drawing.xScale.at(stopReynolds(one, curve));
                return html`<button type="button" class="at" aria-label="Stop ${i + 1} on the curve" aria-current=${i === stop ? "step" : "false"} style="left:${x}px;top:${drawing.yScale.at(drag)}px" @click=${() => emit(this, "tour-stop", i)}>${i + 1}</button>`;
              })
        }</div></figure>
      <div class="sliders">
        <label>Roughness <input type="range" min=${roughnessPowers[0]} max=${roughnessPowers[1]} step="0.1" .value=${String(Math.log10(stream.sandGrainRoughnessRatio))} @input=${(event: Event) => this.change({ sandGrainRoughnessRatio: 10 ** Number((event.target as HTMLInputElement).value) })} /> ks/D ${stream.sandGrainRoughnessRatio.toExponential(1)}</label>
        <label>Turbulence <input type="range" min=${turbulenceEnds[0]} max=${turbulenceEnds[1]} step="0.001" .value=${String(stream.turbulenceIntensity)} @input=${(event: Event) => this.change({ turbulenceIntensity: Number((event.target as HTMLInputElement).value) })} /> ${(100 * stream.turbulenceIntensity).toFixed(1)} %</label>
        <p class="note">Points: ${sources.join("; ")}. Left and right keys or 1 to 6 move between the stops.</p>
      </div>`;
  }

  private change(change: Partial<TourState["stream"]>): void {
    emit(this, "tour-stream", { ...this.tour.stream, ...change });
  }

  private press(event: KeyboardEvent): void {
    const { stop } = this.tour;
    const digit = Number(event.key);
    const to =
      event.key === "ArrowRight"
        ? stop + 1
        : event.key === "ArrowLeft"
          ? stop - 1
          : digit >= 1 && digit <= tourStops.length
            ? digit - 1
            : null;
    if (to === null) return;
    event.preventDefault();
    emit(this, "tour-stop", Math.max(0, Math.min(tourStops.length - 1, to)));
  }
}

declare global {
  interface PageEvents {
    "tour-stop": number;
    /** The wall and the stream of the tour. */
    "tour-stream": TourState["stream"];
  }
  interface HTMLElementTagNameMap {
    "ww-tour": Tour;
  }
}
