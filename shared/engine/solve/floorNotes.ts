import { FREE_WAKE_GAP_RATIO, QUIET_WAKE_GAP_RATIO } from "../flow/quietWake";

/** What to keep in mind about every result of a section above a floor, in plain sentences. */
export function floorNotes(gapRatio: number): string[] {
  const notes = [
    "The floor is the section's mirror image: it slips, as for a body moving over a floor at rest in water at rest. A floor that stands still in a stream has a layer of its own, which is not modelled and would lower the drag.",
    closureNearFloor(gapRatio),
  ];
  if (gapRatio === 0) {
    notes.push(
      "The section lies on the floor: no water passes beneath, it separates on the upper side only, and section and image form one body. Its lift says nothing of the water between section and floor; do not use it.",
    );
  }
  return notes;
}

/** One sentence on the closure of the base pressure at a gap. */
export function closureNearFloor(gapRatio: number): string {
  if (gapRatio < QUIET_WAKE_GAP_RATIO) {
    return `Gap/D ${text(gapRatio)}: outside, do not rely on it. Below gap/D ${QUIET_WAKE_GAP_RATIO} a floor keeps the wake from shedding regularly: the base suction is taken at the share that a long splitter plate leaves of it, measured on a cylinder and a plate far from any floor. The Strouhal number has no meaning.`;
  }
  if (gapRatio < FREE_WAKE_GAP_RATIO) {
    return `Gap/D ${text(gapRatio)}: outside, do not rely on it. Between gap/D ${QUIET_WAKE_GAP_RATIO} and ${FREE_WAKE_GAP_RATIO} regular shedding sets in: the base suction is interpolated between that of a quiet and of a shedding wake.`;
  }
  return `Gap/D ${text(gapRatio)}: the vortex-street closure of the base pressure was not checked above a floor.`;
}

function text(gapRatio: number): string {
  return String(Number(gapRatio.toPrecision(3)));
}
