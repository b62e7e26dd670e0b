import { readFileSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { prepareShape } from "../../shared/case/prepareShape";
import type { FlowSettings } from "../../shared/evidence/flowSettings";
import { measuredSection } from "../../shared/evidence/measuredBody";
import { buildContour } from "../../shared/geometry/sectionFamilies";
import type { SectionSpec } from "../../shared/geometry/sectionSpec";
import { randomDraws } from "../../shared/tunnel/randomDraws";

/**
 * Renews the invented tables of cases/harbour-measured.json: what the engine says under conditions that the case does not
 * state, with a fixed offset and scatter by a seed. Run it with
 * `npx tsx src/demo/makeMeasuredData.ts && npx biome check --write cases`.
 */

const seed = 20261125;
const caseFile = resolve(import.meta.dirname, "../../cases/harbour-measured.json");

interface InventedTest {
  /** Name of the set in the case. */
  readonly name: string;
  readonly section: SectionSpec;
  readonly truth: FlowSettings;
  /** Measured / predicted, the same at every point. */
  readonly offset: number;
  /** Relative standard deviation of one point. */
  readonly scatter: number;
  /** Relative expanded uncertainty (k = 2) that the table states. */
  readonly statedUncertainty: number;
  readonly reynoldsNumbers: readonly number[];
}

const quiet: FlowSettings = {
  turbulenceIntensity: 0.003,
  sandGrainRoughnessRatio: 1e-4,
  lengthToWidth: null,
  blockageRatio: 0,
};

const tests: readonly InventedTest[] = [
  {
    name: "plan section, tunnel A",
    section: { family: "circle", diameter: 0.08 },
    truth: { ...quiet, turbulenceIntensity: 0.018, sandGrainRoughnessRatio: 2.5e-5 },
    offset: 1,
    scatter: 0.012,
    statedUncertainty: 0.04,
    reynoldsNumbers: [4e4, 6e4, 8e4, 1e5, 1.3e5, 1.6e5, 2e5, 2.5e5, 3.2e5, 4e5, 5e5],
  },
  {
    name: "profile, water channel B",
    section: { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.006 },
    truth: quiet,
    offset: 0.91,
    scatter: 0.01,
    statedUncertainty: 0.03,
    reynoldsNumbers: [2.5e4, 3.5e4, 5e4, 7e4, 1e5, 1.4e5, 2e5],
  },
];

const columns = ["reynoldsNumber", "dragCoefficient", "expandedUncertainty", "direction", "strouhalNumber"];

interface DemoCase {
  readonly measurements: { readonly sets: { readonly name: string; table: { data: unknown } }[] };
}

const draws = randomDraws(seed);
const demo = JSON.parse(readFileSync(caseFile, "utf8")) as DemoCase;
for (const test of tests) {
  const set = demo.measurements.sets.find(({ name }) => name === test.name);
  if (set === undefined) throw new Error(`the case has no set "${test.name}".`);
  set.table.data = { columns, rows: inventedRows(test) };
}
writeFileSync(caseFile, `${JSON.stringify(demo, null, 2)}\n`);

function inventedRows({ section, truth, offset, scatter, statedUncertainty, reynoldsNumbers }: InventedTest) {
  const contour = buildContour(section);
  if (!contour.ok) throw new Error(contour.problem.message);
  const shape = prepareShape(contour.value, 0, 120);
  if (!shape.ok) throw new Error(shape.problem.message);
  const { predict } = measuredSection(shape.value.section);
  const wanted = (["rising", "falling"] as const).flatMap((direction) =>
    reynoldsNumbers.map((reynolds) => ({ reynolds, direction })),
  );
  return predict(truth, wanted, false).map((point, i) => {
    if (point === null) throw new Error(`no state at Re ${wanted[i].reynolds}`);
    const drag = point.dragCoefficient * offset * (1 + scatter * draws.normal());
    const strouhal = point.strouhal * (1 + scatter * draws.normal());
    const numbers = [drag, statedUncertainty * drag, strouhal].map((value) => Number(value.toFixed(3)));
    return [wanted[i].reynolds, numbers[0], numbers[1], wanted[i].direction, numbers[2]];
  });
}
