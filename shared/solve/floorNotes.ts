/** Gap / D below which the floor reaches into the near wake, and the wake's closure no longer stands for what is measured. */
export const UNRELIABLE_GAP_RATIO = 0.5;

/** Gap / D below which measured wakes of circular cylinders do not shed regularly: Bearman & Zdravkovich (1978), J. Fluid Mech. 89, 33 (from memory). */
const QUIET_WAKE_GAP_RATIO = 0.3;

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

/** One sentence on the vortex-street closure at a gap. */
export function closureNearFloor(gapRatio: number): string {
  if (gapRatio < QUIET_WAKE_GAP_RATIO) {
    return `Gap/D ${text(gapRatio)}: outside, do not rely on it. The base pressure is closed by a vortex street, but below gap/D ${QUIET_WAKE_GAP_RATIO} a floor suppresses regular shedding; the drag is probably too high and the Strouhal number has no meaning.`;
  }
  if (gapRatio < UNRELIABLE_GAP_RATIO) {
    return `Gap/D ${text(gapRatio)}: outside, do not rely on it. The vortex-street closure of the base pressure was not checked this near a floor.`;
  }
  return `Gap/D ${text(gapRatio)}: the vortex-street closure of the base pressure was not checked above a floor.`;
}

function text(gapRatio: number): string {
  return String(Number(gapRatio.toPrecision(3)));
}
