import { LAYER_NUMBERS } from "../constants/layerNumbers";
import { interpolateAtPosition } from "../geometry/arcPosition";
import { acrossAt, alongAt, type SideOutline } from "./sideOutline";
import { type SideStations, stationValue } from "./sideStations";

const REATTACHMENT_RISE = LAYER_NUMBERS.reattachmentRise.value;
const CLOSING_RATE = LAYER_NUMBERS.bubbleClosing.value;
const CLOSING_PER_TURBULENCE = LAYER_NUMBERS.bubbleClosingTurbulence.value;
const REATTACHMENT_SPREAD = LAYER_NUMBERS.reattachmentSpread.value;
const FORMATION_LENGTH = LAYER_NUMBERS.formationLength.value;
/** Share of the time below which reattachment counts as none, and above one less this as steady. */
const RARELY = LAYER_NUMBERS.rareReattachment.value;
/** A side ends where the wall has turned away from the stream by this slope, about 14 degrees. */
const TURNED_AWAY = LAYER_NUMBERS.sideEndSlope.value;
/** Speed / U of a bubble below which the momentum theorem says nothing of its height. */
const SLOWEST_BUBBLE = LAYER_NUMBERS.slowestBubble.value;
/** Makes the logistic share the normal distribution's to 1 %. */
const LOGISTIC_SCALE = 1.702;

/** The bubble behind a layer that leaves the front of a long section; lengths / D, speeds / U. */
export interface LongBubble {
  /** From separation to the place where its mean path meets the side, were the side long enough. */
  readonly length: number;
  /** Length of the side behind separation, to where the wall turns away. */
  readonly side: number;
  /** Speed along the bubble; Infinity of a short one, over which the front keeps its suction. */
  readonly speed: number;
  /** Height of the bubble over the side. */
  readonly height: number;
  /** What this side's front loses in suction, on D: as drag, and as force outward from the section's middle line. */
  readonly drag: number;
  readonly lift: number;
}

/**
 * The long bubble on a side whose layer has left the wall at the front.
 *
 * The layer can come back only against a rise of 0.35 of its dynamic pressure, so that the speed along the bubble is the
 * attached speed where it comes back, or the lowest before, over sqrt(0.65), and the front cannot keep more suction than that: where the attached
 * flow has it, the front loses the integral of q^2 - q_b^2 over its height. On a sharp front that leaves Cp -0.8 and a drag
 * of 0.55 to 0.6, which is what blunt plates have. The lost suction sets the bubble's height by the momentum theorem of
 * cavities, Cd = (q_b^2 - 1) 2 h / D (Birkhoff & Zarantonello 1957, Jets, Wakes, and Cavities). While laminar the layer
 * runs straight on along its tangent; after that it closes the gap at a constant rate, faster in a turbulent stream.
 * @param separation fractional station
 * @param laminarLength l1, laminar part of the separated layer / D
 * @param turbulenceIntensity of the stream, a fraction
 */
export function longBubble(
  stations: SideStations,
  outline: SideOutline,
  separation: number,
  laminarLength: number,
  turbulenceIntensity: number,
): LongBubble {
  const { arc, position, count } = stations;
  const first = Math.min(count - 1, Math.floor(separation) + 1);
  let end = first;
  let endAcross = acrossAt(outline, position[first]);
  const departure = acrossAt(outline, stationValue(position, separation));
  let widest = Math.max(departure, endAcross);
  while (end < count - 1) {
    const next = acrossAt(outline, position[end + 1]);
    if (!(next - endAcross > TURNED_AWAY * (arc[end + 1] - arc[end]))) break;
    end++;
    endAcross = next;
    widest = Math.max(widest, next);
  }
  const separationArc = stationValue(arc, separation);
  const risen = departure + laminarLength * wallSlope(stations, outline, separation) - widest;
  const rate = CLOSING_RATE * (1 + CLOSING_PER_TURBULENCE * turbulenceIntensity);
  const endingAt = (station: number): LongBubble => {
    let slowest = Number.POSITIVE_INFINITY;
    for (let i = first; i <= station; i++) slowest = Math.min(slowest, attachedSpeed(stations, outline, i));
    const speed = Math.max(SLOWEST_BUBBLE, slowest / Math.sqrt(1 - REATTACHMENT_RISE));
    const lost = lostSuction(stations, outline, speed, first, end);
    const height = lost.drag / (speed * speed - 1);
    const gap = Math.max(height, risen) + widest - endAcross;
    const side = Math.max(0, arc[end] - separationArc);
    return { length: laminarLength + gap / rate, side, speed, height, drag: lost.drag, lift: lost.lift };
  };
  // The place whose speed gives a bubble that ends there, or the end of a side that is too short.
  let before = first;
  let after = end;
  let bubble = endingAt(end);
  if (bubble.length >= bubble.side) return bubble;
  while (after - before > 1) {
    const middle = (before + after) >> 1;
    const next = endingAt(middle);
    if (next.length > arc[middle] - separationArc) before = middle;
    else {
      after = middle;
      bubble = next;
    }
  }
  return bubble;
}

/**
 * Share of the time for which a layer is back on its side, from none to steady over a band around equal lengths. A side
 * shorter than the length over which the wake's vortices form does not hold it either; fourth powers join the two lengths.
 */
export function reattachedShare(side: number, bubbleLength: number): number {
  const needed = (bubbleLength ** 4 + FORMATION_LENGTH ** 4) ** 0.25;
  const share = 1 / (1 + Math.exp((-LOGISTIC_SCALE * (side / needed - 1)) / REATTACHMENT_SPREAD));
  return Math.min(1, Math.max(0, (share - RARELY) / (1 - 2 * RARELY)));
}

/** Integrals of q^2 - q_b^2 over the front, as far as q stays above q_b: across the stream (drag) and along it (lift). */
function lostSuction(
  { position, speed }: SideStations,
  outline: SideOutline,
  bubbleSpeed: number,
  first: number,
  last: number,
): { drag: number; lift: number } {
  const least = bubbleSpeed * bubbleSpeed;
  let drag = 0;
  let lift = 0;
  let before = Math.max(0, speed[0] * speed[0] - least);
  let acrossBefore = acrossAt(outline, position[0]);
  let alongBefore = alongAt(outline, position[0]);
  for (let i = 1; i <= last; i++) {
    if (i > first && speed[i - 1] <= bubbleSpeed) break;
    const excess = Math.max(0, speed[i] * speed[i] - least);
    if (excess > 0 || before > 0) {
      const across = acrossAt(outline, position[i]);
      const along = alongAt(outline, position[i]);
      drag += ((excess + before) / 2) * (across - acrossBefore);
      lift += ((excess + before) / 2) * (along - alongBefore);
      acrossBefore = across;
      alongBefore = along;
    } else {
      acrossBefore = acrossAt(outline, position[i]);
      alongBefore = alongAt(outline, position[i]);
    }
    before = excess;
  }
  return { drag: Math.max(0, drag), lift };
}

/** Speed / U along the attached side at a station, with a wake behind it that does not widen. */
function attachedSpeed({ speed, position }: SideStations, outline: SideOutline, station: number): number {
  if (outline.parallelWake === null) return speed[station];
  const { velocity, factor } = outline.parallelWake;
  return speed[station] + outline.sign * factor * interpolateAtPosition(velocity, position[station]);
}

/** Slope of the wall against the stream at a fractional station, at least 0: linear between central differences. */
function wallSlope({ arc, position, count }: SideStations, outline: SideOutline, station: number): number {
  const sineAt = (i: number): number =>
    (acrossAt(outline, position[i + 1]) - acrossAt(outline, position[i - 1])) / (arc[i + 1] - arc[i - 1]);
  const i = Math.min(count - 3, Math.max(1, Math.floor(station)));
  const sine = Math.min(0.999, sineAt(i) + (station - i) * (sineAt(i + 1) - sineAt(i)));
  return Math.max(0, sine / Math.sqrt(1 - sine * sine));
}
