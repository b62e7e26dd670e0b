import type { PuckSpec } from "../../../shared/jobs/puck/body/puckSpec";
import { wetTileFriction } from "../../../shared/jobs/puck/motion/slidingFriction";
import { nothingToChoose } from "./chooseInputs";
import { firstMotions } from "./motionInputs";
import type { PuckInputs } from "./puckInputs";

/** The baseline of the invented Harbour League: 80 x 30 mm, edge radius 6 mm, lead under a coat of polyurethane. */
const demoBaseline: PuckSpec = {
  name: "Harbour League baseline",
  diameterMetres: 0.08,
  thicknessMetres: 0.03,
  edge: { kind: "radius", edgeRadiusMetres: 0.006 },
  face: { kind: "flat" },
  rim: { kind: "plain" },
  core: { kind: "underCoat", material: "lead", coatThicknessMetres: 0.00286 },
  coatMaterial: "polyurethane",
};

/** What the view starts from until a case is opened. */
export const demoPuck: PuckInputs = {
  title: "Harbour League candidate puck",
  candidate: {
    spec: {
      ...demoBaseline,
      name: "Candidate",
      diameterMetres: 0.082,
      thicknessMetres: 0.028,
      edge: { kind: "radius", edgeRadiusMetres: 0.009 },
      core: { kind: "underCoat", material: "lead", coatThicknessMetres: 0.00234 },
    },
    sandGrainRoughness: 20e-6,
  },
  baseline: { spec: demoBaseline, sandGrainRoughness: 20e-6 },
  userMaterials: [],
  play: {
    fluid: { kind: "freshWater", temperatureCelsius: 27 },
    speeds: [1, 1.5, 2, 2.5, 3, 3.5, 4, 5, 6],
    turbulenceIntensities: [0.01],
    shares: { upright: 1, flat: 1, faceOn: 1 },
    flatPlace: "floor",
    flatGap: 0,
    sweptGaps: [],
    indexSpeeds: null,
    tilts: [Math.PI / 12, Math.PI / 4],
    frictionCoefficient: wetTileFriction.expected,
    frictionSpread: wetTileFriction.expected - wetTileFriction.low,
    sectionError: null,
    panelCount: null,
    chordRatios: null,
  },
  choose: nothingToChoose,
  rules: null,
  tolerances: { diameterMetres: 3e-4, thicknessMetres: 3e-4, edgeRadiusMetres: 5e-4 },
  sampling: { sizes: "uniform", samples: 2000, seed: 1 },
  massTarget: { massKilograms: 1.23, freeDimension: "coatThickness", leastCoverMetres: 0.002 },
  motions: Object.values(firstMotions),
  tradeoff: {
    variables: [
      { key: "diameterMetres", lowest: 0.077, highest: 0.083 },
      { key: "thicknessMetres", lowest: 0.027, highest: 0.033 },
      { key: "edgeRadiusMetres", lowest: 0.004, highest: 0.012 },
    ],
    goals: [
      { key: "dragIndex", sense: "least" },
      { key: "momentOfInertiaAxisKilogramSquareMetres", sense: "most" },
    ],
    method: "paretoSearch",
    populationSize: 16,
    generations: 6,
    points: 60,
    levels: 4,
    seed: 1,
    madeOff: 5e-4,
  },
};
