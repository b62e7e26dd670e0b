import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { TunnelBlockDocument } from "../../../../shared/jobs/tunnel/tunnelBlockDocument";
import { enterField, fieldText, type TunnelField } from "../../tunnel/tunnelFields";
import { startTunnel } from "../../tunnel/tunnelInputs";
import { emit } from "../../view/emit";
import { LightElement } from "../../view/lightElement";

/** Fields of the tunnel block. Sends `tunnel-block`. What is not allowed stays in its field with the reason beside it. */
@customElement("ww-tunnel-fields")
export class TunnelFields extends LightElement {
  @property({ attribute: false }) fields: readonly TunnelField[] = [];
  @property({ attribute: false }) block: TunnelBlockDocument = startTunnel.block;
  @state() private refused: Readonly<Record<string, { readonly text: string; readonly message: string }>> = {};

  private enter(field: TunnelField, text: string): void {
    const key = field.path.join("-");
    const { [key]: _old, ...others } = this.refused;
    const entry = enterField(this.block, field, text);
    this.refused = entry.ok ? others : { ...others, [key]: { text, message: entry.message } };
    if (entry.ok) emit(this, "tunnel-block", entry.block);
  }

  protected override render() {
    return this.fields.map((field) => {
      const key = field.path.join("-");
      const refusal = this.refused[key];
      return html`<div class="row"><label for="tunnel-${key}">${field.label}</label>
          <span class="pair"><input id="tunnel-${key}" type="text" inputmode=${field.isList ? "text" : "decimal"} autocomplete="off" placeholder=${field.otherwise ?? ""}
            .value=${refusal?.text ?? fieldText(this.block, field)} aria-invalid=${refusal !== undefined}
            @change=${(event: Event) => this.enter(field, (event.target as HTMLInputElement).value)} /><span>${field.unit}</span></span></div>
        ${refusal === undefined ? nothing : html`<p class="error" role="alert">${refusal.message}</p>`}`;
    });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-fields": TunnelFields;
  }
}
