/** Coverage factor of expanded uncertainties here, about 95 % for a normal distribution: JCGM 100:2008, 6.3.3. */
export const coverage = 2;

/** Half-width of a central 90 % interval over the standard deviation of a normal distribution. */
const ninetyPercent = 1.6448536269514722;

/** A prediction with its 90 % band. */
export interface Banded {
  readonly dragCoefficient: number;
  readonly low: number;
  readonly high: number;
}

/** Standard uncertainty of a prediction on the side where a measured value lies: half-width of its 90 % band / 1.645. */
export function predictionUncertainty(predicted: Banded, measured: number): number {
  const halfWidth =
    measured < predicted.dragCoefficient
      ? predicted.dragCoefficient - predicted.low
      : predicted.high - predicted.dragCoefficient;
  return halfWidth / ninetyPercent;
}

/**
 * Normalised error E_n = (x - X) / sqrt(U_x^2 + U_X^2) with expanded uncertainties (k = 2); beyond -1 to 1 the two
 * disagree. Source: ISO/IEC 17043:2010, B.3.1.3 e (from memory), with the prediction in place of the reference value.
 * @param measured            drag coefficient
 * @param standardUncertainty of it, k = 1, 0 or more
 */
export function normalisedError(measured: number, standardUncertainty: number, predicted: Banded): number {
  if (!(standardUncertainty >= 0)) {
    throw new RangeError(`standard uncertainty is ${standardUncertainty}; it must be 0 or more.`);
  }
  const combined = Math.hypot(standardUncertainty, predictionUncertainty(predicted, measured));
  const residual = measured - predicted.dragCoefficient;
  return residual === 0 ? 0 : residual / (coverage * combined);
}

/** Whether the measured value's band (k = 2) and the prediction's 90 % band do not touch. */
export function exceedsBothBands(measured: number, standardUncertainty: number, { low, high }: Banded): boolean {
  const half = coverage * standardUncertainty;
  return measured - half > high || measured + half < low;
}
