import type { Applicability } from "./applicability";
import type { CrisisPlace } from "./crisisSpeed";
import type { JudgedDrag } from "./dragDistribution";

/** How far a drag coefficient can be trusted. */
export interface JudgedDragBand extends JudgedDrag {
  /** True when a drag crisis is so near that the band holds the states on both sides of it. */
  readonly spansCrisis: boolean;
  /** Reynolds numbers of the crisis near by: 5, 50 and 95 %; null where there is none on this branch. */
  readonly crisisReynolds: CrisisPlace | null;
  /** Where the section and its condition stand among those of published values. */
  readonly applicability: Applicability;
  /** One sentence on what was not checked; null inside the checked range. */
  readonly reason: string | null;
}
