import { mean, rootMeanSquare } from "simple-statistics";
import { allSources } from "../published/allSources";
import type { Group, PublishedValue } from "../published/publishedValue";
import type { PublishedSection, Quantity } from "../published/quantity";
import { roshko1961 } from "../published/roshko-1961";
import { rectangle, roughStream, sectionStream, smoothStream } from "../published/streams";
import { compact } from "./quantityText";
import { band, errorFigure, ordered, type Target, within } from "./target";

/** What the engine was furthest from when these were stated: long rounded sections, rough walls, wakes past the crisis. */
export function openTargets(): Target[] {
  return [...longRounded(), ...puckProfile(), ...roughWalls(), ...pastCrisis(), ...sharpRectangles()];
}

const drag = (section: PublishedSection): Quantity => ({
  kind: "dragCoefficient",
  ...sectionStream(section),
  reynolds: 1e5,
});

function longRounded(): Target[] {
  const area = "long rounded sections";
  return [
    band(area, drag(rectangle(2, 0.167)), 0.6, 0.82),
    band(area, drag(rectangle(2, 0.5)), 0.33, 0.5),
    ...(
      [
        [2, 0.7],
        [4, 0.68],
        [6, 0.64],
      ] as const
    ).map(([lengthToHeight, value]) =>
      within(area, drag({ shape: "round nose, flat rear", lengthToHeight }), 0.12, value),
    ),
    band(area, drag(rectangle(1, 0.167)), 1.06, 1.35),
    band(area, drag(rectangle(1, 0.333)), 0.88, 1.15),
  ];
}

/** A puck's profile, 80 x 30 mm, over the radius of its edges in mm. */
const edgeRadii = [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15] as const;
const puckProfile30 = { length: 80, height: 30 } as const;
/** A drag that rises by less than this with the radius counts as level, */
const level = 1.01;
/** and one that falls by more than this from one millimetre to the next as a jump; a choice without a source. */
const largestStep = 1.25;

function puckProfile(): Target[] {
  const quantities = edgeRadii.map((radius): Quantity => {
    const section = rectangle(puckProfile30.length / puckProfile30.height, radius / puckProfile30.height);
    return { kind: "dragCoefficient", ...sectionStream(section, 0.002), reynolds: 1.05e5 };
  });
  return [
    {
      area: "puck profile",
      statement: "Cd of 80 x 30 mm over an edge radius of 2 to 15 mm, Re 1.05e5, Tu 0.2 %",
      allowed: `falling or level, no step above ${compact((largestStep - 1) * 100)} %`,
      quantities,
      judge: (predictions) =>
        predictions.every(({ value }, i) => {
          const ratio = i === 0 ? 1 : predictions[i - 1].value! / value!;
          return ratio >= 1 / level && ratio <= largestStep;
        }),
      figure: (values) => values.map((value) => value.toFixed(2)).join(" "),
    },
  ];
}

function valuesOf(group: Group, take: (value: PublishedValue) => boolean): PublishedValue[] {
  return allSources.flatMap(({ values }) =>
    values.filter((value) => value.group === group && value.shownOnly === undefined && take(value)),
  );
}

/** Mean of the relative errors. */
const meanError = (predicted: readonly number[], published: readonly number[]) =>
  mean(predicted.map((value, i) => value / published[i] - 1));
const rmsError = (predicted: readonly number[], published: readonly number[]) =>
  rootMeanSquare(predicted.map((value, i) => value / published[i] - 1));
const difference = (predicted: readonly number[], published: readonly number[]) =>
  predicted.map((value, i) => value - published[i]);

function roughWalls(): Target[] {
  const area = "rough walls";
  const rough = valuesOf("rough cylinder", ({ quantity }) =>
    quantity.kind === "dragCoefficient" ? quantity.reynolds >= 5e5 : quantity.kind === "meanDragCoefficient",
  );
  const separation = valuesOf("rough cylinder", ({ quantity }) => quantity.kind === "separationAngle");
  const ratios = [1e-4, 3e-4, 1e-3, 3e-3, 1e-2, 2e-2];
  return [
    errorFigure(area, "mean relative error of Cd past the crisis", rough, meanError, [-0.04, 0.04]),
    errorFigure(
      area,
      "mean error of the separation angle, deg",
      separation,
      (predicted, published) => mean(difference(predicted, published)),
      [-2, 2],
    ),
    ...[1e6, 2e6, 5e6, 1e7].map((reynolds) =>
      ordered(
        area,
        `Cd over ks/D 1e-4, 3e-4, 1e-3, 3e-3, 1e-2, 2e-2 at Re ${compact(reynolds)}`,
        ratios.map((ratio) => ({ kind: "dragCoefficient" as const, ...roughStream(ratio), reynolds })),
        "rising",
      ),
    ),
  ];
}

function pastCrisis(): Target[] {
  const area = "past the crisis";
  const strouhal = (reynolds: number): Quantity => ({ kind: "strouhal", ...smoothStream(), reynolds });
  const pressures = roshko1961.values.filter(({ quantity }) => quantity.kind === "pressureCoefficient");
  const base = roshko1961.values.filter(({ quantity }) => quantity.kind === "basePressureCoefficient");
  return [
    errorFigure(
      area,
      "transcritical circle, Re 8.4e6: rms error of Cp",
      pressures,
      (predicted, published) => rootMeanSquare(difference(predicted, published)),
      [0, 0.17],
    ),
    errorFigure(
      area,
      "transcritical circle, Re 8.4e6: error of Cpb",
      base,
      (predicted, published) => Math.abs(difference(predicted, published)[0]),
      [0, 0.12],
    ),
    band(area, strouhal(4e5), 0.38, 0.5),
    band(area, strouhal(8e5), 0.38, 0.5),
    band(area, strouhal(5e6), 0.26, 0.29),
  ];
}

function sharpRectangles(): Target[] {
  const sharp = valuesOf(
    "rectangles over length/height",
    ({ quantity }) => quantity.kind === "dragCoefficient" && quantity.section.shape === "rectangle",
  );
  return [errorFigure("sharp rectangles", "rms relative error of Cd over length/height", sharp, rmsError, [0, 0.08])];
}
