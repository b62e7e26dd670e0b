import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { lightPalette, type Palette } from "../../style/palette";
import { enterExpected, enterPlayerCounts, enterPower, type PowerEntry } from "../../trial/powerEntries";
import { powerFigure } from "../../trial/powerFigure";
import { newTrial, type TrialInputs } from "../../trial/trialInputs";
import type { PowerTask } from "../../trial/trialTasks";
import { emit } from "../../view/emit";
import { LightElement } from "../../view/lightElement";
import { cancelledCode, initialTask } from "../../view/taskState";
import "../plot/plot";

/** How many players it takes: power by simulation, from likings and spreads that a person assumes. Sends `trial-change`, `trial-simulate` and `trial-stop`. */
@customElement("ww-trial-power")
export class TrialPower extends LightElement {
  @property({ attribute: false }) inputs: TrialInputs = newTrial;
  @property({ attribute: false }) power: PowerTask = initialTask;
  @property({ attribute: false }) palette: Palette = lightPalette;
  /** What was typed and is not allowed, by field, so that it is not lost. */
  @state() private refused: Readonly<Record<string, { readonly text: string; readonly message: string }>> = {};

  private field(id: string, label: string, value: string, read: (inputs: TrialInputs, text: string) => PowerEntry) {
    const refusal = this.refused[id];
    return html`<div class="row"><label for=${id}>${label}</label>
      <input id=${id} type="text" inputmode="decimal" autocomplete="off" .value=${refusal?.text ?? value} aria-invalid=${refusal !== undefined}
        @change=${(event: Event) => {
          const text = (event.target as HTMLInputElement).value;
          const { [id]: _old, ...others } = this.refused;
          const entry = read(this.inputs, text);
          this.refused = entry.ok ? others : { ...others, [id]: { text, message: entry.message } };
          if (entry.ok) emit(this, "trial-change", entry.change);
        }} /></div>
      ${refusal === undefined ? nothing : html`<p class="error" role="alert">${refusal.message}</p>`}`;
  }

  protected override render() {
    const inputs = this.inputs;
    const { power, pucks } = inputs;
    const run = this.power;
    const isRunning = run.status === "pending";
    const done = run.status === "complete" ? run.last : null;
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
            ? html`<progress max=${run.step?.total ?? power.playerCounts.length} .value=${run.step?.done ?? 0} aria-label="Simulation"></progress><button type="button" @click=${() => emit(this, "trial-stop")}>Cancel</button>`
            : html`<button type="button" class="is-main" @click=${() => emit(this, "trial-simulate")}>Simulate</button>`
        }
        <label class="hint"><input type="checkbox" .checked=${power.isWanted} @change=${(event: Event) => emit(this, "trial-change", { power: { ...power, isWanted: (event.target as HTMLInputElement).checked } })} /> Keep it in the case</label>
      </div>
      ${run.status === "error" ? html`<p role="status" class=${run.problems[0].code === cancelledCode ? "hint" : "error"}>${run.problems[0].message}</p>` : nothing}
      ${
        done === null
          ? nothing
          : html`<p class="verdict" role="status">${done.result.sentence}${isStale ? html` <em>The assumptions have changed since.</em>` : nothing}</p>
            <ww-plot id="plot-trial-power" ?stale=${isStale} .figure=${powerFigure(done.result, this.palette)}></ww-plot>`
      }
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-trial-power": TrialPower;
  }
}
