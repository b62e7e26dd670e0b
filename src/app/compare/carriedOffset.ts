import type { MeasuredCorrection } from "../../../shared/jobs/evidence/carriedCorrection";
import { Notifier } from "../store/notifier";

/** The measured offset that is carried to other views, each of which labels what it changes; null while none is. */
export const carriedOffset = new Notifier<MeasuredCorrection | null>(null);

/** Name under which this browser keeps the measurements. */
export const keptComparisonName = "measurements";
