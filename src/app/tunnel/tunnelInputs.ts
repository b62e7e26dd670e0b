import type { TunnelBlockDocument } from "../../../shared/jobs/tunnel/tunnelBlockDocument";

/** What the tunnel view works on: the block of a case file as it is written there. */
export interface TunnelInputs {
  readonly title: string;
  readonly block: TunnelBlockDocument;
}

/** The view before anything is opened: the baseline puck of the Harbour League in an invented tunnel, nothing measured. */
export const startTunnel: TunnelInputs = {
  title: "Tunnel test",
  block: {
    model: {
      puck: {
        name: "Harbour baseline",
        diameterMetres: 0.08,
        thicknessMetres: 0.03,
        edge: { kind: "radius", edgeRadiusMetres: 0.006 },
        face: { kind: "flat" },
        rim: { kind: "plain" },
        core: { kind: "none" },
        coatMaterial: "polyurethane",
      },
      attitude: "edgeOn",
      scale: 1,
      sandGrainRoughnessMetres: 1e-5,
    },
    fullScale: {
      fluid: { kind: "freshWater", temperatureCelsius: 27 },
      speedsMetresPerSecond: [1, 2, 3],
      turbulencePercent: 1,
    },
    facility: {
      fluid: { kind: "dryAir", temperatureCelsius: 20, pressurePascals: 101325 },
      slowestSpeedMetresPerSecond: 8,
      fastestSpeedMetresPerSecond: 45,
      testSectionAreaSquareMetres: 0.16,
      testSectionHeightMetres: 0.4,
      turbulencePercent: 0.5,
      balance: { rangeNewtons: 10, resolutionNewtons: 0.001 },
    },
  },
};
