import type { SurfaceField } from "./surfaceField";
import type { WholeWake } from "./wholeWake";

/** Pressure forces on a body, over the dynamic pressure and the shadow area across the stream. */
export interface WholeForces {
  /** Cd of the pressures, in all and by the part of the surface that carries it. */
  readonly pressureDrag: number;
  readonly forebodyDrag: number;
  readonly baseDrag: number;
  /** What the capped suction of the edge costs. */
  readonly lostSuctionDrag: number;
  /** Force across the stream towards the upper end of the axis. */
  readonly lift: number;
  /** Moment about the centre that turns the upper end downstream, also over the equatorial diameter. */
  readonly moment: number;
}

/** The surface's pressure goes over into the base's within this share of the radius about the line. */
const BLEND = 0.03;

/** Cp at the grid's points: 1 - q^2 ahead of the line, the base pressure behind it; no lower than `cap` ahead of it. */
export function pressureMap(wake: WholeWake, cap = Number.NEGATIVE_INFINITY): Float64Array {
  const base = 1 - wake.speedRatio ** 2;
  const square = speedSquares(wake.field, wake);
  return square.map((q2, at) => {
    const wet = wettedShare(wake, at);
    return wet * Math.max(1 - q2, cap) + (1 - wet) * base;
  });
}

/**
 * @param suctionCap lowest Cp ahead of the line where the edge's suction is lost; none when the flow follows the edge
 */
export function wholeForces(wake: WholeWake, suctionCap: number | null = null): WholeForces {
  const full = integrate(wake, pressureMap(wake));
  if (suctionCap === null) return { ...full, lostSuctionDrag: 0 };
  const capped = integrate(wake, pressureMap(wake, suctionCap));
  return {
    ...capped,
    forebodyDrag: full.forebodyDrag,
    lostSuctionDrag: capped.pressureDrag - full.pressureDrag,
  };
}

function integrate(wake: WholeWake, Cp: Float64Array): Omit<WholeForces, "lostSuctionDrag"> {
  const { grid } = wake;
  const { flow, tilt, columns, area, normalDownstream, cos, frontalArea, shape } = grid;
  const { r, z, tangentR, tangentZ, count, radius } = flow.panels;
  const [ct, st] = [Math.cos(tilt), Math.sin(tilt)];
  const base = 1 - wake.speedRatio ** 2;
  let [pressureDrag, baseDrag, lift, moment] = [0, 0, 0, 0];
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < columns; j++) {
      const at = i * columns + j;
      const c = cos[columns + j];
      const [nx, nz] = [tangentZ[i] * c, -tangentR[i]];
      const force = -Cp[at] * area[at];
      pressureDrag += force * normalDownstream[at];
      baseDrag -= (1 - wettedShare(wake, at)) * base * area[at] * normalDownstream[at];
      lift += force * (nz * ct - nx * st);
      moment += force * ((z[i] - shape.centre) * nx - r[i] * c * nz);
    }
  }
  return {
    pressureDrag: pressureDrag / frontalArea,
    baseDrag: baseDrag / frontalArea,
    forebodyDrag: (pressureDrag - baseDrag) / frontalArea,
    lift: lift / frontalArea,
    moment: moment / frontalArea / (2 * radius),
  };
}

function wettedShare({ ahead, grid }: WholeWake, at: number): number {
  return Math.min(1, Math.max(0, ahead[at] / (BLEND * grid.flow.panels.radius) + 0.5));
}

/** (q / U)^2 at the grid's points. */
export function speedSquares(field: SurfaceField, { grid }: Pick<WholeWake, "grid">): Float64Array {
  const { flow, columns, cos, sin } = grid;
  const { count } = flow.panels;
  const square = new Float64Array(count * columns);
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < columns; j++) {
      let [along, round] = [0, 0];
      for (let m = 0; m < field.along.length; m++) {
        along += field.along[m][i] * cos[m * columns + j];
        round += field.round[m][i] * sin[m * columns + j];
      }
      square[i * columns + j] = along * along + round * round;
    }
  }
  return square;
}
