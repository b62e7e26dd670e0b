import { html, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { DragBand } from "../../../../shared/engine/trust/dragInterval";
import type { PredictedCrisis } from "../../../../shared/jobs/tunnel/predictedDrag";
import type { TunnelResult } from "../../../../shared/jobs/tunnel/tunnelResult";
import type { TunnelTask } from "../../tunnel/tunnelTask";
import { LightElement } from "../../view/lightElement";
import { initialTask } from "../../view/taskState";
import { problemList } from "../fault-list/faultList";

/** Equal Reynolds numbers: tunnel speeds, forces, what must be matched, and warnings. */
@customElement("ww-tunnel-similarity")
export class TunnelSimilarity extends LightElement {
  @property({ attribute: false }) solving: TunnelTask = initialTask;

  protected override render() {
    const { status, step, last: solved, problems } = this.solving;
    const working = status === "pending" ? (step?.label ?? "solving the model") : null;
    return html`<section class="view-section tunnel-section" aria-labelledby="tunnel-similarity-heading">
      <h2 id="tunnel-similarity-heading">Similarity</h2>
      <p class="hint" role="status">${working === null ? "" : `Working: ${working} ...`}</p>
      ${problemList(problems)}
      ${solved === null ? nothing : this.renderResult(solved.result)}
    </section>`;
  }

  private renderResult(result: TunnelResult) {
    const { similarity: similar } = result;
    const rowWarnings = new Map<string, number[]>();
    for (const { warnings, fullScaleSpeedMetresPerSecond: speed } of similar.rows) {
      for (const warning of warnings) rowWarnings.set(warning, [...(rowWarnings.get(warning) ?? []), speed]);
    }
    return html`<p>Tunnel speed = <b>${short(similar.speedRatio)}</b> x speed at full size. Roughness of the model for equal ks/D: <b>${short(1e6 * similar.modelSandGrainRoughnessMetres)} µm</b>. Turbulence to match: <b>${short(similar.fullScaleTurbulencePercent)} %</b>; the tunnel has ${short(similar.tunnelTurbulencePercent)} %. Blockage: <b>${short(100 * similar.blockageRatio)} %</b>.</p>
      <div class="scroll" tabindex="0" role="region" aria-label="Speeds of equal Reynolds number">
        <table class="results" id="similarity-table">
          <thead><tr><th scope="col">Full size, m/s</th><th scope="col">Re</th><th scope="col">Equal Re, m/s</th><th scope="col">Tunnel, m/s</th><th scope="col">Re in tunnel</th><th scope="col">Mach</th><th scope="col">q, Pa</th><th scope="col">Cd expected</th><th scope="col">Force, N</th><th scope="col">Steps of the balance</th></tr></thead>
          <tbody>${similar.rows.map(
            (row) =>
              html`<tr><th scope="row">${short(row.fullScaleSpeedMetresPerSecond)}</th><td>${row.fullScaleReynolds.toExponential(2)}</td><td>${short(row.wantedSpeedMetresPerSecond)}</td><td>${short(row.tunnelSpeedMetresPerSecond)}</td><td>${row.tunnelReynolds.toExponential(2)}</td><td>${row.mach === null ? "–" : row.mach.toFixed(3)}</td><td>${short(row.dynamicPressurePascals)}</td><td>${band(row.predictedDragCoefficient)}</td><td>${band(row.expectedForceNewtons)}</td><td>${row.resolutionSteps === null ? "–" : short(row.resolutionSteps)}</td></tr>`,
          )}</tbody>
        </table>
      </div>
      <p class="hint">Coefficients on the ${result.referenceArea} (${short(1e4 * result.referenceAreaSquareMetres)} cm² of the model), Re on the ${result.referenceLength}. Limits: Mach 0.3, common practice.</p>
      <ul class="hint">
        ${similar.crisesAtFullScaleTurbulence.map((crisis) => html`<li>${crisisText(crisis, "at full size")}</li>`)}
        ${similar.crisesAtTunnelTurbulence.map((crisis) => html`<li>${crisisText(crisis, "in the tunnel")}</li>`)}
      </ul>
      ${similar.warnings.map((warning) => html`<p class="caution">${warning}</p>`)}
      ${[...rowWarnings].map(([warning, speeds]) => html`<p class="caution">${speeds.map(short).join(", ")} m/s at full size: ${warning}</p>`)}`;
  }
}

function crisisText({ of, rising, falling, factor }: PredictedCrisis, where: string): string {
  return `Drag crisis of the ${of} ${where}: Re ${rising.toExponential(2)} with a rising speed, ${falling.toExponential(2)} with a falling one, within a factor ${short(factor)}.`;
}

function band(value: DragBand | null): string {
  return value === null ? "–" : `${short(value.expected)} (${short(value.low)} to ${short(value.high)})`;
}

function short(value: number): string {
  return String(Number(value.toPrecision(3)));
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-similarity": TunnelSimilarity;
  }
}
