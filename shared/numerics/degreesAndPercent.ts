/**
 * Files, results and the page state angles in degrees and shares in per cent; everything inside is in radians and
 * fractions. These are the only way from one to the other. What was read from a file is printed as it was read: of
 * up to 15 digits, none is lost or added on the way there and back.
 */

/** rad */
export function radiansOf(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

/** Degrees. */
export function degreesOf(radians: number): number {
  return asStated((radians * 180) / Math.PI, radians, radiansOf);
}

/** A fraction. */
export function fractionOf(percent: number): number {
  return percent / 100;
}

/** A fraction, or another where nothing was stated. */
export function fractionOr(percent: number | undefined, otherwise: number): number {
  return percent === undefined ? otherwise : fractionOf(percent);
}

/** Per cent. */
export function percentOf(fraction: number): number {
  return asStated(fraction * 100, fraction, fractionOf);
}

/** The value in 15 digits where that is the same inside, so that 0.07 % does not come back as 0.07000000000000001 %. */
function asStated(value: number, inside: number, back: (stated: number) => number): number {
  const short = Number(value.toPrecision(15));
  return back(short) === inside ? short : value;
}
