import type { Problem } from "../../../../shared/result";
import { demoPuck } from "../../puck/demoPuck";
import type { PuckInputs, PuckMake } from "../../puck/puckInputs";
import type { UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import "../../puck/puckEvents";
import { html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { FaceSide, PuckSpec } from "../../../../shared/jobs/puck/body/puckSpec";
import { edgeProfileText, readEdgeProfile } from "../../puck/edgeProfileText";
import {
  coreKinds,
  edgeKinds,
  faceKinds,
  faceSides,
  fieldOf,
  fieldPath,
  ofKind,
  type PartKind,
  type PuckField,
  type PuckPart,
  partOf,
  rimKinds,
  wholeFields,
  withField,
} from "../../puck/puckFields";
import { finishPresets, presetOf } from "../../reference/presets";
import { fieldsetStyles, panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";
import "../puck-materials/puck-materials";
import { materialChoice } from "./materialChoice";
import { puckPanelStyles } from "./puck-panel.styles";

/** Dimensions, edge, faces, rim, core, coat and finish of the candidate puck. Sends `puck-change`. */
@customElement("ww-puck-panel")
export class PuckPanel extends LitElement {
  static override styles = [controlStyles, panelStyles, fieldsetStyles, puckPanelStyles];

  @property({ attribute: false }) inputs: PuckInputs = demoPuck;
  /** Why the puck cannot be made; null when it can. */
  @property({ attribute: false }) problem: Problem | null = null;
  @property({ attribute: false }) units: UnitPreferences = {};
  @state() private profileProblem = "";

  private get spec(): PuckSpec {
    return this.inputs.candidate.spec;
  }

  private change(spec: PuckSpec): void {
    this.changeMake({ spec });
  }

  private changeMake(change: Partial<PuckMake>): void {
    emit(this, "puck-change", { candidate: { ...this.inputs.candidate, ...change } });
  }

  /** The engine's message where it is about this field. */
  private problemOf(field: PuckField): string {
    return this.problem?.field === fieldPath(field) ? this.problem.message : "";
  }

  /** The engine's message about a part, where none of its fields tells it already. */
  private problemOfPart(part: PuckPart, fields: readonly PuckField[]): string {
    const problem = this.problem;
    if (problem === null || partOf(problem.field) !== part) return "";
    return fields.some((field) => this.problemOf(field) !== "") ? "" : problem.message;
  }

  protected override render() {
    const { spec } = this;
    const { sandGrainRoughness } = this.inputs.candidate;
    const preset = presetOf(finishPresets, sandGrainRoughness);
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">Puck</h2></div>
      <div class="stack">
        <div class="row">
          <label for="name">Name</label>
          <input
            id="name"
            type="text"
            maxlength="100"
            .value=${spec.name}
            @change=${(event: Event) => this.change({ ...spec, name: (event.target as HTMLInputElement).value.trim() || "Candidate" })}
          />
        </div>
        ${wholeFields.map((field) => this.renderField(field))}
        ${this.renderPart("edge", "Edge", edgeKinds, spec.edge.kind, this.renderProfile())}
        ${this.renderPart("face", "Faces", faceKinds, spec.face.kind, this.renderSide())}
        ${this.renderPart("rim", "Rim", rimKinds, spec.rim.kind)}
        ${this.renderPart("core", "Core", coreKinds, spec.core.kind, this.renderCoreMaterial())}
        <fieldset>
          <legend>Coat and finish</legend>
          ${this.renderMaterial("coatMaterial", "Coat material", spec.coatMaterial, (coatMaterial) => this.change({ ...spec, coatMaterial }))}
          <div class="row">
            <label for="finish">Finish</label>
            <select
              id="finish"
              @change=${(event: Event) => {
                const chosen = finishPresets.find(({ key }) => key === (event.target as HTMLSelectElement).value);
                if (chosen) this.changeMake({ sandGrainRoughness: chosen.value });
              }}
            >
              <option value="" ?selected=${preset === undefined}>own value</option>
              ${finishPresets.map((one) => html`<option value=${one.key} ?selected=${one === preset}>${one.label}</option>`)}
            </select>
          </div>
          <ww-quantity-field .units=${this.units}
            label="Finish, ks"
            kind="length"
            .value=${sandGrainRoughness}
            .lowest=${0}
            .highest=${0.005}
            .hint=${preset?.source ?? ""}
            @quantity-change=${(event: QuantityChange) => this.changeMake({ sandGrainRoughness: event.detail.value })}
          ></ww-quantity-field>
        </fieldset>
        <ww-puck-materials .own=${this.inputs.userMaterials} .spec=${spec} .units=${this.units}></ww-puck-materials>
      </div>
    </section>`;
  }

  private renderField(field: PuckField) {
    return html`<ww-quantity-field .units=${this.units}
      label=${field.label}
      kind=${field.kind}
      data-key="${field.part}.${field.key}"
      .value=${fieldOf(this.spec, field)}
      .lowest=${field.lowest}
      .highest=${field.highest}
      .aboveLowest=${field.aboveLowest}
      .problem=${this.problemOf(field)}
      @quantity-change=${(event: QuantityChange) => this.change(withField(this.spec, field, event.detail.value))}
    ></ww-quantity-field>`;
  }

  private renderPart(
    part: PuckPart,
    label: string,
    kinds: Readonly<Record<string, PartKind>>,
    kind: string,
    more: unknown = nothing,
  ) {
    const { fields } = kinds[kind];
    const message = this.problemOfPart(part, fields);
    return html`<fieldset>
      <legend>${label}</legend>
      <div class="row">
        <label for=${part}>Kind of ${label.toLowerCase()}</label>
        <select id=${part} @change=${(event: Event) => this.change(ofKind(this.spec, part, (event.target as HTMLSelectElement).value))}>
          ${Object.entries(kinds).map(([key, one]) => html`<option value=${key} ?selected=${key === kind}>${one.label}</option>`)}
        </select>
      </div>
      ${more}
      ${fields.map((field) => this.renderField(field))}
      ${message ? html`<p class="error" role="alert">${message}</p>` : nothing}
    </fieldset>`;
  }

  private renderProfile() {
    const { edge } = this.spec;
    if (edge.kind !== "profile") return nothing;
    return html`<label class="hint" for="profile">Inset from the rim; inset from the face, mm, one point a line, from the face (second number 0) to the rim (first number 0).</label>
      <textarea
        id="profile"
        aria-invalid=${this.profileProblem ? "true" : "false"}
        .value=${edgeProfileText(edge.points)}
        @change=${(event: Event) => {
          const read = readEdgeProfile((event.target as HTMLTextAreaElement).value);
          this.profileProblem = read.ok ? "" : read.problem.message;
          if (read.ok) this.change({ ...this.spec, edge: { kind: "profile", points: read.value } });
        }}
      ></textarea>
      ${this.profileProblem ? html`<p class="error" role="alert">${this.profileProblem}</p>` : nothing}`;
  }

  private renderSide() {
    const { face } = this.spec;
    if (face.kind === "flat") return nothing;
    return html`<div class="row">
      <label for="side">On the</label>
      <select id="side" @change=${(event: Event) => this.change({ ...this.spec, face: { ...face, side: (event.target as HTMLSelectElement).value as FaceSide } })}>
        ${faceSides.map((side) => html`<option value=${side} ?selected=${side === face.side}>${side === "both" ? "both faces" : `${side} face`}</option>`)}
      </select>
    </div>`;
  }

  private renderMaterial(field: string, label: string, name: string, choose: (name: string) => void) {
    const problem = this.problem?.field === field ? this.problem.message : "";
    return materialChoice({ label, name, userMaterials: this.inputs.userMaterials, problem, choose });
  }

  private renderCoreMaterial() {
    const { core } = this.spec;
    if (core.kind === "none") return nothing;
    return this.renderMaterial("core.material", "Core material", core.material, (material) =>
      this.change({ ...this.spec, core: { ...core, material } }),
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-panel": PuckPanel;
  }
}
