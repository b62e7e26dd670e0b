import { html, nothing } from "lit";
import { type Material, standardMaterials } from "../../../../shared/jobs/puck/body/materials";

export interface MaterialChoice {
  readonly label: string;
  /** The chosen material; it may be one that the lists do not have. */
  readonly name: string;
  readonly userMaterials: readonly Material[];
  readonly problem: string;
  readonly choose: (name: string) => void;
}

/** A material chosen by name, with its density and where that comes from. */
export function materialChoice({ label, name, userMaterials, problem, choose }: MaterialChoice) {
  const all = [...userMaterials, ...standardMaterials];
  const names = [...new Set([...all.map((material) => material.name), name])];
  const chosen = all.find((material) => material.name === name);
  const id = label.toLowerCase().replaceAll(" ", "-");
  return html`<div class="row">
      <label for=${id}>${label}</label>
      <select id=${id} @change=${(event: Event) => choose((event.target as HTMLSelectElement).value)}>
        ${names.map((one) => html`<option value=${one} ?selected=${one === name}>${one}</option>`)}
      </select>
    </div>
    ${problem ? html`<p class="error" role="alert">${problem}</p>` : nothing}
    <p class="hint">${chosen ? `${chosen.density} kg/m³ (${chosen.lowestDensity} to ${chosen.highestDensity}); ${chosen.source}` : ""}</p>`;
}
