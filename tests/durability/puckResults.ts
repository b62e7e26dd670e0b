import type { CaseSoFar } from "../../shared/jobs/jobBlock";
import { type PuckResult, type PuckSpec, puckFigures } from "../../shared/jobs/puck/public";
import { examplePuck, unwrap } from "../puck/examplePuck";

/** An invented puck of the Harbour League with a coat of even thickness. */
export const coatedPuck: PuckSpec = {
  ...examplePuck,
  core: { kind: "underCoat", material: "lead", coatThicknessMetres: 0.003 },
};

/** The result of a puck with invented drag areas, cm^2: no flow is solved. */
export function puckResult(puck: PuckSpec, dragSquareCentimetres = 10): PuckResult {
  const band = { low: 0.8, expected: 1, high: 1.3 };
  const drag = (["upright", "flat", "faceOn"] as const).flatMap((orientation) =>
    [1, 2].map((speedMetresPerSecond) => {
      const area = dragSquareCentimetres * 1e-4;
      const areas = { low: band.low * area, expected: band.expected * area, high: band.high * area };
      return {
        turbulencePercent: 1,
        speedMetresPerSecond,
        orientation,
        tiltDegrees: null,
        floorGapMetres: null,
        reynoldsOnDiameter: 1e5,
        dragAreaSquareMetres: areas,
        dragCoefficient: band,
        referenceArea: "invented",
        referenceAreaSquareMetres: area,
        dragNewtons: areas,
        states: [],
        crisisSpeedMetresPerSecond: null,
        twoSectionDragCoefficient: null,
        momentVolumeCubicMetres: null,
        liftAreaSquareMetres: null,
        applicability: "published tables, no flow solved" as const,
      };
    }),
  );
  return {
    name: puck.name,
    role: "candidate",
    note: null,
    puck,
    sandGrainRoughnessMetres: 1e-5,
    figures: unwrap(puckFigures(puck, { fluidDensity: 997 })),
    rules: null,
    drag,
    comparisons: [],
    motions: [],
    notes: [],
    cautions: [],
    problem: null,
  };
}

/** What a case worked out before, by the keys of its results. */
export function soFar(outcomes: Readonly<Record<string, unknown>>): CaseSoFar {
  return {
    rows: [],
    shapes: [],
    sweeps: () => [],
    drags: new Map(),
    leave: () => {},
    leftOf: () => undefined,
    outcomeOf: <Outcome>({ resultKey }: { readonly resultKey: string }) => outcomes[resultKey] as Outcome | undefined,
  };
}
