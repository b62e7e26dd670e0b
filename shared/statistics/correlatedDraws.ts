import { problem, type Result, success } from "../result";
import { choleskyFactor, correlationMatrix } from "./correlationMatrix";
import type { RandomDraws } from "./randomDraws";
import { standardDraw } from "./standardDraw";
import type { InputCorrelation, UncertainInput } from "./uncertainInput";

/**
 * Draws of all inputs at once; correlated ones from a joint normal distribution through its Cholesky factor.
 * Source: JCGM 101:2008, 6.4.8 and C.5.
 * @returns a function that fills x; a problem where a correlated input is not normal or the coefficients are impossible
 */
export function correlatedDraws(
  inputs: readonly UncertainInput[],
  correlations: readonly InputCorrelation[],
  draws: RandomDraws,
): Result<(x: Float64Array) => void> {
  const joined = inputs.flatMap(({ key }, i) => (correlations.some(({ between }) => between.includes(key)) ? [i] : []));
  const odd = joined.find((i) => inputs[i].distribution !== "normal");
  if (odd !== undefined) {
    return problem(
      "correlation",
      `"${inputs[odd].name}" is correlated but not normal; only normal inputs can be drawn together`,
    );
  }
  const factor = choleskyFactor(
    correlationMatrix(
      joined.map((i) => inputs[i].key),
      correlations,
    ),
  );
  if (factor === null) {
    return problem(
      "correlation",
      "the correlation coefficients contradict each other: no inputs can have them together",
    );
  }
  const normals = new Float64Array(joined.length);
  const place = inputs.map((_, i) => joined.indexOf(i));
  return success((x) => {
    for (let k = 0; k < normals.length; k++) normals[k] = draws.normal();
    inputs.forEach(({ value, standardUncertainty, distribution, degreesOfFreedom }, i) => {
      const row = place[i];
      let draw = 0;
      if (row < 0) draw = standardDraw(draws, distribution, degreesOfFreedom);
      else for (let k = 0; k <= row; k++) draw += factor[row][k] * normals[k];
      x[i] = value + standardUncertainty * draw;
    });
  });
}
