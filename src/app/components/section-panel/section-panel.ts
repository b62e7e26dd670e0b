import { html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { type Design, demoDesign } from "../../../../shared/case/design";
import type { SectionFamily } from "../../../../shared/engine/geometry/sectionSpec";
import type { Problem } from "../../../../shared/result";
import type { RuleWindow } from "../../section/ruleWindow";
import {
  dimension,
  familyTexts,
  isImported,
  ofFamily,
  type SectionField,
  sizeOf,
  withDimension,
} from "../../section/sectionFields";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import type { UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";
import "../info-mark/info-mark";

/** Family, dimensions and incidence of the section. Sends `section-change`, `section-rules` and `open-dialog`. */
@customElement("ww-section-panel")
export class SectionPanel extends LitElement {
  static override styles = [controlStyles, panelStyles];

  @property({ attribute: false }) design: Design = demoDesign;
  /** Why the design has no solution; null when all is well. */
  @property({ attribute: false }) problem: Problem | null = null;
  /** Ranges that handles are held in; null when they move freely. */
  @property({ attribute: false }) rules: RuleWindow | null = null;
  @property({ attribute: false }) units: UnitPreferences = {};

  private chooseFamily(event: Event): void {
    const family = (event.target as HTMLSelectElement).value as SectionFamily;
    if (!isImported(family))
      emit(this, "section-change", { section: ofFamily(family, this.design.section), sectionName: null });
  }

  /** Half the section's height, to two digits of a millimetre: well clear of the floor and yet changed by it. */
  private firstGap(): number {
    const [, height] = sizeOf(this.design.section);
    return Math.round(0.5 * height * 1e5) / 1e5;
  }

  private problemOf(key: string): string {
    const problem = this.problem;
    return problem?.field?.split(".").at(-1) === key ? problem.message : "";
  }

  protected override render() {
    const { section, incidence, floorGap } = this.design;
    const text = familyTexts[section.family];
    return html`<section aria-labelledby="heading">
      <div class="heading">
        <h2 id="heading">Section</h2>
        <ww-info-mark topic="potentialFlow"></ww-info-mark>
      </div>
      <div class="stack">
        <div class="row">
          <label for="family">Family</label>
          <select id="family" @change=${this.chooseFamily}>
            ${Object.entries(familyTexts)
              .filter(([family]) => !isImported(family as SectionFamily) || section.family === family)
              .map(
                ([family, { label }]) =>
                  html`<option value=${family} ?selected=${family === section.family}>${label}</option>`,
              )}
          </select>
        </div>
        ${text.fields.map((field) => this.renderField(field))}
        ${text.choices.map(
          (choice) => html`<div class="row">
            <label for=${choice.key}>${choice.label}</label>
            <select
              id=${choice.key}
              @change=${(event: Event) =>
                emit(this, "section-change", {
                  section: withDimension(section, choice.key, (event.target as HTMLSelectElement).value),
                })}
            >
              ${choice.options.map(
                (option) =>
                  html`<option value=${option.value} ?selected=${Reflect.get(section, choice.key) === option.value}>${option.label}</option>`,
              )}
            </select>
          </div>`,
        )}
        ${
          section.family === "freeContour"
            ? html`<p class="hint">${section.name ?? "Imported contour"}, ${section.points.length} points.</p>`
            : nothing
        }
        ${
          section.family === "outline"
            ? html`<p class="hint">${section.name ?? "Imported outline"}, ${section.sides.length} sides.</p>`
            : nothing
        }
        <ww-quantity-field .units=${this.units}
          label="Incidence, nose up"
          kind="angle"
          .value=${incidence}
          .lowest=${-Math.PI}
          .highest=${Math.PI}
          .problem=${this.problemOf("incidence")}
          @quantity-change=${(event: QuantityChange) => emit(this, "section-change", { incidence: event.detail.value })}
        ></ww-quantity-field>
        <label class="hint"><input type="checkbox" .checked=${floorGap !== null} @change=${(event: Event) =>
          emit(this, "section-change", {
            floorGap: (event.target as HTMLInputElement).checked ? this.firstGap() : null,
          })} />
          A floor below the section</label>
        ${
          floorGap === null
            ? nothing
            : html`<ww-quantity-field .units=${this.units}
              label="Gap to the floor"
              hint="0: the section lies on the floor"
              kind="length"
              data-key="floorGap"
              .value=${floorGap}
              .lowest=${0}
              .highest=${100}
              .problem=${this.problemOf("floorGap")}
              @quantity-change=${(event: QuantityChange) => emit(this, "section-change", { floorGap: event.detail.value })}
            ></ww-quantity-field>`
        }
        <label class="hint"><input type="checkbox" .checked=${this.rules !== null} @change=${(event: Event) => emit(this, "section-rules", (event.target as HTMLInputElement).checked)} />
          Hold the handles inside ${this.rules?.name ?? "the Harbour League's demonstration rules"}</label>
        <div class="buttons">
          <button type="button" @click=${() => emit(this, "open-dialog", "import")}>Import a contour ...</button>
        </div>
      </div>
    </section>`;
  }

  private renderField(field: SectionField) {
    const { section } = this.design;
    return html`<ww-quantity-field .units=${this.units}
      label=${field.label}
      kind=${field.kind}
      data-key=${field.key}
      .value=${dimension(section, field.key)}
      .lowest=${0}
      .highest=${field.kind === "length" ? 100 : undefined}
      above-lowest
      .problem=${this.problemOf(field.key)}
      @quantity-change=${(event: QuantityChange) =>
        emit(this, "section-change", {
          section: withDimension(section, field.key, event.detail.value),
          sectionName: null,
        })}
    ></ww-quantity-field>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-section-panel": SectionPanel;
  }
}
