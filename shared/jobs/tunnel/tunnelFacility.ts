import type { FluidProperties, FluidSpec } from "../../engine/fluid/fluidSpec";
import { modelReference, type TunnelModel } from "./tunnelShape";

/** A tunnel, air or water, and its balance. */
export interface TunnelFacility {
  readonly fluidSpec: FluidSpec;
  readonly fluid: FluidProperties;
  /** m/s. */
  readonly slowestSpeed: number;
  readonly fastestSpeed: number;
  /** m^2. */
  readonly testSectionArea: number;
  /** Across a section that spans the tunnel, m. */
  readonly testSectionHeight: number;
  /** A fraction. */
  readonly turbulenceIntensity: number;
  readonly balance: TunnelBalance;
}

export interface TunnelBalance {
  /** Largest drag it takes, N. */
  readonly range: number;
  /** Smallest step that it shows, N. */
  readonly resolution: number;
  /** Standard deviation of one reading, N; null when not known. */
  readonly noise: number | null;
}

/** Frontal area of the model / area of the test section; for a section that spans it, width / height. */
export function blockageOf(
  model: TunnelModel,
  facility: Pick<TunnelFacility, "testSectionArea" | "testSectionHeight">,
): number {
  const { length, area } = modelReference(model);
  return model.shape.kind === "section" ? length / facility.testSectionHeight : area / facility.testSectionArea;
}
