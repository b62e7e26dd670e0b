import { findRoot } from "../../numerics/rootFinder";
import { intervalAt } from "../../numerics/tableLookup";
import type { Contour, ContourBend } from "./contour";

/** Share of the nodes that follows the turning of the contour; the rest is spread evenly along the arc. */
const turningShare = 0.7;
/** A bend of radius r attracts nodes over a distance of about r / sharpness. */
const sharpness = 1.5;
/** Narrowest and widest spread of a bend's nodes as a fraction of the perimeter. */
const narrowestSpread = 1e-4;
const widestSpread = 0.25;

/** Arc length, m, and its derivative by the parameter t, m. */
export type ArcMap = (t: number) => { readonly arc: number; readonly arcRate: number };

/**
 * Density of nodes along a contour: an even share plus, for every bend, a share in proportion to its turning, spread as
 * a periodic Lorentz (Poisson) kernel about as wide as the bend's radius. The kernel is analytic, so the map stays
 * smooth where a line meets an arc, and it looks the same at every corner size: a corner gets as many nodes at
 * r/H = 0.01 as at 0.1. Its integral is in closed form, so arc(t) and its derivative agree to rounding.
 * (Own construction; the kernel and its integral are textbook results on the Poisson kernel of the disc.)
 */
export interface NodeDensity {
  /** Fraction of all nodes per arc length, 1/m. */
  at(arc: number): number;
  /** Fraction of all nodes between the nose and an arc length in [0, perimeter]. */
  upTo(arc: number): number;
}

export function nodeDensity(contour: Contour): NodeDensity {
  const { perimeter } = contour;
  // Mirrored bends at half weight make the density of a symmetric contour symmetric to rounding.
  const bends = contour.mirrorSymmetric ? withMirrorImages(contour.bends, perimeter) : contour.bends;
  const total = bends.reduce((sum, bend) => sum + Math.abs(bend.turning), 0);
  const count = bends.length;
  const place = new Float64Array(count);
  const share = new Float64Array(count);
  const width = new Float64Array(count);
  const offset = new Float64Array(count);
  bends.forEach((bend, i) => {
    const spread = bend.length / (sharpness * Math.max(Math.abs(bend.turning), 1e-12));
    const bounded = Math.min(Math.max(spread / perimeter, narrowestSpread), widestSpread);
    place[i] = (Math.PI * bend.arc) / perimeter;
    share[i] = (turningShare * Math.abs(bend.turning)) / total;
    width[i] = Math.tanh(Math.PI * bounded);
    offset[i] = kernelIntegral(-place[i], width[i]);
  });
  const angle = Math.PI / perimeter;
  return {
    at: (arc) => {
      let sum = (1 - turningShare) / perimeter;
      for (let i = 0; i < count; i++) {
        const cosine = Math.cos(angle * arc - place[i]);
        const q2 = width[i] * width[i];
        sum += (share[i] * width[i]) / (perimeter * (1 - cosine * cosine * (1 - q2)));
      }
      return sum;
    },
    upTo: (arc) => {
      let sum = ((1 - turningShare) * arc) / perimeter;
      for (let i = 0; i < count; i++) sum += share[i] * (kernelIntegral(angle * arc - place[i], width[i]) - offset[i]);
      return sum;
    },
  };
}

function withMirrorImages(bends: readonly ContourBend[], perimeter: number): ContourBend[] {
  return bends.flatMap(({ arc, length, turning }) => [
    { arc, length: length / 2, turning: turning / 2 },
    { arc: perimeter - arc, length: length / 2, turning: turning / 2 },
  ]);
}

/** Integral of the periodic kernel from 0 to angle (half turns of the contour are pi/2), any real angle. */
function kernelIntegral(angle: number, width: number): number {
  const turns = Math.round(angle / Math.PI);
  const rest = angle - turns * Math.PI;
  return turns + Math.atan2(Math.sin(rest), width * Math.cos(rest)) / Math.PI;
}

/** The map from the parameter t in [0, 2 pi] to arc length that has this density of nodes. */
export function gradingMap(contour: Contour): ArcMap {
  const { perimeter, bends } = contour;
  const density = nodeDensity(contour);
  const marks = Float64Array.of(0, ...bends.map((bend) => bend.arc), perimeter);
  const shares = marks.map((arc) => density.upTo(arc));
  return (t) => {
    const target = t / (2 * Math.PI);
    const mark = intervalAt(shares, target);
    const low = marks[mark];
    const high = marks[mark + 1];
    const arc = findRoot((at) => density.upTo(at) - target, low, high, {
      endValues: [Math.min(0, shares[mark] - target), Math.max(0, shares[mark + 1] - target)],
      slope: density.at,
      guess: low + ((high - low) * (target - shares[mark])) / (shares[mark + 1] - shares[mark] || 1),
      tolerance: 1e-15 * perimeter,
    });
    return { arc, arcRate: 1 / (2 * Math.PI * density.at(arc)) };
  };
}
