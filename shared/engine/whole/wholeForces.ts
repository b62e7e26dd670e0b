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
  const { lost, ...full } = forcesWithCaps(wake, suctionCap === null ? [] : [suctionCap]);
  if (suctionCap === null) return { ...full, lostSuctionDrag: 0 };
  const [{ drag, lift, moment }] = lost;
  return {
    ...full,
    pressureDrag: full.pressureDrag + drag,
    lostSuctionDrag: drag,
    lift: full.lift + lift,
    moment: full.moment + moment,
  };
}

/** What a cap of the suction changes. */
export interface LostSuction {
  readonly drag: number;
  readonly lift: number;
  readonly moment: number;
}

/** Forces with all suction kept, and what each of several caps changes, in one pass over the surface. */
export function forcesWithCaps(
  wake: WholeWake,
  caps: readonly number[],
): Omit<WholeForces, "lostSuctionDrag"> & { readonly lost: readonly LostSuction[] } {
  const { grid } = wake;
  const { flow, tilt, columns, area, normalDownstream, cos, frontalArea, shape } = grid;
  const { r, z, tangentR, tangentZ, count, radius } = flow.panels;
  const [ct, st] = [Math.cos(tilt), Math.sin(tilt)];
  const base = 1 - wake.speedRatio ** 2;
  const square = speedSquares(wake.field, wake);
  let [pressureDrag, baseDrag, lift, moment] = [0, 0, 0, 0];
  const lost = caps.map(() => ({ drag: 0, lift: 0, moment: 0 }));
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < columns; j++) {
      const at = i * columns + j;
      const c = cos[columns + j];
      const [nx, nz] = [tangentZ[i] * c, -tangentR[i]];
      const across = nz * ct - nx * st;
      const turning = (z[i] - shape.centre) * nx - r[i] * c * nz;
      const wet = wettedShare(wake, at);
      const Cp = 1 - square[at];
      const force = -(wet * Cp + (1 - wet) * base) * area[at];
      pressureDrag += force * normalDownstream[at];
      baseDrag -= (1 - wet) * base * area[at] * normalDownstream[at];
      lift += force * across;
      moment += force * turning;
      for (let n = 0; n < caps.length; n++) {
        if (!(Cp < caps[n])) continue;
        const less = -wet * (caps[n] - Cp) * area[at];
        lost[n].drag += less * normalDownstream[at];
        lost[n].lift += less * across;
        lost[n].moment += less * turning;
      }
    }
  }
  const scale = 1 / frontalArea;
  return {
    pressureDrag: pressureDrag * scale,
    baseDrag: baseDrag * scale,
    forebodyDrag: (pressureDrag - baseDrag) * scale,
    lift: lift * scale,
    moment: (moment * scale) / (2 * radius),
    lost: lost.map((each) => ({
      drag: each.drag * scale,
      lift: each.lift * scale,
      moment: (each.moment * scale) / (2 * radius),
    })),
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
