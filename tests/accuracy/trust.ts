import { writeFileSync } from "node:fs";
import { CHECKED_ERRORS } from "../../shared/engine/trust/checkedErrors";
import { allSources } from "../published/allSources";
import type { Quantity } from "../published/quantity";
import { errorsFile } from "./errorsFile";
import { nelderMead } from "./nelderMead";
import { predictAll } from "./predictAll";
import type { Prediction } from "./prediction";
import { crisisVector, levelVector, withCrisisVector, withLevelVector } from "./trustParameters";
import { crisisPoints, levelData, trustPoints } from "./trustPoints";
import { leftOutLevels, leftOutLogScore } from "./trustScore";

/**
 * `npm run trust`: fits the parameters of the error model to the score of experiments that are left out, from those in
 * use, and writes them to shared/engine/trust/checkedErrors.ts. Takes some minutes. The level's parameters and those of
 * the crisis are fitted in turn; a prior about the starting values of trustParameters.ts keeps those that the data say
 * nothing of.
 */
const rounds = 2;
const levelEvaluations = 200;
const crisisEvaluations = 200;
const firstSteps = { level: 0.3, crisis: 0.15 };

const quantities = allSources.flatMap(({ values }) => values.map(({ quantity }) => quantity));
const predictions = predictAll(quantities);
const byQuantity = new Map<Quantity, Prediction>(quantities.map((quantity, i) => [quantity, predictions[i]]));
const predictionOf = (quantity: Quantity) => byQuantity.get(quantity);
const points = trustPoints(allSources, predictionOf);
const data = levelData(points);
const crises = crisisPoints(allSources, predictionOf);

let parameters = CHECKED_ERRORS.parameters;
const score = (tried: typeof parameters, levels = leftOutLevels(points, data, tried)) =>
  leftOutLogScore(points, levels, crises, tried);
console.error(
  `${points.length} values, ${data.length} of them or means of some away from a crisis, ${crises.length} crises`,
);
console.error(`score in use ${score(parameters).toFixed(4)}`);
for (let round = 0; round < rounds; round++) {
  const before = parameters;
  const level = nelderMead(
    (x) => score(withLevelVector(before, x)),
    levelVector(before),
    firstSteps.level / (round + 1),
    levelEvaluations,
  );
  const fitted = withLevelVector(before, level.x);
  const levels = leftOutLevels(points, data, fitted);
  const crisis = nelderMead(
    (x) => score(withCrisisVector(fitted, x), levels),
    crisisVector(fitted),
    firstSteps.crisis / (round + 1),
    crisisEvaluations,
  );
  parameters = withCrisisVector(fitted, crisis.x);
  console.error(`round ${round + 1}: score ${crisis.value.toFixed(4)}`);
}
const today = new Date().toISOString().slice(0, 10);
writeFileSync(
  new URL("../../shared/engine/trust/checkedErrors.ts", import.meta.url),
  errorsFile(today, parameters, data),
);
console.log(JSON.stringify(parameters, null, 2));
