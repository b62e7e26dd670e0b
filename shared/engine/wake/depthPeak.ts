import { WAKE_NUMBERS } from "../constants/wakeNumbers";

const DEPTH_OF_PEAK = WAKE_NUMBERS.depthOfPeak.value;
const PEAK_HEIGHT = WAKE_NUMBERS.depthPeakHeight.value;
const PEAK_WIDTH = WAKE_NUMBERS.depthPeakWidth.value;
const NARROWEST_WIDE_WAKE = WAKE_NUMBERS.narrowestWideWake.value;
const WIDE_WAKE = WAKE_NUMBERS.wideWake.value;

/**
 * Factor on the base suction behind a flat front, whose layers spring wide off its edges: the vortices roll up closest to
 * a base that stands 0.6 D behind the edges (Nakaguchi et al. 1968; Bearman & Trueman 1972, Aeronautical Quarterly 23,
 * 229, from memory: Cpb -2.2 against -1.4 of the plate). No concept gives its height and width: both are read off measured
 * drag. Layers that leave rounded or pointed fronts stay narrower and show no peak.
 * @param afterbodyLength L, full length of the section behind its separation points / D, at least 0
 * @param sheddingWidth d' / D of the free wake, above 0
 */
export function depthPeak(afterbodyLength: number, sheddingWidth: number): number {
  const wide = Math.min(1, (sheddingWidth - NARROWEST_WIDE_WAKE) / (WIDE_WAKE - NARROWEST_WIDE_WAKE));
  if (!(afterbodyLength > 0 && wide > 0)) return 1;
  const away = Math.log(afterbodyLength / DEPTH_OF_PEAK) / PEAK_WIDTH;
  return 1 + PEAK_HEIGHT * wide * Math.exp(-away * away);
}
