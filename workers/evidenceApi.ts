import { holdLifeline, type Lifeline } from "./lifeline";
import { type MeasurementWork, measurementWork } from "./measurementWork";
import { type TrialWork, trialWork } from "./trialWork";
import { type TunnelWork, tunnelWork } from "./tunnelWork";

/** What the evidence worker does for the page. Arguments and answers are plain data; failures are values. */
export interface EvidenceApi extends Lifeline, MeasurementWork, TrialWork, TunnelWork {}

export function createEvidenceSolver(): EvidenceApi {
  return { holdLifeline, ...measurementWork(), ...trialWork(), ...tunnelWork() };
}
