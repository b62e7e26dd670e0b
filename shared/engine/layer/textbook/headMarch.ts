import { LAYER_NUMBERS } from "../../constants/layerNumbers";
import { layerThickness } from "../cornerSharpness";
import type { StationSink, TurbulentMarch, TurbulentStart } from "../lagEntrainmentMarch";
import type { SideStations } from "../sideStations";
import { headEntrainment, headShapeFactor, shapeFactorOfHead } from "./head";
import { ludwiegTillmannFriction } from "./ludwiegTillmann";

/** H above which Head's method is taken as separated; 1.8 to 2.4 are all in use (Cebeci & Bradshaw 1977). */
const SEPARATION_SHAPE_FACTOR = LAYER_NUMBERS.headSeparation.value;
const SEPARATION_HEAD_SHAPE = headShapeFactor(SEPARATION_SHAPE_FACTOR);
const START_HEAD_SHAPE = headShapeFactor(LAYER_NUMBERS.headStart.value);
/** H1 is held above the pole of the fits at 3.3. */
const LEAST_HEAD_SHAPE = 3.31;
const LARGEST_STEP = 0.01;
const SHORTEST_STEP = 2e-4;
/** Largest change of H1 in a step. */
const LARGEST_SHAPE_CHANGE = 0.05;
/** Rate of fall of H1 per D below which a layer is taken as far from separation. */
const SLOWEST_FALL = 0.05;

/**
 * Marches a turbulent layer on a smooth wall by Head's (1958) method with Ludwieg-Tillmann friction, midpoint rule, to
 * the end of the stations or to separation at H = 2.4, corners or not. It starts with the shape factor of a plate whatever was before.
 * @param stations the side's edge speed
 * @param reynolds U D / nu
 * @param _roughnessRatio not used: the method knows smooth walls only
 * @param _detachmentFriction not used: Ludwieg-Tillmann friction never falls to zero, so the shape factor tells
 * @param sink called at the start and after every step, when the layer itself is wanted
 */
export function marchHead(
  stations: SideStations,
  reynolds: number,
  _roughnessRatio: number,
  start: TurbulentStart,
  _detachmentFriction: number,
  sink?: StationSink,
): TurbulentMarch {
  const { arc, speed, count } = stations;
  const end = arc[count - 1];
  let cell = 0;
  const speedAt = (position: number): number => {
    while (cell < count - 2 && arc[cell + 1] <= position) cell++;
    return speed[cell] + ((position - arc[cell]) / (arc[cell + 1] - arc[cell])) * (speed[cell + 1] - speed[cell]);
  };
  let s = start.arc;
  let theta = start.momentumThickness;
  let H1 = START_HEAD_SHAPE;
  let Ue = speedAt(s);
  const report = (): void => {
    const H = shapeFactorOfHead(H1);
    sink?.(s, theta, H, ludwiegTillmannFriction(H, Ue * theta * reynolds));
  };
  report();
  let fall = 0;
  while (s < end - 1e-12) {
    const here = (speed[cell + 1] - speed[cell]) / (arc[cell + 1] - arc[cell]);
    const slopes = headSlopes(theta, H1, Ue, here, reynolds);
    const h = Math.min(
      end - s,
      LARGEST_STEP,
      Math.max(SHORTEST_STEP, theta, LARGEST_SHAPE_CHANGE / Math.abs(slopes[1])),
    );
    const middleSpeed = speedAt(s + h / 2);
    const nextSpeed = speedAt(s + h);
    const gradient = (nextSpeed - Ue) / h;
    const first = headSlopes(theta, H1, Ue, gradient, reynolds);
    const middle = headSlopes(
      theta + (h / 2) * first[0],
      Math.max(LEAST_HEAD_SHAPE, H1 + (h / 2) * first[1]),
      middleSpeed,
      gradient,
      reynolds,
    );
    const before = H1;
    theta += h * middle[0];
    H1 = Math.max(LEAST_HEAD_SHAPE, H1 + h * middle[1]);
    s += h;
    Ue = nextSpeed;
    if (!(H1 > SEPARATION_HEAD_SHAPE)) {
      s -= h * (1 - (before - SEPARATION_HEAD_SHAPE) / (before - H1));
      H1 = SEPARATION_HEAD_SHAPE;
      report();
      return {
        separationArc: s,
        remainingArc: 0,
        thickness: layerThickness(theta),
        sharpness: 0,
        momentumThickness: theta,
      };
    }
    fall = (before - H1) / h;
    report();
  }
  const remainingArc = (H1 - SEPARATION_HEAD_SHAPE) / Math.max(fall, SLOWEST_FALL);
  return {
    separationArc: null,
    remainingArc,
    thickness: layerThickness(theta),
    sharpness: 0,
    momentumThickness: theta,
  };
}

function headSlopes(theta: number, H1: number, Ue: number, gradient: number, reynolds: number): [number, number] {
  const H = shapeFactorOfHead(H1);
  const Cf = ludwiegTillmannFriction(H, Ue * theta * reynolds);
  const thetaSlope = Cf / 2 - (H + 2) * (theta / Ue) * gradient;
  return [thetaSlope, (headEntrainment(H1) - H1 * (thetaSlope + (theta / Ue) * gradient)) / theta];
}
