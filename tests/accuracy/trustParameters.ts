import type { ErrorParameters } from "../../shared/engine/trust/errorCovariance";

/** Where the fit starts: orders of magnitude, not results. */
export const startParameters: ErrorParameters = {
  levelDeviation: { subcritical: 0.15, other: 0.25 },
  correlationLengths: {
    logReynolds: 1.5,
    logRoughness: 1,
    turbulence: 1,
    logLengthToHeight: 0.7,
    cornerRadiusToHeight: 0.2,
  },
  regimeCorrelation: 0.3,
  shapeCorrelation: 0.3,
  sourceDeviation: { subcritical: 0.05, supercritical: 0.2, transcritical: 0.1 },
  singleDeviation: 0.03,
  crisisShift: {
    "circle in a quiet stream": { mean: 0, deviation: 0.2 },
    "circle in a turbulent stream": { mean: 0, deviation: 0.4 },
    "other section": { mean: 0, deviation: 0.4 },
  },
};

const logit = (share: number) => Math.log(share / (1 - share));
const share = (x: number) => 1 / (1 + Math.exp(-x));

/** The parameters of the level process and the biases as numbers without bounds. */
export function levelVector({
  levelDeviation,
  correlationLengths: lengths,
  regimeCorrelation,
  shapeCorrelation,
  sourceDeviation,
  singleDeviation,
}: ErrorParameters): number[] {
  return [
    ...[levelDeviation.subcritical, levelDeviation.other].map(Math.log),
    ...[lengths.logReynolds, lengths.logRoughness, lengths.turbulence].map(Math.log),
    ...[lengths.logLengthToHeight, lengths.cornerRadiusToHeight].map(Math.log),
    ...[regimeCorrelation, shapeCorrelation].map(logit),
    ...[sourceDeviation.subcritical, sourceDeviation.supercritical, sourceDeviation.transcritical].map(Math.log),
    Math.log(singleDeviation),
  ];
}

export function withLevelVector(parameters: ErrorParameters, x: readonly number[]): ErrorParameters {
  const e = (i: number) => Math.exp(x[i]);
  return {
    ...parameters,
    levelDeviation: { subcritical: e(0), other: e(1) },
    correlationLengths: {
      logReynolds: e(2),
      logRoughness: e(3),
      turbulence: e(4),
      logLengthToHeight: e(5),
      cornerRadiusToHeight: e(6),
    },
    regimeCorrelation: share(x[7]),
    shapeCorrelation: share(x[8]),
    sourceDeviation: { subcritical: e(9), supercritical: e(10), transcritical: e(11) },
    singleDeviation: e(12),
  };
}

/** Means and ln of the deviations of the shifts of the crisis. */
export function crisisVector({ crisisShift }: ErrorParameters): number[] {
  return Object.values(crisisShift).flatMap(({ mean, deviation }) => [mean, Math.log(deviation)]);
}

export function withCrisisVector(parameters: ErrorParameters, x: readonly number[]): ErrorParameters {
  const kinds = Object.keys(parameters.crisisShift) as (keyof ErrorParameters["crisisShift"])[];
  return {
    ...parameters,
    crisisShift: Object.fromEntries(
      kinds.map((kind, i) => [kind, { mean: x[2 * i], deviation: Math.exp(x[2 * i + 1]) }]),
    ) as ErrorParameters["crisisShift"],
  };
}
