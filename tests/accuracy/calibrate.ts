import { parseArgs } from "node:util";
import { CALIBRATED, type CalibratedConstants } from "../../shared/engine/constants/calibrated";
import { allSources } from "../published/allSources";
import { type Grade, type PublishedValue, scatterHalfWidth } from "../published/publishedValue";
import { predictAll } from "./predictAll";
import { crisis } from "./resultMeasures";
import { printSensitivity } from "./sensitivity";
import { type Part, splitForConstants } from "./sourceSplit";

/**
 * `npm run calibrate`: fits the calibrated constants to the experiments that may be fitted on and prints them beside
 * the ones in use. A compass search in the logarithms of the constants: each is tried a step up and down, the best move
 * is kept, and the steps are halved when none helps. Only experiments of the fitting half are in the loss: no target and no
 * design code. The experiments held out are judged at the end and never searched on.
 *
 * `npm run calibrate -- --sensitivity [KEY ...]`: what 20 % of each number of the ledger does to the results.
 */

const { values: options, positionals } = parseArgs({
  options: { sensitivity: { type: "boolean", default: false } },
  allowPositionals: true,
});
if (options.sensitivity) {
  await printSensitivity(positionals);
  process.exit();
}

type ConstantName = keyof CalibratedConstants;
const names = Object.keys(CALIBRATED) as ConstantName[];

/** Relative step of each constant at the start; the search ends when all are below `smallestStep`. */
const firstStep = 0.08;
const smallestStep = 0.02;

/** Weight of a value by how well it is known. */
const gradeWeights: Record<Grade, number> = { A: 1, B: 1, C: 0.4 };
/** Errors beyond this many scatters count linearly, so that one outlying source does not pull the rest. */
const robustLimit = 1.5;
/** A source's own scatter is not taken as better than this part of the value. */
const smallestRelativeScatter = 0.03;

/** Values of one group, kind and range of Reynolds number; every cell has the same say, however many sources it has. */
function cellOf({ group, quantity }: PublishedValue): string | null {
  const reynolds = "reynolds" in quantity && typeof quantity.reynolds === "number" ? quantity.reynolds : null;
  if (reynolds === null || group !== "smooth cylinder") return `${group}|${quantity.kind}`;
  if (reynolds > crisis[0] && reynolds < crisis[1])
    return quantity.kind === "dragCoefficient" ? null : `${group}|${quantity.kind}|crisis`;
  const range = reynolds <= crisis[0] ? "below" : reynolds < 1.5e6 ? "above" : "far above";
  return `${group}|${quantity.kind}|${range}`;
}

function loss(values: readonly PublishedValue[], constants: CalibratedConstants): number {
  const predictions = predictAll(
    values.map(({ quantity }) => quantity),
    { constants },
  );
  const cells = new Map<string, { sum: number; weight: number }>();
  values.forEach((value, i) => {
    const name = cellOf(value);
    if (name === null) return;
    const predicted = predictions[i].value;
    const weight = gradeWeights[value.grade];
    const scatter = Math.max(scatterHalfWidth(value), smallestRelativeScatter * Math.abs(value.value));
    const error = predicted === null ? 6 : Math.abs(predicted - value.value) / scatter;
    const term = error <= robustLimit ? error * error : robustLimit * (2 * error - robustLimit);
    const cell = cells.get(name) ?? { sum: 0, weight: 0 };
    cells.set(name, { sum: cell.sum + weight * term, weight: cell.weight + weight });
  });
  return [...cells.values()].reduce((total, { sum, weight }) => total + sum / weight, 0) / cells.size;
}

const parts = [...splitForConstants(allSources)];
const ofPart = (wanted: Part) => parts.filter(([, part]) => part === wanted).map(([value]) => value);
const fitted = ofPart("fit");
const heldOut = ofPart("held out");
const designCodes = ofPart("design code");

let best: CalibratedConstants = CALIBRATED;
let bestLoss = loss(fitted, best);
console.error(
  `${fitted.length} values to fit, ${heldOut.length} held out, ${designCodes.length} of design codes; loss in use ${bestLoss.toFixed(4)}`,
);

const steps = new Map(names.map((name) => [name, firstStep]));
while ([...steps.values()].some((step) => step >= smallestStep)) {
  for (const name of names) {
    const step = steps.get(name)!;
    if (step < smallestStep) continue;
    const trials = [1 + step, 1 / (1 + step)].map((factor) => ({ ...best, [name]: best[name] * factor }));
    const losses = trials.map((trial) => loss(fitted, trial));
    const better = losses[0] <= losses[1] ? 0 : 1;
    if (losses[better] < bestLoss - 1e-4) {
      best = trials[better];
      bestLoss = losses[better];
      console.error(`${name} ${best[name].toPrecision(4)}: loss ${bestLoss.toFixed(4)}`);
    } else steps.set(name, step / 2);
  }
}

const rows = names.map(
  (name) =>
    `${name.padEnd(24)} ${CALIBRATED[name].toPrecision(3).padStart(10)} ${best[name].toPrecision(3).padStart(10)}`,
);
console.log(
  [
    `${"constant".padEnd(24)} ${"in use".padStart(10)} ${"fitted".padStart(10)}`,
    ...rows,
    "",
    "mean robust squared error of the cells, in scatters:",
    ...(
      [
        ["fitting half", fitted],
        ["held out", heldOut],
        ["design codes", designCodes],
      ] as const
    ).map(
      ([part, values]) =>
        `  ${part.padEnd(14)} in use ${loss(values, CALIBRATED).toFixed(3)}, fitted ${loss(values, best).toFixed(3)}`,
    ),
  ].join("\n"),
);
