/**
 * What is not known of the flow round whole bodies, by name: each is a standard normal that all bodies of a study share,
 * so that what is common to two of them cancels. A measured base pressure or drag conditions the draws; which of these it
 * bears on, a body's response to them says (see wholeDragDraws).
 */
export const WHOLE_ERROR_NAMES = [
  /** Base pressure of all wide wakes. */
  "wideBasePressure",
  /** What a body met across its axis has more of it. */
  "acrossBasePressure",
  /** Base pressure of wakes that narrow behind a late separation. */
  "narrowedBasePressure",
  /** Logarithm of the speed at which the rim's layer turns; above 0 it turns earlier. */
  "rimCrisis",
  /** The same of the edge's bubble. */
  "edgeBubble",
  /** Suction that a front loses whose edge's layer has left. */
  "lostSuction",
  "friction",
  /** Forces between edge-on and face-on. */
  "tilt",
  /** Whether grooves act as a plain wall (below 0) or as sand grains as high as they are deep. */
  "groovedWall",
] as const;

export type WholeErrorName = (typeof WHOLE_ERROR_NAMES)[number];

/** One draw of each. */
export type WholeErrorDraw = Readonly<Record<WholeErrorName, number>>;

/** Many draws of each, shape [n]. */
export type WholeErrorDraws = Readonly<Record<WholeErrorName, Readonly<Float64Array>>>;
