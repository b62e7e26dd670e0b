import { caseSteps } from "../../shared/case/caseSteps";
import { readCase } from "../../shared/case/readCase";
import { demoDocuments } from "./demoDocuments";
import { mutatedJson } from "./mutateJson";
import { serveSeeds } from "./seededProcess";

/** Each section of the demo cases alone in one stream: a case of a single solution. */
const originals = demoDocuments().flatMap((document) => {
  const { wakewrightCase, sections = [], ...rest } = document as Record<string, unknown> & { sections?: unknown[] };
  const flow = Object.fromEntries(
    Object.entries(rest).filter(([key]) => /^(fluid|turbulencePercents|sandGrain|roughness|panelCount)/.test(key)),
  );
  return sections.map((section) => ({
    wakewrightCase,
    title: "one section",
    ...flow,
    speedsMetresPerSecond: [3],
    sections: [section],
  }));
});

/** Seeds that are tried for one case that is accepted; a try of none counts as such. */
const mostMutations = 200;

serveSeeds((seed) => {
  for (let k = 0; k < mostMutations; k++) {
    const text = mutatedJson(originals, seed * mostMutations + k);
    const reading = readCase(text, "case.json");
    if (!reading.ok || reading.value.shapes.length !== 1) continue;
    const steps = caseSteps(reading.value);
    let step = steps.next();
    while (step.done !== true) step = steps.next();
    const bad = notFinite(step.value, "");
    const rows = step.value.results;
    const kind = rows.every(({ converged }) => converged) ? "solved" : "without a state, with its reason";
    const unsaid = rows.filter((row) => !row.converged && row.problem === null).map(() => "no state and no reason");
    return { kind, faults: [...bad.map((place) => `not a finite number: ${place}`), ...unsaid] };
  }
  return { kind: `none of ${mostMutations} accepted`, faults: [] };
});

/** Places of numbers that no JSON document can hold. */
function notFinite(value: unknown, place: string): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [place];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => notFinite(inner, `${place}.${key}`));
}
