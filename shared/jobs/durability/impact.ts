import { gaussIntegral } from "../../numerics/gaussLegendre";
import { approachForWork, type ForceLaw, forceAt, peakPressureAt, workAt } from "./forceLaw";

/** An impact without losses: what hysteresis of coat and surface takes would only lower force and pressure. */
export interface Impact {
  /** J. */
  readonly energy: number;
  /** N. */
  readonly peakForce: number;
  /** Pa. */
  readonly peakPressure: number;
  /** Greatest approach, m. */
  readonly approach: number;
  /** From touch to leaving, s. */
  readonly contactTime: number;
}

/**
 * A mass that meets a contact at a speed: at the greatest approach all of its energy is work done against the force.
 * Quasi-static, as Johnson (1985), section 11.4: waves in the bodies cross them many times while they touch.
 * @param mass  kg, above 0
 * @param speed m/s, above 0
 */
export function impact(law: ForceLaw, mass: number, speed: number): Impact {
  const energy = (mass * speed * speed) / 2;
  const approach = approachForWork(law, energy);
  // x = approach sin(angle): what is under the integral stays finite where the body turns.
  const perAngle = (angle: number) => {
    const left = 1 - workAt(law, approach * Math.sin(angle)) / energy;
    return (approach * Math.cos(angle)) / (speed * Math.sqrt(left));
  };
  return {
    energy,
    peakForce: forceAt(law, approach),
    peakPressure: peakPressureAt(law, approach),
    approach,
    contactTime: 2 * gaussIntegral(perAngle, 0, Math.PI / 2),
  };
}

/**
 * Mass that an impact beside the centre of mass feels: the body also turns. 1 / m + lever^2 / I.
 * @param lever from the line of impact to the centre of mass, m
 * @param inertia about the centre of mass, across lever and line, kg m^2
 */
export function impactMass(mass: number, lever: number, inertia: number): number {
  return 1 / (1 / mass + (lever * lever) / inertia);
}

/** m/s, after a fall without drag. */
export function fallSpeed(height: number, gravity: number): number {
  return Math.sqrt(2 * gravity * height);
}

/**
 * Speed after sinking from rest, m/s, with one drag area on the whole way: v^2 = vt^2 (1 - exp(-rho A h / m)), the
 * solution of m v dv/dh = W - rho A v^2 / 2 with the added mass in m.
 * @param weight      less buoyancy, N, above 0
 * @param mass        with added mass, kg
 * @param dragArea    drag / dynamic pressure, m^2, above 0
 */
export function sinkSpeed(
  height: number,
  weight: number,
  mass: number,
  dragArea: number,
  fluidDensity: number,
): number {
  const terminalSquared = (2 * weight) / (fluidDensity * dragArea);
  return Math.sqrt(-terminalSquared * Math.expm1((-fluidDensity * dragArea * height) / mass));
}
