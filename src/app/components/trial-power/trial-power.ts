import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { pageState } from "../../store/pageState";
import { StoreController } from "../../store/storeController";
import { darkPalette, lightPalette } from "../../style/palette";
import { enterExpected, enterPlayerCounts, enterPower, type PowerEntry } from "../../trial/powerEntries";
import { powerFigure } from "../../trial/powerFigure";
import { changeTrial, trialBench } from "../../trial/trialBench";
import type { TrialInputs } from "../../trial/trialInputs";
import { cancelPower, simulatePower } from "../../trial/trialing";
import "../plot/plot";

/** How many players it takes: power by simulation, from likings and spreads that a person assumes. */
@customElement("ww-trial-power")
export class TrialPower extends LitElement {
  private readonly inputs = new StoreController(this, trialBench, (value) => value.history.present);
  private readonly run = new StoreController(this, trialBench, (value) => value.power);
  private readonly isDark = new StoreController(this, pageState, (value) => value.isDark);
  /** What was typed and is not allowed, by field, so that it is not lost. */
  @state() private refused: Readonly<Record<string, { readonly text: string; readonly message: string }>> = {};

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  private field(id: string, label: string, value: string, read: (inputs: TrialInputs, text: string) => PowerEntry) {
    const refusal = this.refused[id];
    return html`<div class="row"><label for=${id}>${label}</label>
      <input id=${id} type="text" inputmode="decimal" autocomplete="off" .value=${refusal?.text ?? value} aria-invalid=${refusal !== undefined}
        @change=${(event: Event) => {
          const text = (event.target as HTMLInputElement).value;
          const { [id]: _old, ...others } = this.refused;
          const entry = read(this.inputs.value, text);
          this.refused = entry.ok ? others : { ...others, [id]: { text, message: entry.message } };
          if (entry.ok) changeTrial(entry.change);
        }} /></div>
      ${refusal === undefined ? nothing : html`<p class="error" role="alert">${refusal.message}</p>`}`;
  }

  protected override render() {
    const inputs = this.inputs.value;
    const { power, pucks } = inputs;
    const run = this.run.value;
    const isRunning = run?.status === "running";
    const done = run?.status === "done" ? run : null;
    const isStale =
      done !== null &&
      (done.inputs.power !== power ||
        done.inputs.scale !== inputs.scale ||
        pucks.map((puck) => puck.expected).join() !== done.inputs.pucks.map((puck) => puck.expected).join());
    return html`<section class="view-section trial-section" aria-labelledby="trial-power-heading">
      <h2 id="trial-power-heading">How many players</h2>
      <p class="hint">Assume how pucks are liked, then see how often such a trial would show it. With the smallest difference that matters to you, not the one you hope for.</p>
      ${pucks.map(({ id, code, expected }) => this.field(`expected-${id}`, `Mean score of ${code}`, String(expected), (now, text) => enterExpected(now, id, text)))}
      ${this.field("power-spread", "Spread of a score, standard deviation", String(power.spread), (now, text) => enterPower(now, "spread", text))}
      ${this.field("power-player-spread", "Spread of the players' levels", String(power.playerSpread), (now, text) => enterPower(now, "playerSpread", text))}
      ${this.field("power-wanted", "Wanted power", String(power.wantedPower), (now, text) => enterPower(now, "wantedPower", text))}
      ${this.field("power-players", "Numbers of players", power.playerCounts.join(" "), enterPlayerCounts)}
      <div class="line">
        ${
          isRunning
            ? html`<progress max=${run.total} .value=${run.done} aria-label="Simulation"></progress><button type="button" @click=${cancelPower}>Cancel</button>`
            : html`<button type="button" class="is-main" @click=${simulatePower}>Simulate</button>`
        }
        <label class="hint"><input type="checkbox" .checked=${power.isWanted} @change=${(event: Event) => changeTrial({ power: { ...power, isWanted: (event.target as HTMLInputElement).checked } })} /> Keep it in the case</label>
      </div>
      ${run?.status === "failed" || run?.status === "cancelled" ? html`<p role="status" class=${run.status === "failed" ? "error" : "hint"}>${run.message}</p>` : nothing}
      ${
        done === null
          ? nothing
          : html`<p class="verdict" role="status">${done.result.sentence}${isStale ? html` <em>The assumptions have changed since.</em>` : nothing}</p>
            <ww-plot id="plot-trial-power" ?stale=${isStale} .figure=${powerFigure(done.result, this.isDark.value ? darkPalette : lightPalette)}></ww-plot>`
      }
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-trial-power": TrialPower;
  }
}
