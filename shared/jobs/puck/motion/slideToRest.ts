import { problem, type Result, success } from "../../../result";
import { integrateMotion } from "./integrate";
import { checkBody, type DragAreaAtSpeed, type MotionBody, type MotionSampling } from "./motionBody";
import { sampleTrajectory, type Trajectory } from "./trajectory";

/**
 * A puck pushed along a level floor: (m + added mass edge-on) dv/dt = -rho A(v) v^2 / 2 - mu W, until it rests.
 * It does not spin, tip or leave the floor.
 * @param startSpeed          m/s, 0 or more
 * @param frictionCoefficient mu on the weight in water, 0 or more; with 0 it never quite rests
 * @returns ended "rest" or "time"
 */
export function slideToRest(
  body: MotionBody,
  dragArea: DragAreaAtSpeed,
  frictionCoefficient: number,
  startSpeed: number,
  sampling: MotionSampling,
): Result<Trajectory> {
  const checked = checkBody(body, sampling);
  if (!checked.ok) return checked;
  if (!(startSpeed >= 0)) return problem("motion", `start speed is ${startSpeed} m/s; it must be 0 or more`, "speed");
  if (!(frictionCoefficient >= 0)) {
    return problem("motion", `friction coefficient is ${frictionCoefficient}; it must be 0 or more`, "friction");
  }
  if (!(body.weightInFluid >= 0)) return problem("motion", "the puck floats: it does not slide on the floor", "weight");
  const inertia = body.mass + body.addedMassEdgeOn;
  const friction = frictionCoefficient * body.weightInFluid;
  const drag = (v: number) => 0.5 * body.fluidDensity * dragArea(Math.abs(v)) * v * Math.abs(v);
  const motion = integrateMotion(
    (_time, [, v], rates) => {
      rates[0] = v;
      rates[1] = -(drag(v) + friction) / inertia;
      rates[2] = drag(v) * v;
      rates[3] = friction * v;
    },
    [0, startSpeed, 0, 0],
    sampling.duration,
    [{ name: "rest", value: ([, v]) => v }],
  );
  if (!motion.ok) return motion;
  const [, v, dragLoss, frictionLoss] = motion.value.stateAt(motion.value.end);
  const reading = { distance: ([x]: readonly number[]) => x, height: () => 0, speed: speedOf };
  return success(
    sampleTrajectory(motion.value, reading, sampling.samples, sampling.markDistances ?? [], {
      kineticAtStart: 0.5 * inertia * startSpeed ** 2,
      kineticAtEnd: 0.5 * inertia * v * v,
      weightWork: 0,
      dragLoss,
      frictionLoss,
    }),
  );
}

function speedOf([, v]: readonly number[]): number {
  return Math.max(v, 0);
}
