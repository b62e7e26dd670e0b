import { trialCautions } from "./trialCautions";
import type { TrialPlan } from "./trialPlan";
import type { ScoreScale, TrialSetup } from "./trialSetup";

/** Up to so many levels the sheet prints them to be ringed; beyond, a blank to write in. */
const mostLevels = 11;

const style = `@page { size: A4; margin: 14mm; }
body { font: 10pt/1.3 sans-serif; color: #000; background: #fff; margin: 1rem auto; max-width: 48rem; }
section { break-after: page; }
section:last-of-type { break-after: auto; }
h1 { font-size: 15pt; margin: 0 0 0.2rem; }
h2 { font-size: 11.5pt; margin: 0.6rem 0 0.1rem; break-after: avoid; }
p { margin: 0.2rem 0; }
table { border-collapse: collapse; width: 100%; }
th, td { border: 1px solid #777; padding: 0.15rem 0.5rem; text-align: left; }
td.code { font: 700 13pt monospace; }
td.levels { white-space: nowrap; letter-spacing: 0.1em; word-spacing: 0.45em; }
td.comment { width: 45%; height: 2.1em; }
tr, li { break-inside: avoid; }
.fill { display: flex; flex-wrap: wrap; gap: 0.2rem 2rem; }
.fill span { border-bottom: 1px solid #000; min-width: 10rem; display: inline-block; }
.caution { border-left: 5px solid #000; padding-left: 0.6rem; }`;

/**
 * A score sheet for every player on pages of its own (HTML 5, nothing loaded from elsewhere): cautions, scale, and for each
 * activity the codes in the order of play with room for score and comment.
 */
export function scoreSheetHtml(title: string, setup: TrialSetup, plan: TrialPlan): string {
  const sheets = setup.players.map((player, i) => {
    const sessions = plan.sessions.filter((session) => session.player === i);
    return `<section>
<h1>${escaped(title)}: ${escaped(player)}</h1>
<div class="fill"><p>Date <span>&nbsp;</span></p><p>Collected by <span>&nbsp;</span></p></div>
${trialCautions.map((caution) => `<p class="caution">${escaped(caution)}</p>`).join("\n")}
<p>${escaped(scaleText(setup.scale))} Play the pucks in the order of the sheet, score each one before you take the next, and do not go back. Leave a score empty when you could not judge. Do not talk about the pucks until everybody is done.</p>
${sessions.map((session) => sessionHtml(setup, session)).join("\n")}
</section>`;
  });
  return page(`Score sheets: ${title}`, sheets.join("\n"));
}

/** Which code is which puck, as a page to lock away. */
export function codeKeyHtml(title: string, setup: TrialSetup): string {
  const rows = setup.pucks.map(
    ({ code, name }) => `<tr><td class="code">${escaped(code)}</td><td>${escaped(name)}</td></tr>`,
  );
  return page(
    `Code key: ${title}`,
    `<section>
<h1>Code key: ${escaped(title)}</h1>
<p class="caution">Keep this page from players and from whoever collects or types in scores, until the last score is in.</p>
<table><thead><tr><th scope="col">code</th><th scope="col">puck</th></tr></thead><tbody>
${rows.join("\n")}
</tbody></table>
<p>Mark every puck with its code alone, at the same place, in the same ink; cover what else tells them apart as far as play allows. Orders and codes were drawn with seed ${setup.seed}.</p>
</section>`,
  );
}

function sessionHtml(setup: TrialSetup, { activity, repeat, order }: TrialPlan["sessions"][number]): string {
  const { name, instruction } = setup.activities[activity];
  const times = setup.repeats > 1 ? `, time ${repeat}` : "";
  const levels = levelsText(setup.scale);
  const rows = order.map(
    (puck, i) =>
      `<tr><td>${i + 1}</td><td class="code">${escaped(setup.pucks[puck].code)}</td><td class="levels">${levels}</td><td class="comment"></td></tr>`,
  );
  return `<h2>${escaped(name)}${times}</h2>
${instruction === "" ? "" : `<p>${escaped(instruction)}</p>`}
<table><thead><tr><th scope="col">order</th><th scope="col">code</th><th scope="col">score</th><th scope="col">comment</th></tr></thead><tbody>
${rows.join("\n")}
</tbody></table>`;
}

/** "How did it play? 1: badly, 9: well." */
export function scaleText({ question, lowest, highest, lowestMeans, highestMeans }: ScoreScale): string {
  return `${question} ${lowest}: ${lowestMeans}; ${highest}: ${highestMeans}.`;
}

function levelsText({ lowest, highest, step }: ScoreScale): string {
  const count = Math.round((highest - lowest) / step) + 1;
  if (count > mostLevels) return "&nbsp;";
  return Array.from({ length: count }, (_, i) => String(Number((lowest + i * step).toPrecision(12)))).join(" ");
}

function page(title: string, body: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>${escaped(title)}</title>
<style>
${style}
</style>
</head>
<body>
${body}
</body>
</html>
`;
}

function escaped(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
}
