import { emit } from "../../view/emit";
import "../../cases/caseEvents";
import "../../imports/importEvents";
import "../../section/sectionEvents";
import "../outline-preview/outline-preview";
import { html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { ImportedOutline, OutlineQuestion } from "../../../../shared/outlines/importOutline";
import { largestOutlineBytes, type OutlineUnit, outlineUnits } from "../../../../shared/outlines/outline";
import type { OutlineFormat } from "../../../../shared/outlines/readOutline";
import { controlStyles } from "../../style/sharedStyles";
import { initialTask, type TaskState } from "../../view/taskState";
import { importDialogStyles } from "./import-dialog.styles";

const formatWords: Readonly<Record<OutlineFormat, string>> = {
  csv: "points as text (x, y)",
  svg: "SVG drawing or path",
  dxf: "DXF drawing",
};

/** Longest that typing rests before it is read, ms. */
const typingRest = 200;

/**
 * Takes a file or pasted text, has it read, shows the contour that is solved and how far it leaves the outline, and makes
 * it the section. Sends `outline-ask`, `outline-cancel`, `section-change` and `close-dialog`.
 */
@customElement("ww-import-dialog")
export class ImportDialog extends LitElement {
  static override styles = [controlStyles, importDialogStyles];

  /** What is known of the outline that was asked for last. */
  @property({ attribute: false }) reading: TaskState<OutlineQuestion, ImportedOutline> = initialTask;

  @state() private name = "";
  @state() private fileName = "";
  @state() private text = "";
  @state() private format: OutlineFormat | null = null;
  @state() private unit: OutlineUnit | null = null;
  @state() private scale = "1";
  @state() private cornerRadius = "";
  @state() private quarterTurns = 0;
  @state() private refusal = "";
  private typing: ReturnType<typeof setTimeout> | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.typing);
  }

  private async chooseFile(event: Event): Promise<void> {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    input.value = "";
    if (!file) return;
    if (file.size > largestOutlineBytes) {
      this.refusal = `${file.name} has ${file.size} bytes; it must have at most ${largestOutlineBytes}.`;
      return;
    }
    this.name = file.name.replace(/\.[^.]*$/, "").slice(0, 100);
    this.take(await file.text(), file.name);
    this.ask();
  }

  private take(text: string, fileName: string): void {
    this.text = text;
    this.fileName = fileName;
    this.format = null;
    this.unit = null;
  }

  /** Asks for what the fields say now. */
  private ask(): void {
    clearTimeout(this.typing);
    this.refusal = "";
    if (this.text.trim() === "") return;
    const scale = decimal(this.scale);
    if (!(scale > 0 && scale <= 1e6)) {
      this.refusal = `Scale is "${this.scale.slice(0, 20)}"; it must be a number above 0 and at most 1000000.`;
      return;
    }
    const radius = this.cornerRadius.trim() === "" ? null : decimal(this.cornerRadius) / 1000;
    if (radius !== null && !(radius > 0)) {
      this.refusal = `Corner radius is "${this.cornerRadius.slice(0, 20)}"; it must be a number above 0, or empty for the smallest.`;
      return;
    }
    emit(this, "outline-ask", {
      text: this.text,
      fileName: this.fileName,
      format: this.format,
      unit: this.unit,
      scale,
      quarterTurns: this.quarterTurns,
      name: this.name || "imported outline",
      cornerRadius: radius,
    });
  }

  private askSoon(): void {
    clearTimeout(this.typing);
    this.typing = setTimeout(() => this.ask(), typingRest);
  }

  /** The answer to what the fields say; null while it is not there. */
  private get answer(): ImportedOutline | null {
    return this.reading.status === "complete" && this.refusal === "" && this.text.trim() !== ""
      ? (this.reading.last?.result ?? null)
      : null;
  }

  private use(): void {
    const { answer } = this;
    if (answer === null) return;
    emit(this, "section-change", {
      section: answer.solved.spec,
      sectionName: this.name || null,
      title: this.name || "Imported outline",
      panelCount: answer.panelCount,
    });
    emit(this, "close-dialog");
  }

  protected override render() {
    const { answer, reading } = this;
    const isReading = reading.status === "pending";
    const problems = [
      this.refusal,
      ...(reading.status === "error" && this.refusal === "" && this.text.trim() !== ""
        ? reading.problems.map(({ message }) => message)
        : []),
    ].filter((message) => message !== "");
    return html`<div class="stack">
      <p>A closed outline: points as text, or the largest closed outline of an SVG or DXF drawing. Lines stay lines and arcs stay arcs.</p>
      <label>File <input type="file" accept=".csv,.txt,.dat,.svg,.dxf" @change=${this.chooseFile} /></label>
      <label>or text <textarea aria-label="Outline as text" .value=${this.text} @input=${(event: Event) => {
        this.take((event.target as HTMLTextAreaElement).value, "");
        this.askSoon();
      }}></textarea></label>
      <div class="grid">
        <label>Format
          <select @change=${(event: Event) => {
            this.format = ((event.target as HTMLSelectElement).value || null) as OutlineFormat | null;
            this.ask();
          }}>
            <option value="" ?selected=${this.format === null}>as it looks${answer && this.format === null ? `: ${formatWords[answer.format]}` : ""}</option>
            ${Object.entries(formatWords).map(([key, label]) => html`<option value=${key} ?selected=${key === this.format}>${label}</option>`)}
          </select>
        </label>
        <label>Unit in the file
          <select @change=${(event: Event) => {
            this.unit = ((event.target as HTMLSelectElement).value || null) as OutlineUnit | null;
            this.ask();
          }}>
            <option value="" ?selected=${this.unit === null}>${unitWords(answer)}</option>
            ${outlineUnits.map((unit) => html`<option value=${unit} ?selected=${unit === this.unit}>${unit}</option>`)}
          </select>
        </label>
        <label>Scale <input type="text" inputmode="decimal" .value=${this.scale} @input=${(event: Event) => {
          this.scale = (event.target as HTMLInputElement).value;
          this.askSoon();
        }} /></label>
        <label>Corner radius, mm <input type="text" inputmode="decimal" placeholder="the smallest" .value=${this.cornerRadius} @input=${(
          event: Event,
        ) => {
          this.cornerRadius = (event.target as HTMLInputElement).value;
          this.askSoon();
        }} /></label>
        <label>Name <input type="text" maxlength="100" .value=${this.name} @input=${(event: Event) => {
          this.name = (event.target as HTMLInputElement).value;
          this.askSoon();
        }} /></label>
      </div>
      ${isReading ? html`<p role="status">Reading ... <button type="button" @click=${() => emit(this, "outline-cancel")}>Cancel</button></p>` : nothing}
      ${answer ? html`<ww-outline-preview .outline=${answer}></ww-outline-preview>` : nothing}
      ${problems.map((message) => html`<p class="error" role="alert">${message}</p>`)}
      <div>
        <button type="button" @click=${() => {
          this.quarterTurns = (this.quarterTurns + 1) % 4;
          this.ask();
        }}>Turn by 90°</button>
        <button type="button" class="is-main" ?disabled=${answer === null} @click=${this.use}>Use this contour</button>
      </div>
    </div>`;
  }
}

function decimal(text: string): number {
  return text.trim() === "" ? Number.NaN : Number(text.replace(",", "."));
}

function unitWords(answer: ImportedOutline | null): string {
  if (answer === null || answer.unitFrom === "chosen") return "as the file says";
  return answer.unitFrom === "file" ? `as the file says: ${answer.unit}` : "none in the file: mm";
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-import-dialog": ImportDialog;
  }
}
