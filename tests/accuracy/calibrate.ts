import { CALIBRATED, type CalibratedConstants } from "../../shared/constants/calibrated";
import { allSources } from "../published/allSources";
import { type Grade, type PublishedValue, scatterHalfWidth } from "../published/publishedValue";
import { splitIntoHalves } from "./halves";
import { predictAll } from "./predictAll";

/**
 * `npm run calibrate`: fits the calibrated constants to the fitting half of the published values and prints them beside
 * the ones in use. A compass search in the logarithms of the constants: each is tried a step up and down, the best move
 * is kept, and the steps are halved when none helps. The held-out half is judged at the end and never searched on.
 */

type ConstantName = keyof CalibratedConstants;
const names = Object.keys(CALIBRATED) as ConstantName[];

/** Relative step of each constant at the start; the search ends when all are below `smallestStep`. */
const firstStep = 0.12;
const smallestStep = 0.02;

/** Weight of a value by how well it is known. */
const gradeWeights: Record<Grade, number> = { A: 1, B: 1, C: 0.4 };
/** Errors beyond this many scatters count linearly, so that one outlying source does not pull the rest. */
const robustLimit = 1.5;
/** A source's own scatter is not taken as better than this part of the value. */
const smallestRelativeScatter = 0.03;

function loss(values: readonly PublishedValue[], constants: CalibratedConstants): number {
  const predictions = predictAll(
    values.map(({ quantity }) => quantity),
    { constants },
  );
  let sum = 0;
  let weights = 0;
  values.forEach((value, i) => {
    const predicted = predictions[i].value;
    const weight = gradeWeights[value.grade];
    const scatter = Math.max(scatterHalfWidth(value), smallestRelativeScatter * Math.abs(value.value));
    const error = predicted === null ? 6 : Math.abs(predicted - value.value) / scatter;
    sum += weight * (error <= robustLimit ? error * error : robustLimit * (2 * error - robustLimit));
    weights += weight;
  });
  return sum / weights;
}

const halves = splitIntoHalves(allSources);
const fitted = [...halves].filter(([, half]) => half === "fit").map(([value]) => value);
const heldOut = [...halves].filter(([, half]) => half === "held out").map(([value]) => value);

let best: CalibratedConstants = CALIBRATED;
let bestLoss = loss(fitted, best);
const startLoss = bestLoss;
console.error(`${fitted.length} values to fit, ${heldOut.length} held out; loss in use ${bestLoss.toFixed(4)}`);

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
    `mean robust squared error in scatters, fitting half: in use ${startLoss.toFixed(3)}, fitted ${bestLoss.toFixed(3)}`,
    `held-out half: in use ${loss(heldOut, CALIBRATED).toFixed(3)}, fitted ${loss(heldOut, best).toFixed(3)}`,
  ].join("\n"),
);
