import { emit } from "../../view/emit";
import "../../cases/caseEvents";
import "../../section/sectionEvents";
import { html, LitElement, nothing, svg } from "lit";
import { customElement, state } from "lit/decorators.js";
import { buildContour } from "../../../../shared/engine/geometry/sectionFamilies";
import type { SectionSpec } from "../../../../shared/engine/geometry/sectionSpec";
import { problem, type Result } from "../../../../shared/result";
import { largestImportBytes, type Outline } from "../../imports/outline";
import { extent, type OutlineUnit, placedPoints } from "../../imports/placedPoints";
import { type OutlineFormat, outlineFormat, outlineFormats, readOutline } from "../../imports/readOutline";
import { controlStyles } from "../../style/sharedStyles";
import { importDialogStyles } from "./import-dialog.styles";

/** Reads a contour from a file or pasted text, shows it, asks for unit and scale, and makes it the section. Sends `section-change` and `close-dialog`. */
@customElement("ww-import-dialog")
export class ImportDialog extends LitElement {
  static override styles = [controlStyles, importDialogStyles];

  @state() private name = "";
  @state() private text = "";
  @state() private format: OutlineFormat = "csv";
  @state() private unit: OutlineUnit = "mm";
  @state() private scale = "1";
  @state() private quarterTurns = 0;
  @state() private outline: Result<Outline> | null = null;
  @state() private refusal = "";

  private async chooseFile(event: Event): Promise<void> {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    input.value = "";
    if (!file) return;
    if (file.size > largestImportBytes) {
      this.outline = problem("import", `${file.name} has ${file.size} bytes; at most ${largestImportBytes} are read.`);
      return;
    }
    this.name = file.name.replace(/\.[^.]*$/, "");
    this.read(await file.text(), file.name);
  }

  private read(text: string, fileName: string): void {
    this.text = text;
    this.format = outlineFormat(fileName, text);
    this.readAgain();
    if (this.outline?.ok && this.outline.value.unitKey !== null) this.unit = this.outline.value.unitKey;
  }

  private readAgain(): void {
    this.refusal = "";
    this.outline = this.text.trim() === "" ? null : readOutline(this.format, this.text);
  }

  private section(): Result<SectionSpec> | null {
    if (!this.outline?.ok) return null;
    const scale = Number(this.scale.replace(",", "."));
    if (!(scale > 0 && scale <= 1e6)) {
      return problem("scale", `Scale is "${this.scale}"; it must be a number above 0 and at most 1000000.`);
    }
    const points = placedPoints(this.outline.value, this.unit, scale, this.quarterTurns);
    return { ok: true, value: { family: "freeContour", points, name: this.name || "imported contour" } };
  }

  private use(): void {
    const section = this.section();
    if (!section?.ok) return;
    const contour = buildContour(section.value);
    if (!contour.ok) {
      this.refusal = contour.problem.message;
      return;
    }
    emit(this, "section-change", {
      section: section.value,
      sectionName: this.name || null,
      title: this.name || "Imported contour",
    });
    emit(this, "close-dialog");
  }

  protected override render() {
    const section = this.section();
    const problems = [
      this.outline && !this.outline.ok ? this.outline.problem.message : "",
      section && !section.ok ? section.problem.message : "",
      this.refusal,
    ].filter((message) => message !== "");
    return html`<div class="stack">
      <p>A closed outline: points as text, a path of an SVG drawing, or a polyline of a DXF drawing.</p>
      <label>File <input type="file" accept=".csv,.txt,.dat,.svg,.dxf" @change=${this.chooseFile} /></label>
      <label>or text <textarea aria-label="Outline as text" .value=${this.text} @input=${(event: Event) => this.read((event.target as HTMLTextAreaElement).value, "")}></textarea></label>
      <div class="grid">
        <label>Format
          <select @change=${(event: Event) => {
            this.format = (event.target as HTMLSelectElement).value as OutlineFormat;
            this.readAgain();
          }}>
            ${Object.entries(outlineFormats).map(([key, label]) => html`<option value=${key} ?selected=${key === this.format}>${label}</option>`)}
          </select>
        </label>
        <label>Unit in the file
          <select @change=${(event: Event) => {
            this.unit = (event.target as HTMLSelectElement).value as OutlineUnit;
          }}>
            ${(["mm", "cm", "m", "in"] as const).map((unit) => html`<option value=${unit} ?selected=${unit === this.unit}>${unit}</option>`)}
          </select>
        </label>
        <label>Scale <input type="text" inputmode="decimal" .value=${this.scale} @input=${(event: Event) => {
          this.scale = (event.target as HTMLInputElement).value;
        }} /></label>
        <label>Name <input type="text" maxlength="100" .value=${this.name} @input=${(event: Event) => {
          this.name = (event.target as HTMLInputElement).value;
        }} /></label>
      </div>
      ${section?.ok && section.value.family === "freeContour" ? this.renderPreview(section.value.points) : nothing}
      ${this.outline?.ok ? this.outline.value.remarks.map((remark) => html`<p class="hint">${remark}</p>`) : nothing}
      ${problems.map((message) => html`<p class="error" role="alert">${message}</p>`)}
      <div>
        <button type="button" @click=${() => {
          this.quarterTurns++;
        }}>Turn by 90°</button>
        <button type="button" class="is-main" ?disabled=${!section?.ok} @click=${this.use}>Use this contour</button>
      </div>
    </div>`;
  }

  private renderPreview(points: readonly (readonly [number, number])[]) {
    const [wide, high] = extent(points);
    const margin = 0.15 * Math.max(wide, high);
    const box = [-wide / 2 - margin, -high / 2 - margin, wide + 2 * margin, high + 2 * margin].join(" ");
    const path = points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${x} ${-y}`).join("");
    const size = [wide, high].map((metres) => `${Number((metres * 1000).toPrecision(4))} mm`);
    return html`<svg class="preview" viewBox=${box} role="img" aria-label="Preview of the contour">${svg`<path d="${path}Z"></path>`}</svg>
      <p>${points.length} points, ${size[0]} along the stream (from the left), ${size[1]} across it.</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-import-dialog": ImportDialog;
  }
}
