import type { PredictedCrisis } from "./predictedDrag";

/** Where a flow stands to a crisis. Between its two ends a rising and a falling speed differ. */
export type CrisisSide = "below" | "between" | "above";

export function sideOfCrisis(reynolds: number, { rising, falling }: PredictedCrisis): CrisisSide {
  if (reynolds < falling) return "below";
  return reynolds > rising ? "above" : "between";
}

const sideWords: Readonly<Record<CrisisSide, string>> = {
  below: "below it",
  between: "inside its hysteresis",
  above: "above it",
};

/** What the drag crises of a shape mean for a test at two Reynolds numbers, in sentences. */
export function crisisWarnings(
  fullScaleReynolds: number,
  tunnelReynolds: number,
  crises: { readonly full: readonly PredictedCrisis[]; readonly tunnel: readonly PredictedCrisis[] },
): string[] {
  const warnings: string[] = [];
  for (const crisis of crises.full) {
    const other = crises.tunnel.find(({ of }) => of === crisis.of);
    if (other === undefined) {
      warnings.push(
        `The ${crisis.of} has a drag crisis at the turbulence of full size and none in reach at that of the tunnel: the test would show another flow.`,
      );
      continue;
    }
    const atFull = sideOfCrisis(fullScaleReynolds, crisis);
    const inTunnel = sideOfCrisis(tunnelReynolds, other);
    if (atFull !== inTunnel) {
      warnings.push(
        `The drag crisis of the ${crisis.of} lies between the two flows: at full size ${sideWords[atFull]}, in the tunnel ${sideWords[inTunnel]}. The test would show another flow.`,
      );
      continue;
    }
    const isNear = [crisis, other].some(
      ({ falling, rising, factor }) => tunnelReynolds > falling / factor && tunnelReynolds < rising * factor,
    );
    if (isNear) {
      warnings.push(
        `The drag crisis of the ${crisis.of} (Re ${crisis.falling.toExponential(2)} to ${crisis.rising.toExponential(2)}, within a factor ${text(crisis.factor)}) may lie on either side: small changes of turbulence or surface decide the drag.`,
      );
    }
  }
  for (const crisis of crises.tunnel) {
    if (crises.full.some(({ of }) => of === crisis.of)) continue;
    warnings.push(
      `The ${crisis.of} has a drag crisis at the tunnel's turbulence and none in reach at that of full size: the test would show another flow.`,
    );
  }
  return warnings;
}

function text(value: number): string {
  return String(Number(value.toPrecision(3)));
}
