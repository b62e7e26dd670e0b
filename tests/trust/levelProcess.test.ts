import { inverse, Matrix } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { levelCovariance, sourceCovariance } from "../../shared/engine/trust/errorCovariance";
import { conditionLevel, type LevelDatum, levelErrorsAt } from "../../shared/engine/trust/levelProcess";
import { mixtureScore } from "../../shared/statistics/normalMixture";
import { randomDraws } from "../../shared/statistics/randomDraws";
import { mean, standardDeviation } from "../../shared/statistics/sample";
import { drawnBias, drawnLevels, errorPointOf, measuredBy, randomPoint, roundParameters } from "./syntheticModel";

const ninetyPercent = 1.6449;

/** The posterior by whole matrices and their inverse (Rasmussen & Williams 2006, eq. 2.22 to 2.24), with ml-matrix. */
function byInverse(data: readonly LevelDatum[], points: readonly LevelDatum["point"][], parameters = roundParameters) {
  const between = (a: readonly LevelDatum["point"][], b: readonly LevelDatum["point"][]) =>
    new Matrix(a.map((one) => b.map((other) => levelCovariance(one, other, parameters))));
  const own = data.map(({ point }) => point);
  const K = between(own, own);
  data.forEach((a, i) => {
    data.forEach((b, j) => {
      if (a.source === b.source) {
        K.set(i, j, K.get(i, j) + sourceCovariance(a.point.regime, b.point.regime, parameters));
      }
    });
    K.set(i, i, K.get(i, i) + a.scatter ** 2 + parameters.singleDeviation ** 2);
  });
  const gain = between(points, own).mmul(inverse(K));
  const posterior = Matrix.sub(between(points, points), gain.mmul(between(own, points)));
  return {
    mean: gain.mmul(Matrix.columnVector(data.map(({ error }) => error))).to1DArray(),
    covariance: posterior.add(Matrix.eye(points.length).mul(parameters.singleDeviation ** 2)).to1DArray(),
  };
}

describe("conditionLevel(data, parameters) and levelErrorsAt(process, points)", () => {
  it("give the mean and covariance of whole matrices and their inverse, 1e-10", () => {
    const draws = randomDraws(3);
    const places = Array.from({ length: 12 }, () => randomPoint(draws));
    const data = measuredBy(
      ["a", "b", "c"],
      places,
      drawnLevels(places, roundParameters, draws),
      0.03,
      roundParameters,
      draws,
    );
    const points = Array.from({ length: 5 }, () => randomPoint(draws));
    const found = levelErrorsAt(conditionLevel(data, roundParameters), points);
    const expected = byInverse(data, points);
    expected.mean.forEach((value, i) => {
      expect(Math.abs(found.mean[i] - value)).toBeLessThan(1e-10);
    });
    expected.covariance.forEach((value, i) => {
      expect(Math.abs(found.covariance[i] - value)).toBeLessThan(1e-10);
    });
  });

  it("return one measurement without noise, bias or a single part where it was made, and nothing far from it", () => {
    const exact = {
      ...roundParameters,
      singleDeviation: 0,
      sourceDeviation: { subcritical: 0, supercritical: 0, transcritical: 0 },
    };
    const point = errorPointOf();
    const process = conditionLevel([{ point, source: "own", scatter: 0, error: -0.17 }], exact);
    const far = errorPointOf({ logLengthToHeight: 40 });
    const { mean: found, covariance } = levelErrorsAt(process, [point, far]);
    expect(found[0]).toBeCloseTo(-0.17, 12);
    expect(covariance[0]).toBeCloseTo(0, 12);
    expect(found[1]).toBeCloseTo(0, 12);
    expect(covariance[3]).toBeCloseTo(exact.levelDeviation.subcritical ** 2, 12);
  });

  it("without data is the prior", () => {
    const { mean: found, covariance } = levelErrorsAt(conditionLevel([], roundParameters), [errorPointOf()]);
    expect(found[0]).toBe(0);
    expect(covariance[0]).toBeCloseTo(0.2 ** 2 + 0.02 ** 2, 12);
  });

  it("keep a long table of one source from counting as many proofs", () => {
    const point = errorPointOf();
    const table = (sources: (i: number) => string) =>
      levelErrorsAt(
        conditionLevel(
          Array.from({ length: 40 }, (_, i) => ({ point, source: sources(i), scatter: 0.02, error: 0.1 })),
          roundParameters,
        ),
        [point],
      ).covariance[0];
    const single = roundParameters.singleDeviation ** 2;
    expect(table(() => "one") - single).toBeGreaterThan(0.9 * roundParameters.sourceDeviation.subcritical ** 2);
    expect(table((i) => `source ${i}`) - single).toBeLessThan(0.05 * roundParameters.sourceDeviation.subcritical ** 2);
  });
});

describe("bands from data of a world that is known", () => {
  const parameters = roundParameters;
  const draws = randomDraws(20);
  const worlds = 150;
  const perWorld = 6;
  const results = Array.from({ length: worlds }, () => {
    const places = Array.from({ length: 20 + perWorld }, () => randomPoint(draws));
    const truth = drawnLevels(places, parameters, draws);
    const data = measuredBy(
      ["a", "b", "c", "d"],
      places.slice(perWorld),
      truth.slice(perWorld),
      0.03,
      parameters,
      draws,
    );
    const { mean: found, covariance } = levelErrorsAt(conditionLevel(data, parameters), places.slice(0, perWorld));
    const bias = drawnBias(parameters, draws);
    // One place of each world is judged, so that all judged ones are independent.
    const deviation = Math.sqrt(covariance[0]);
    const sourceVariance = sourceCovariance(places[0].regime, places[0].regime, parameters);
    return {
      ofDrag: (truth[0] - found[0]) / deviation,
      ofMeasurement:
        (truth[0] + bias(places[0].regime) + 0.03 * draws.normal() - found[0]) /
        Math.sqrt(covariance[0] + sourceVariance + 0.03 ** 2),
      score:
        mixtureScore(
          { weights: Float64Array.of(1), means: Float64Array.of(found[0]), deviations: Float64Array.of(deviation) },
          truth[0],
        ) / deviation,
    };
  });

  it.each(["ofDrag", "ofMeasurement"] as const)(
    "hold 90 %% of what came (%s), within three binomial standard errors",
    (which) => {
      const held = results.filter((result) => Math.abs(result[which]) <= ninetyPercent).length / worlds;
      expect(Math.abs(held - 0.9)).toBeLessThan(3 * Math.sqrt((0.9 * 0.1) / worlds));
    },
  );

  it("score 1 / sqrt(pi) deviations on average, within four standard errors", () => {
    const scores = results.map(({ score }) => score);
    const error = standardDeviation(scores) / Math.sqrt(worlds);
    expect(Math.abs(mean(scores) - 1 / Math.sqrt(Math.PI))).toBeLessThan(4 * error);
  });
});
