import type { PreparedShape } from "../../../engine/section/prepareShape";
import { type Result, success } from "../../../result";
import type { PuckSpec } from "../body/puckSpec";
import type { EdgeOnPlace } from "./edgeOnDrag";
import { prepareStrip, profileSection } from "./solvedSections";

/** The profile of a puck at one chord and place, ready for every stream. */
export interface PreparedProfile {
  /** Chord / diameter. */
  readonly chordRatio: number;
  readonly shape: PreparedShape;
  /** Width of the section across the stream over the puck's thickness: 2 where it holds the mirror image as well. */
  readonly heights: 1 | 2;
}

/**
 * Prepares the profile at a chord. Above a floor the section is solved with its mirror image. Lying on the floor, section
 * and image are one body of twice the height, the hollow between their rounded edges filled, its wake parted by the floor
 * as by a splitter plate: far better conditioned than a section in contact with a floor, and symmetric.
 * @param chordRatio chord / diameter, above 0 and at most 1
 */
export function prepareProfile(
  spec: PuckSpec,
  chordRatio: number,
  panelCount: number,
  place: EdgeOnPlace,
): Result<PreparedProfile> {
  const chord = chordRatio * spec.diameterMetres;
  const isLying = place.kind === "floor" && place.gap === 0;
  // The doubled body's edges keep their size.
  const body = isLying ? { ...spec, thicknessMetres: 2 * spec.thicknessMetres } : spec;
  const surroundings = place.kind === "open" ? {} : isLying ? { splitterPlate: true } : { floorGap: place.gap };
  const shape = prepareStrip(profileSection(body, chord), panelCount, surroundings);
  return shape.ok ? success({ chordRatio, shape: shape.value, heights: isLying ? 2 : 1 }) : shape;
}
