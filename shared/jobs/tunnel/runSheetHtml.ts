import type { RunKind, TunnelPlan } from "./plannedTest";
import { tunnelCautions } from "./tunnelCautions";

/** What stands above a run sheet. */
export interface RunSheetHeading {
  readonly title: string;
  readonly model: string;
  readonly facility: string;
  readonly reference: string;
}

const kindWords: Readonly<Record<RunKind, string>> = { zero: "zero", tare: "support", model: "model" };

const blankColumns = ["time", "speed or q", "temp.", "pressure", "humidity", "force", "remark"] as const;

/** The plan as one printable page (HTML 5, nothing loaded from elsewhere): a line for every run with boxes to write in. */
export function runSheetHtml(plan: TunnelPlan, heading: RunSheetHeading): string {
  const rows = plan.runs.map((run) => {
    const cells = [
      String(run.run),
      kindWords[run.kind],
      run.direction ?? "at rest",
      run.aimSpeedMetresPerSecond === null ? "0" : number(run.aimSpeedMetresPerSecond),
      run.aimDynamicPressurePascals === null ? "0" : number(run.aimDynamicPressurePascals),
      run.expectedForceNewtons === null ? "" : number(run.expectedForceNewtons),
      run.repeat === null ? "" : String(run.repeat),
    ];
    const blanks = blankColumns.map((name) => (name === "remark" ? run.remark : ""));
    const open = run.kind === "model" ? "<tr>" : `<tr class="${run.kind}">`;
    return `${open}${[...cells, ...blanks].map((cell) => `<td>${escaped(cell)}</td>`).join("")}</tr>`;
  });
  const heads = ["run", "what", "speed", "U aim, m/s", "q aim, Pa", "force exp., N", "repeat", ...blankColumns];
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>${escaped(`Run sheet: ${heading.title}`)}</title>
<style>
@page { size: A4 landscape; margin: 12mm; }
body { font: 10pt/1.35 sans-serif; color: #000; background: #fff; margin: 1rem auto; max-width: 70rem; }
h1 { font-size: 15pt; margin: 0 0 0.3rem; }
p, ul { margin: 0.25rem 0; }
table { border-collapse: collapse; width: 100%; margin-top: 0.6rem; }
th, td { border: 1px solid #777; padding: 0.22rem 0.4rem; text-align: left; height: 1.5em; }
th:nth-child(n+8), td:nth-child(n+8) { min-width: 4.2em; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
tr.zero td { background: #eee; }
tr.tare td:nth-child(2) { font-style: italic; }
.fill { display: flex; flex-wrap: wrap; gap: 0.4rem 2rem; }
.fill span { border-bottom: 1px solid #000; min-width: 12rem; display: inline-block; }
.caution { border-left: 5px solid #000; padding-left: 0.6rem; }
</style>
</head>
<body>
<h1>Run sheet: ${escaped(heading.title)}</h1>
<p>Model: ${escaped(heading.model)}. ${escaped(heading.reference)}.</p>
<p>Tunnel: ${escaped(heading.facility)}.</p>
<p>${plan.runs.length} runs, about ${number(plan.minutes / 60)} hours; repeats for ±${number(plan.wantedHalfWidthPercent)} % of the mean at ${number(plan.confidencePercent)} % confidence; order: ${plan.order}${plan.order === "randomised" ? `, seed ${plan.seed}` : ""}.</p>
<div class="fill"><p>Date <span>&nbsp;</span></p><p>By <span>&nbsp;</span></p><p>Model and surface checked <span>&nbsp;</span></p><p>Balance calibrated on <span>&nbsp;</span></p></div>
${tunnelCautions.map((caution) => `<p class="caution">${escaped(caution)}</p>`).join("\n")}
<ul>
<li>Read the zero at rest after the flow has settled; write the time at every reading, drift is taken out along it.</li>
<li>Rising: never overshoot the speed and come back. Falling: come from the top speed. The drag crisis remembers.</li>
${plan.notes.map((note) => `<li>${escaped(note)}</li>`).join("\n")}
</ul>
<table>
<thead><tr>${heads.map((head) => `<th scope="col">${escaped(head)}</th>`).join("")}</tr></thead>
<tbody>
${rows.join("\n")}
</tbody>
</table>
</body>
</html>
`;
}

function number(value: number): string {
  return String(Number(value.toPrecision(3)));
}

function escaped(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
}
