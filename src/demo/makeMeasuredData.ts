import { readFileSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { prepareShape } from "../../shared/engine/section/prepareShape";
import type { FlowSettings } from "../../shared/jobs/evidence/flowSettings";
import { type MeasuredBody, measuredSection } from "../../shared/jobs/evidence/measuredBody";
import { measuredPuck } from "../../shared/jobs/evidence/measuredPuck";
import type { SpeedDirection } from "../../shared/jobs/evidence/measurement";
import { puckFigures } from "../../shared/jobs/puck/body/puckFigures";
import type { PuckSpec } from "../../shared/jobs/puck/body/puckSpec";
import type { PuckAttitude } from "../../shared/jobs/puck/drag/heldPuck";
import { randomDraws } from "../../shared/statistics/randomDraws";

/**
 * Renews the invented tables of cases/harbour-measured.json: what the engine says under conditions that the case does not
 * state, with a fixed offset and scatter by a seed. Run it with
 * `npx tsx src/demo/makeMeasuredData.ts && npx biome check --write cases`.
 */

const seed = 20261125;
const caseFile = resolve(import.meta.dirname, "../../cases/harbour-measured.json");
const puckFile = resolve(import.meta.dirname, "../../cases/harbour-league-candidates.json");

interface InventedTest {
  /** Name of the set in the case. */
  readonly name: string;
  readonly body: () => MeasuredBody;
  readonly directions: readonly SpeedDirection[];
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
    body: () => section({ family: "circle", diameter: 0.08 }),
    directions: ["rising", "falling"],
    truth: { ...quiet, turbulenceIntensity: 0.018, sandGrainRoughnessRatio: 2.5e-5 },
    offset: 1,
    scatter: 0.012,
    statedUncertainty: 0.04,
    reynoldsNumbers: [4e4, 6e4, 8e4, 1e5, 1.3e5, 1.6e5, 2e5, 2.5e5, 3.2e5, 4e5, 5e5],
  },
  {
    name: "profile, water channel B",
    body: () => section({ family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.006 }),
    directions: ["rising", "falling"],
    truth: quiet,
    offset: 0.91,
    scatter: 0.01,
    statedUncertainty: 0.03,
    reynoldsNumbers: [2.5e4, 3.5e4, 5e4, 7e4, 1e5, 1.4e5, 2e5],
  },
  {
    name: "whole puck face-on, tunnel C",
    body: () => puck("Harbour baseline", "faceOn"),
    directions: ["rising"],
    truth: { ...quiet, blockageRatio: 0.08 },
    offset: 1,
    scatter: 0.01,
    statedUncertainty: 0.03,
    reynoldsNumbers: [4e4, 6e4, 8e4, 1e5, 1.2e5, 1.5e5],
  },
];

const columns = ["reynoldsNumber", "dragCoefficient", "expandedUncertainty", "direction", "strouhalNumber"];
const columnsWithoutShedding = columns.slice(0, 4);

interface DemoCase {
  readonly measurements: { readonly sets: { readonly name: string; table: { data: unknown } }[] };
}

interface PuckCase {
  readonly puck: { readonly baselines: readonly { readonly puck: PuckSpec }[] };
}

const draws = randomDraws(seed);
const demo = JSON.parse(readFileSync(caseFile, "utf8")) as DemoCase;
for (const test of tests) {
  const set = demo.measurements.sets.find(({ name }) => name === test.name);
  if (set === undefined) throw new Error(`the case has no set "${test.name}".`);
  const rows = inventedRows(test);
  set.table.data = { columns: rows[0].length === columns.length ? columns : columnsWithoutShedding, rows };
}
writeFileSync(caseFile, `${JSON.stringify(demo, null, 2)}\n`);

function section(spec: SectionSpec): MeasuredBody {
  const shape = prepareShape({ section: spec, panelCount: 120 });
  if (!shape.ok) throw new Error(shape.problem.message);
  return measuredSection(shape.value);
}

/** A baseline puck of the Harbour League, as the cases have it. */
function puck(name: string, attitude: PuckAttitude): MeasuredBody {
  const pucks = JSON.parse(readFileSync(puckFile, "utf8")) as PuckCase;
  const found = pucks.puck.baselines.find((one) => one.puck.name === name);
  if (found === undefined) throw new Error(`there is no baseline "${name}".`);
  const figures = puckFigures(found.puck, { fluidDensity: 997 });
  if (!figures.ok) throw new Error(figures.problem.message);
  const body = measuredPuck({ spec: found.puck, figures: figures.value, attitude });
  if (!body.ok) throw new Error(body.problem.message);
  return body.value;
}

function inventedRows(test: InventedTest): (string | number)[][] {
  const { body, directions, truth, offset, scatter, statedUncertainty, reynoldsNumbers } = test;
  const wanted = directions.flatMap((direction) => reynoldsNumbers.map((reynolds) => ({ reynolds, direction })));
  return body()
    .predict(truth, wanted, false)
    .map((point, i) => {
      if (point === null) throw new Error(`no state at Re ${wanted[i].reynolds}`);
      const scattered = (value: number) => value * (1 + scatter * draws.normal());
      const drag = scattered(point.dragCoefficient * offset);
      const shedding = point.strouhal === null ? [] : [rounded(scattered(point.strouhal))];
      return [wanted[i].reynolds, rounded(drag), rounded(statedUncertainty * drag), wanted[i].direction, ...shedding];
    });
}

function rounded(value: number): number {
  return Number(value.toFixed(3));
}
