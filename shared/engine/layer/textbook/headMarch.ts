import { LAYER_NUMBERS } from "../../constants/layerNumbers";
import { headEntrainment, headShapeFactor, shapeFactorOfHead } from "./head";
import { ludwiegTillmannFriction } from "./ludwiegTillmann";

export interface HeadLayer {
  /** theta / D, shape [n]; NaN beyond separation. */
  readonly momentumThickness: Float64Array;
  readonly shapeFactor: Float64Array;
  readonly skinFriction: Float64Array;
  /** Index of the first station with H above the separation value; n when the layer stays attached. */
  readonly separationIndex: number;
}

/** H above which Head's method is taken as separated; 1.8 to 2.4 are all in use (Cebeci & Bradshaw 1977). */
const SEPARATION_SHAPE_FACTOR = LAYER_NUMBERS.headSeparation.value;

/**
 * Marches a turbulent layer on a smooth wall by Head's (1958) method with Ludwieg-Tillmann friction, midpoint rule.
 * @param arc arc length / D, shape [n], increasing
 * @param speed edge speed / U, shape [n], above 0
 * @param reynolds U D / nu
 * @param start theta / D and H at station 0
 */
export function headMarch(
  arc: Readonly<Float64Array>,
  speed: Readonly<Float64Array>,
  reynolds: number,
  start: { readonly momentumThickness: number; readonly shapeFactor: number },
): HeadLayer {
  const count = arc.length;
  if (speed.length !== count)
    throw new RangeError(`arc has ${count} values and speed ${speed.length}; both need the same number.`);
  const momentumThickness = new Float64Array(count).fill(Number.NaN);
  const shapeFactor = new Float64Array(count).fill(Number.NaN);
  const skinFriction = new Float64Array(count).fill(Number.NaN);
  let theta = start.momentumThickness;
  let H1 = headShapeFactor(start.shapeFactor);
  for (let i = 0; i < count; i++) {
    const H = shapeFactorOfHead(H1);
    if (!(H < SEPARATION_SHAPE_FACTOR)) return { momentumThickness, shapeFactor, skinFriction, separationIndex: i };
    momentumThickness[i] = theta;
    shapeFactor[i] = H;
    skinFriction[i] = ludwiegTillmannFriction(H, speed[i] * theta * reynolds);
    if (i === count - 1) break;
    const step = arc[i + 1] - arc[i];
    const gradient = (speed[i + 1] - speed[i]) / step;
    const substeps = Math.max(1, Math.ceil(step / (30 * theta)));
    const h = step / substeps;
    for (let j = 0; j < substeps; j++) {
      const Ue = speed[i] + gradient * h * j;
      const first = headSlopes(theta, H1, Ue, gradient, reynolds);
      const middle = headSlopes(
        theta + (h / 2) * first[0],
        Math.max(3.31, H1 + (h / 2) * first[1]),
        Ue + (gradient * h) / 2,
        gradient,
        reynolds,
      );
      theta += h * middle[0];
      H1 = Math.max(3.31, H1 + h * middle[1]);
    }
  }
  return { momentumThickness, shapeFactor, skinFriction, separationIndex: count };
}

function headSlopes(theta: number, H1: number, Ue: number, gradient: number, reynolds: number): [number, number] {
  const H = shapeFactorOfHead(H1);
  const Cf = ludwiegTillmannFriction(H, Ue * theta * reynolds);
  const thetaSlope = Cf / 2 - (H + 2) * (theta / Ue) * gradient;
  return [thetaSlope, (headEntrainment(H1) - H1 * (thetaSlope + (theta / Ue) * gradient)) / theta];
}
