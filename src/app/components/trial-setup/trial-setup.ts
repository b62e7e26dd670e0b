import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import {
  addActivity,
  addPlayers,
  addPuck,
  drawAnew,
  removeActivity,
  removePlayer,
  removePuck,
} from "../../trial/setupChanges";
import { type Entry, enterActivity, enterPlayer, enterPuck, enterScale, enterWhole } from "../../trial/setupEntries";
import { newTrial, type TrialInputs } from "../../trial/trialInputs";
import { emit } from "../../view/emit";
import { LightElement } from "../../view/lightElement";

/** What the trial asks: pucks, players, activities, scale, repeats and seed. Sends `trial-change`, `trial-show` and `trial-demo`. */
@customElement("ww-trial-setup")
export class TrialSetup extends LightElement {
  @property({ attribute: false }) inputs: TrialInputs = newTrial;
  /** Why the demo could not be opened; empty when it could. */
  @property() problem = "";
  /** What was typed and is not allowed, by field, so that it is not lost. */
  @state() private refused: Readonly<Record<string, { readonly text: string; readonly message: string }>> = {};
  @state() private keyIsOpen = false;

  private enter(field: string, text: string, read: (inputs: TrialInputs) => Entry): void {
    const { [field]: _old, ...others } = this.refused;
    const entry = read(this.inputs);
    this.refused = entry.ok ? others : { ...others, [field]: { text, message: entry.message } };
    if (entry.ok) emit(this, "trial-change", entry.change);
  }

  /** A field that keeps what is typed, right or wrong. */
  private field(
    id: string,
    label: string,
    value: string,
    read: (inputs: TrialInputs, text: string) => Entry,
    isNumber = false,
  ) {
    const refusal = this.refused[id];
    return html`<input
        id=${id} type="text" aria-label=${label} autocomplete="off" inputmode=${isNumber ? "decimal" : "text"}
        .value=${refusal?.text ?? value} aria-invalid=${refusal !== undefined}
        @change=${(event: Event) => {
          const text = (event.target as HTMLInputElement).value;
          this.enter(id, text, (inputs) => read(inputs, text));
        }}
      />${refusal === undefined ? nothing : html`<span class="error" role="alert">${refusal.message}</span>`}`;
  }

  protected override render() {
    const inputs = this.inputs;
    return html`<section class="view-section trial-section" aria-labelledby="trial-setup-heading">
      <h2 id="trial-setup-heading">Trial</h2>
      <div class="line">
        <button type="button" @click=${() => {
          this.refused = {};
          emit(this, "trial-show", { ...newTrial, seed: 1 + Math.floor(Math.random() * 1e6) });
        }}>New trial</button>
        <button type="button" @click=${() => {
          this.refused = {};
          emit(this, "trial-demo");
        }}>Harbour League demonstration (invented data)</button>
      </div>
      ${this.problem === "" ? nothing : html`<p class="error" role="alert">${this.problem}</p>`}
      ${this.renderPucks(inputs)} ${this.renderActivities(inputs)} ${this.renderPlayers(inputs)}
      <h3>Scale</h3>
      <div class="row"><label for="trial-question">Question</label>${this.field("trial-question", "Question", inputs.scale.question, (now, text) => enterScale(now, "question", text))}</div>
      <div class="row"><label for="trial-lowest">Lowest score</label>${this.field("trial-lowest", "Lowest score", String(inputs.scale.lowest), (now, text) => enterScale(now, "lowest", text), true)}</div>
      <div class="row"><label for="trial-lowest-means">means</label>${this.field("trial-lowest-means", "The lowest score means", inputs.scale.lowestMeans, (now, text) => enterScale(now, "lowestMeans", text))}</div>
      <div class="row"><label for="trial-highest">Highest score</label>${this.field("trial-highest", "Highest score", String(inputs.scale.highest), (now, text) => enterScale(now, "highest", text), true)}</div>
      <div class="row"><label for="trial-highest-means">means</label>${this.field("trial-highest-means", "The highest score means", inputs.scale.highestMeans, (now, text) => enterScale(now, "highestMeans", text))}</div>
      <label class="hint"><input type="checkbox" .checked=${inputs.scale.isHigherBetter} @change=${(event: Event) => emit(this, "trial-change", { scale: { ...inputs.scale, isHigherBetter: (event.target as HTMLInputElement).checked } })} />
        A high score is a good one</label>
      <div class="row"><label for="trial-repeats">Times each puck is scored</label>${this.field("trial-repeats", "Times each puck is scored", String(inputs.repeats), (now, text) => enterWhole(now, "repeats", text), true)}</div>
      <div class="row"><label for="trial-seed">Seed of orders</label>${this.field("trial-seed", "Seed of orders", String(inputs.seed), (now, text) => enterWhole(now, "seed", text), true)}</div>
      <p class="hint">Another seed, other numbers of pucks or activities give other orders: print the sheets anew after it.</p>
    </section>`;
  }

  private renderPucks(inputs: TrialInputs) {
    const hasScores = Object.keys(inputs.cells).length > 0;
    const isHidden = hasScores && !inputs.isUnblinded && !this.keyIsOpen;
    return html`<h3>Pucks and their codes</h3>
      ${
        isHidden
          ? html`<p>Blind: ${inputs.pucks.map(({ code }) => html`<span class="code">${code}</span> `)}</p>
            <div class="line"><button type="button" @click=${() => {
              this.keyIsOpen = true;
            }}>Show the key to plan with</button></div>`
          : html`<table class="is-form"><thead><tr><th scope="col">name</th><th scope="col" class="short">code</th><td></td></tr></thead><tbody>
          ${inputs.pucks.map(
            ({ id, name, code }, i) => html`<tr>
            <td>${this.field(`puck-name-${id}`, `Name of puck ${i + 1}`, name, (now, text) => enterPuck(now, id, "name", text))}</td>
            <td>${this.field(`puck-code-${id}`, `Code of ${name}`, code, (now, text) => enterPuck(now, id, "code", text))}</td>
            <td>${inputs.pucks.length > 2 ? html`<button type="button" class="is-quiet" @click=${() => emit(this, "trial-change", removePuck(inputs, id))}>Remove<span class="unseen"> ${name}</span></button>` : nothing}</td>
          </tr>`,
          )}</tbody></table>
          <div class="line">
            <button type="button" @click=${() => emit(this, "trial-change", addPuck(inputs))}>Add a puck</button>
            ${hasScores ? nothing : html`<button type="button" @click=${() => emit(this, "trial-change", drawAnew(inputs))}>Draw codes and orders anew</button>`}
          </div>`
      }`;
  }

  private renderActivities(inputs: TrialInputs) {
    return html`<h3>Activities</h3>
      <table class="is-form"><thead><tr><th scope="col">name</th><th scope="col" class="short">weight</th><td></td></tr></thead><tbody>
      ${inputs.activities.map(
        ({ id, name, weight, instruction }) => html`<tr>
          <td>${this.field(`activity-name-${id}`, "Name of the activity", name, (now, text) => enterActivity(now, id, "name", text))}</td>
          <td>${this.field(`activity-weight-${id}`, `Weight of ${name}`, String(weight), (now, text) => enterActivity(now, id, "weight", text), true)}</td>
          <td>${inputs.activities.length > 1 ? html`<button type="button" class="is-quiet" @click=${() => emit(this, "trial-change", removeActivity(inputs, id))}>Remove<span class="unseen"> ${name}</span></button>` : nothing}</td>
        </tr>
        <tr><td colspan="3">${this.field(`activity-instruction-${id}`, `Instruction for ${name}`, instruction, (now, text) => enterActivity(now, id, "instruction", text))}</td></tr>`,
      )}</tbody></table>
      <div class="line"><button type="button" @click=${() => emit(this, "trial-change", addActivity(inputs))}>Add an activity</button></div>`;
  }

  private renderPlayers(inputs: TrialInputs) {
    return html`<h3>${inputs.players.length} players</h3>
      <details><summary>Names or numbers of the players</summary>
        <table class="is-form"><tbody>
        ${inputs.players.map(
          ({ id, name }, i) => html`<tr>
            <td>${this.field(`player-${id}`, `Player ${i + 1}`, name, (now, text) => enterPlayer(now, id, text))}</td>
            <td>${inputs.players.length > 2 ? html`<button type="button" class="is-quiet" @click=${() => emit(this, "trial-change", removePlayer(inputs, id))}>Remove<span class="unseen"> ${name}</span></button>` : nothing}</td>
          </tr>`,
        )}</tbody></table>
        <p class="hint">Removing a player gives those below other planned orders; noted ones stay.</p>
      </details>
      <div class="line">
        <button type="button" @click=${() => emit(this, "trial-change", addPlayers(inputs, 1))}>Add a player</button>
        <button type="button" @click=${() => emit(this, "trial-change", addPlayers(inputs, 4))}>Add four</button>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-trial-setup": TrialSetup;
  }
}
