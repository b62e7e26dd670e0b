import { type Result, success } from "../../result";
import { type HarmonicSystem, harmonicPotential, harmonicSystem } from "./harmonicSystem";
import type { MeridianCurve } from "./meridianCurve";
import { type MeridianPanels, meridianPanels } from "./meridianPanels";
import type { PotentialHarmonics } from "./surfaceField";

/** The unseparated potential flow about a body of revolution, ready for any stream, tilt and outflow. */
export interface WholeFlow {
  readonly system: HarmonicSystem;
  readonly panels: MeridianPanels;
  /** Potential on the surface, stream included, of a stream of 1 m/s across the axis (m = 1) and along it (m = 0). */
  readonly across: Float64Array;
  readonly along: Float64Array;
  /** m^3. */
  readonly volume: number;
  /** Added mass over displaced mass for motion across and along the axis. */
  readonly addedMassAcross: number;
  readonly addedMassAlong: number;
}

/** What a body is solved with; the standard keeps speeds within 0.5 % and drag within 3 %. */
export interface WholeResolution {
  /** Highest harmonic round the axis. */
  readonly harmonics: number;
  /** Nodes on a panel. */
  readonly order: number;
  /** Panels on a quarter turn of an edge. */
  readonly edgePanels: number;
}

export const standardResolution: WholeResolution = { harmonics: 14, order: 10, edgePanels: 2 };

/**
 * Prepares the flow about a body of revolution in any stream: a stream across the axis is the harmonic 1 alone, one along
 * it the harmonic 0 alone, and any tilt is their sum.
 * Sources: Hess & Smith (1967), Prog. Aeronaut. Sci. 8; added mass by the potential's kinetic energy, Lamb (1932),
 * Hydrodynamics, arts. 44 and 121a.
 * @param curves   pieces of the meridian from the lower pole to the upper one, m
 * @param floorGap m, above 0: a floor across the axis below the lower pole; none when left out
 */
export function wholeFlow(
  curves: readonly MeridianCurve[],
  resolution: WholeResolution = standardResolution,
  floorGap: number | null = null,
): Result<WholeFlow> {
  if (floorGap !== null && !(floorGap > 0)) {
    throw new RangeError(`floor gap is ${floorGap} m; it must be above 0.`);
  }
  const built = meridianPanels(curves, resolution.order, resolution.edgePanels);
  if (!built.ok) return built;
  const panels = built.value;
  const { count, r, z, tangentR, tangentZ, ds } = panels;
  const system = harmonicSystem(panels, resolution.harmonics, floorGap);
  const outward = tangentR.map((value) => -value);
  const disturbedAcross = harmonicPotential(
    system,
    1,
    tangentZ.map((value) => -value),
  );
  const disturbedAlong = harmonicPotential(system, 0, tangentR);
  let [volume, acrossEnergy, alongEnergy] = [0, 0, 0];
  for (let i = 0; i < count; i++) {
    volume += Math.PI * r[i] * r[i] * tangentZ[i] * ds[i];
    acrossEnergy += Math.PI * disturbedAcross[i] * tangentZ[i] * r[i] * ds[i];
    alongEnergy += 2 * Math.PI * disturbedAlong[i] * outward[i] * r[i] * ds[i];
  }
  return success({
    system,
    panels,
    across: disturbedAcross.map((value, i) => value + r[i]),
    along: disturbedAlong.map((value, i) => value + z[i]),
    volume,
    addedMassAcross: acrossEnergy / volume,
    addedMassAlong: alongEnergy / volume,
  });
}

/**
 * Potential of the unseparated stream at a tilt.
 * @param tilt rad, from 0 (stream along the mid-plane, edge-on) to pi / 2 (along the axis towards its upper end, face-on)
 */
export function streamPotential({ across, along, system }: WholeFlow, tilt: number): PotentialHarmonics {
  const [c, s] = [Math.cos(tilt), Math.sin(tilt)];
  return Array.from({ length: system.most + 1 }, (_, m) => {
    if (m === 0) return along.map((value) => s * value);
    if (m === 1) return across.map((value) => c * value);
    return new Float64Array(along.length);
  });
}
