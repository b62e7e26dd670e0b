import { measuredFromTunnel } from "../../../shared/jobs/evidence/fromTunnel";
import type { TunnelReduction } from "../../../shared/jobs/tunnel/reducedTest";
import { Notifier } from "../store/notifier";
import type { MeasuredSetInputs } from "./compareInputs";
import type { MeasuredThing } from "./designChoices";

/** What a reduced tunnel test says of itself, for a measurement set. */
export interface TunnelTestFacts {
  readonly name: string;
  readonly source: string;
  readonly thing: MeasuredThing;
  readonly turbulencePercent?: number;
  readonly sandGrainRoughnessMetres?: number;
}

/** A reduced test that the view of tunnel tests offers for comparison; null without one. */
export const tunnelOffer = new Notifier<MeasuredSetInputs | null>(null);

/** A reduced tunnel test as a measurement set; blockage counts as corrected unless the test reports none. */
export function setOfReduction(
  reduction: Pick<TunnelReduction, "points" | "blockageRatio" | "correction">,
  { thing, ...facts }: TunnelTestFacts,
): MeasuredSetInputs {
  return {
    ...facts,
    ...thing,
    kind: "tunnelTest",
    blockageRatio: reduction.blockageRatio,
    blockageCorrected: reduction.correction !== "none",
    points: measuredFromTunnel(reduction).map(({ reynolds, dragCoefficient, standardUncertainty, direction }) => ({
      reynoldsNumber: reynolds,
      dragCoefficient,
      ...(standardUncertainty === null ? {} : { standardUncertainty }),
      ...(direction === null ? {} : { direction }),
    })),
  };
}
