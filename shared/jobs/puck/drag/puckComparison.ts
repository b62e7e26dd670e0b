import { percentOf } from "../../../numerics/degreesAndPercent";
import { type Result, success } from "../../../result";
import type { PuckCase } from "../puckCase";
import type { PuckComparison, PuckIndex } from "../puckResult";
import { dragVerdict } from "./dragVerdict";
import { type OrientationIndex, orientationIndex } from "./orientationIndex";
import { type ConditionDrags, meanIndex } from "./puckIndex";

/** A puck's drag against one baseline's, at every condition and on average. */
export function comparePucks(
  name: string,
  drags: ConditionDrags,
  baseline: { readonly name: string; readonly drags: ConditionDrags },
  theCase: PuckCase,
): Result<PuckComparison> {
  const { play, stream } = theCase;
  const conditions: PuckIndex[] = [];
  let i = 0;
  for (const turbulenceIntensity of stream.turbulenceIntensities) {
    const turbulencePercent = percentOf(turbulenceIntensity);
    for (const speedMetresPerSecond of play.indexSpeeds) {
      const index = orientationIndex(play.shares, drags[i], baseline.drags[i]);
      if (!index.ok) return index;
      conditions.push({ turbulencePercent, speedMetresPerSecond, ...judged(index.value, name) });
      i++;
    }
  }
  const mean = meanIndex(drags, baseline.drags, theCase);
  if (!mean.ok) return mean;
  const overall = { turbulencePercent: null, speedMetresPerSecond: null, ...judged(mean.value, name) };
  return success({
    baseline: baseline.name,
    overall,
    beatsBaselineByMoreThanBand: overall.verdict === "less",
    conditions,
  });
}

function judged(index: OrientationIndex, name: string) {
  const { kind, sentence } = dragVerdict(index, name);
  return { ...index, verdict: kind, sentence };
}
