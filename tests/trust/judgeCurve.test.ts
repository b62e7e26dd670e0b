import { expect, test } from "vitest";
import { prepareShape } from "../../shared/engine/section/prepareShape";
import { sketchStreams } from "../../shared/engine/section/solveStreams";
import { errorPoint } from "../../shared/engine/trust/errorPoint";
import { levelErrorsAt } from "../../shared/engine/trust/levelProcess";
import { studyGround } from "../../shared/engine/trust/studyPlace";

// A sharp square keeps one regime: the drag is then log-normal about the engine's, with the closed forms of its mean
// and quantiles (Johnson, Kotz & Balakrishnan (1994), Continuous Univariate Distributions 1, ch. 14; from memory).
test("a sketched curve without a crisis has log-normal bands about the engine's drag between its points", () => {
  const shape = prepareShape({
    section: { family: "roundedRectangle", length: 0.03, height: 0.03, edgeRadius: 0.0003 },
    panelCount: 80,
  });
  if (!shape.ok) throw new Error(shape.problem.message);
  const stream = { sandGrainRoughnessRatio: 1e-5, turbulenceIntensity: 0.01 };
  const solved = sketchStreams(
    shape.value,
    [3e4, 6e4, 1.2e5].map((reynolds) => ({ ...stream, reynolds })),
  );
  const { condition, outcome, bands } = solved[1];
  const { knowledge, point } = studyGround(shape.value.section, condition);
  const { mean, covariance } = levelErrorsAt(knowledge[0].level, [errorPoint(point, condition, "subcritical")]);
  const deviation = Math.sqrt(covariance[0]);
  const band = bands[outcome.rising!];
  const drags = solved.map(({ outcome: one }) => one.states[one.rising!].dragCoefficient);
  // The shift of the crisis moves the reading along the curve, by no more than its points differ.
  const spread = Math.max(...drags) / Math.min(...drags);
  const expected = drags[1] * Math.exp(mean[0] + deviation ** 2 / 2);
  expect(Math.abs(Math.log(band.expected / expected))).toBeLessThan(Math.log(spread) + 1e-6);
  const width = Math.log(band.high / band.low) / (2 * 1.6449 * deviation);
  expect(width).toBeGreaterThan(0.99);
  expect(width).toBeLessThan(1 + Math.log(spread) / deviation + 0.01);
  expect(band).toMatchObject({ crisisReynolds: null, spansCrisis: false, pastCrisisShare: 0 });
});
