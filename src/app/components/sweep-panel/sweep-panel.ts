import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { type Design, demoDesign } from "../../../../shared/case/design";
import type { PlotFigure } from "../../plots/plotFigure";
import { type SweepOutput, sweepFigure, sweepOutputs } from "../../plots/sweepFigure";
import { noSweep, type Sweep, secondsLeft } from "../../section/sweep";
import { mostSweepCount, mostSweepPoints, rangeValues, type SweepRange, sweepInputs } from "../../section/sweepInputs";
import { adoptDocumentStyles } from "../../style/documentStyles";
import { lightPalette, type Palette } from "../../style/palette";
import { type UnitPreferences, unitFor } from "../../units/units";
import { emit } from "../../view/emit";
import "../plot/plot";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";
import { LightElement } from "../../view/lightElement";
import { sweepPanelStyles } from "./sweep-panel.styles";

/** Varies one or two inputs of the design in a pool of workers. Sends `section-sweep` and `section-sweep-control`. In the light DOM, because it holds a plot. */
@customElement("ww-sweep-panel")
export class SweepPanel extends LightElement {
  @property({ attribute: false }) design: Design = demoDesign;
  @property({ attribute: false }) sweep: Sweep = noSweep;
  @property({ attribute: false }) units: UnitPreferences = {};
  @property({ attribute: false }) palette: Palette = lightPalette;
  @state() private ranges: readonly SweepRange[] = [];
  @state() private output: SweepOutput = "dragCoefficient";

  constructor() {
    super();
    adoptDocumentStyles(sweepPanelStyles);
  }

  /** The ranges that the present design can be swept over; those of another family are replaced. */
  private usable(): readonly SweepRange[] {
    const inputs = sweepInputs(this.design);
    const fitting = this.ranges.filter((range) => inputs.some((input) => input.key === range.key));
    return fitting.length > 0
      ? fitting
      : [this.around(inputs.find((input) => input.key === "edgeRadius")?.key ?? inputs[0].key)];
  }

  /** A range of half to one and a half times the present value. */
  private around(key: string): SweepRange {
    const input = sweepInputs(this.design).find((one) => one.key === key)!;
    const value = input.of(this.design);
    if (key === "incidence") return { key, from: 0, to: Math.PI / 9, count: 11 };
    if (value === 0) return { key, from: 0, to: 1e-4, count: 11 };
    return { key, from: 0.5 * value, to: 1.5 * value, count: 15 };
  }

  private set(index: number, change: Partial<SweepRange>): void {
    this.ranges = this.usable().map((range, i) => (i === index ? { ...range, ...change } : range));
  }

  private fault(ranges: readonly SweepRange[]): string {
    for (const range of ranges) {
      if (!(Number.isInteger(range.count) && range.count >= 2 && range.count <= mostSweepCount)) {
        return `The number of values is ${range.count}; it must be a whole number from 2 to ${mostSweepCount}.`;
      }
      if (range.from === range.to) return "A range starts and ends at the same value; both must differ.";
    }
    const points = ranges.reduce((product, range) => product * range.count, 1);
    return points > mostSweepPoints ? `The sweep has ${points} points; it must have at most ${mostSweepPoints}.` : "";
  }

  protected override render() {
    const ranges = this.usable();
    const { status } = this.sweep;
    const fault = this.fault(ranges);
    const active = status === "running" || status === "paused";
    return html`<section aria-labelledby="sweep-heading">
      <h2 id="sweep-heading">Sweep</h2>
      <div class="inputs">${ranges.map((range, i) => this.renderRange(range, i, ranges))}</div>
      ${fault ? html`<p class="error" role="alert">${fault}</p>` : nothing}
      <div class="line">
        ${
          ranges.length < 2
            ? html`<button type="button" @click=${() => {
                const other = sweepInputs(this.design).find((input) => input.key === "speed")!;
                const key = ranges[0].key === other.key ? "sandGrainRoughness" : other.key;
                this.ranges = [...ranges, { ...this.around(key), count: 11 }];
              }}>Add a second input</button>`
            : html`<button type="button" @click=${() => {
                this.ranges = ranges.slice(0, 1);
              }}>Remove the second input</button>`
        }
        <button type="button" class="is-main" ?disabled=${fault !== "" || active} @click=${() => emit(this, "section-sweep", { design: this.design, ranges })}>Start sweep</button>
        ${active ? this.renderControls() : nothing}
      </div>
      ${status === "idle" ? nothing : this.renderProgress()}
      ${status === "idle" ? nothing : this.renderPlot()}
    </section>`;
  }

  private renderRange(range: SweepRange, index: number, ranges: readonly SweepRange[]) {
    const inputs = sweepInputs(this.design);
    const input = inputs.find((one) => one.key === range.key)!;
    const taken = ranges.filter((_, i) => i !== index).map((one) => one.key);
    return html`<fieldset>
      <legend>${index === 0 ? "First" : "Second"} input</legend>
      <label>Vary <select @change=${(event: Event) => this.set(index, this.around((event.target as HTMLSelectElement).value))}>
        ${inputs
          .filter((one) => !taken.includes(one.key))
          .map((one) => html`<option value=${one.key} ?selected=${one.key === range.key}>${one.label}</option>`)}
      </select></label>
      <ww-quantity-field .units=${this.units} label="from" kind=${input.kind} .value=${range.from} @quantity-change=${(event: QuantityChange) => this.set(index, { from: event.detail.value })}></ww-quantity-field>
      <ww-quantity-field .units=${this.units} label="to" kind=${input.kind} .value=${range.to} @quantity-change=${(event: QuantityChange) => this.set(index, { to: event.detail.value })}></ww-quantity-field>
      <label class="count">Number of values <input type="text" inputmode="numeric" .value=${String(range.count)} @change=${(event: Event) => this.set(index, { count: Number((event.target as HTMLInputElement).value) })} /></label>
    </fieldset>`;
  }

  private renderControls() {
    return html`${
      this.sweep.status === "running"
        ? html`<button type="button" @click=${() => emit(this, "section-sweep-control", "pause")}>Pause</button>`
        : html`<button type="button" @click=${() => emit(this, "section-sweep-control", "resume")}>Go on</button>`
    }
      <button type="button" @click=${() => emit(this, "section-sweep-control", "cancel")}>Cancel sweep</button>`;
  }

  private renderProgress() {
    const value = this.sweep;
    const left = secondsLeft(value);
    const words = {
      idle: "",
      running: left === null ? "starting" : `about ${Math.ceil(left)} s left`,
      paused: "paused",
      done: `done in ${value.seconds.toFixed(1)} s`,
      cancelled: "cancelled; the points so far are kept",
    }[value.status];
    return html`<div class="line">
        <progress aria-label="Progress of the sweep" max=${value.total} .value=${value.done}></progress>
        <span role="status">${value.done} of ${value.total} points on ${value.workers} ${value.workers === 1 ? "worker" : "workers"}, ${words}.</span>
      </div>
      ${value.problems.length > 0 ? html`<p class="error">Some points have no result: ${value.problems[0]}</p>` : nothing}`;
  }

  private renderPlot() {
    const { inputs, ranges, rows } = this.sweep;
    const axes = inputs.map((input, i) => {
      const unit = unitFor(input.kind, this.units);
      return {
        title: `${input.label.toLowerCase()} (${unit.symbol || "–"})`,
        values: rangeValues(ranges[i]).map((value) => Number(unit.fromSi(value).toPrecision(6))),
      };
    });
    const figure: PlotFigure = sweepFigure(axes, rows, this.output, this.palette);
    return html`<label class="line">Show <select @change=${(event: Event) => {
      this.output = (event.target as HTMLSelectElement).value as SweepOutput;
    }}>
        ${Object.entries(sweepOutputs).map(([key, { label }]) => html`<option value=${key} ?selected=${key === this.output}>${label}</option>`)}
      </select></label>
      <ww-plot id="plot-sweep" .figure=${figure}></ww-plot>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-sweep-panel": SweepPanel;
  }
}
