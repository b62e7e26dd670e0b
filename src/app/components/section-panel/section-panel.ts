import { html, LitElement, nothing } from "lit";
import { customElement } from "lit/decorators.js";
import type { SectionFamily } from "../../../../shared/engine/geometry/sectionSpec";
import { demoRulesName, loadDemoRules } from "../../puck/demoRules";
import { tell } from "../../store/notices";
import { openDialog } from "../../store/pageState";
import { holdToRules, letGoOfRules, ruleWindow } from "../../store/ruleWindow";
import { dimension, familyTexts, ofFamily, type SectionField, sizeOf, withDimension } from "../../store/sectionFields";
import { StoreController } from "../../store/storeController";
import { changeDesign, workbench } from "../../store/workbench";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";
import "../info-mark/info-mark";

/** Family, dimensions and incidence of the section. */
@customElement("ww-section-panel")
export class SectionPanel extends LitElement {
  static override styles = [controlStyles, panelStyles];

  private readonly design = new StoreController(this, workbench, (value) => value.history.present);
  private readonly rules = new StoreController(this, ruleWindow, (value) => value);
  private readonly problem = new StoreController(this, workbench, (value) => value.problem);

  private chooseFamily(event: Event): void {
    const family = (event.target as HTMLSelectElement).value as SectionFamily;
    if (family !== "freeContour")
      changeDesign({ section: ofFamily(family, this.design.value.section), sectionName: null });
  }

  /** Half the section's height, to two digits of a millimetre: well clear of the floor and yet changed by it. */
  private firstGap(): number {
    const [, height] = sizeOf(this.design.value.section);
    return Math.round(0.5 * height * 1e5) / 1e5;
  }

  private async toggleRules(event: Event): Promise<void> {
    if (!(event.target as HTMLInputElement).checked) return letGoOfRules();
    try {
      holdToRules(await loadDemoRules(), demoRulesName);
    } catch {
      tell("warning", "The demonstration rules could not be loaded.");
    }
  }

  private problemOf(key: string): string {
    const problem = this.problem.value;
    return problem?.field?.split(".").at(-1) === key ? problem.message : "";
  }

  protected override render() {
    const { section, incidence, floorGap } = this.design.value;
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
              .filter(([family]) => family !== "freeContour" || section.family === "freeContour")
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
                changeDesign({
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
        <ww-quantity-field
          label="Incidence, nose up"
          kind="angle"
          .value=${incidence}
          .lowest=${-Math.PI}
          .highest=${Math.PI}
          .problem=${this.problemOf("incidence")}
          @quantity-change=${(event: QuantityChange) => changeDesign({ incidence: event.detail.value })}
        ></ww-quantity-field>
        <label class="hint"><input type="checkbox" .checked=${floorGap !== null} @change=${(event: Event) =>
          changeDesign({ floorGap: (event.target as HTMLInputElement).checked ? this.firstGap() : null })} />
          A floor below the section</label>
        ${
          floorGap === null
            ? nothing
            : html`<ww-quantity-field
              label="Gap to the floor"
              hint="0: the section lies on the floor"
              kind="length"
              data-key="floorGap"
              .value=${floorGap}
              .lowest=${0}
              .highest=${100}
              .problem=${this.problemOf("floorGap")}
              @quantity-change=${(event: QuantityChange) => changeDesign({ floorGap: event.detail.value })}
            ></ww-quantity-field>`
        }
        <label class="hint"><input type="checkbox" .checked=${this.rules.value !== null} @change=${this.toggleRules} />
          Hold the handles inside ${this.rules.value?.name ?? "the Harbour League's demonstration rules"}</label>
        <div class="buttons">
          <button type="button" @click=${() => openDialog("import")}>Import a contour ...</button>
        </div>
      </div>
    </section>`;
  }

  private renderField(field: SectionField) {
    const { section } = this.design.value;
    return html`<ww-quantity-field
      label=${field.label}
      kind=${field.kind}
      data-key=${field.key}
      .value=${dimension(section, field.key)}
      .lowest=${0}
      .highest=${field.kind === "length" ? 100 : undefined}
      above-lowest
      .problem=${this.problemOf(field.key)}
      @quantity-change=${(event: QuantityChange) =>
        changeDesign({ section: withDimension(section, field.key, event.detail.value), sectionName: null })}
    ></ww-quantity-field>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-section-panel": SectionPanel;
  }
}
