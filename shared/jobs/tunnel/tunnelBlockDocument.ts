import * as z from "zod";
import { requireExactlyOne } from "../../document/exactlyOne";
import { fluidDocument } from "../../document/fluidDocument";
import { lengthBounds, roughnessHeightBounds, speedBounds, turbulenceBounds } from "../../document/limits";
import { quantity, strictRecord, text } from "../../document/quantity";
import { sectionDocument } from "../../document/sectionDocument";
import { fewestSamples, mostSamples } from "../../statistics/monteCarlo";
import { statementKinds } from "../../statistics/uncertaintyStatement";
import { tableKeys } from "../../tables/tableDocument";
import { puckAttitudes, puckDocument } from "../puck/public";
import { blockageMethods } from "./blockage";
import { runOrders } from "./plannedTest";
import { runColumnKeys, runColumnWords } from "./runColumns";
import { statedKeys, statedWords } from "./statedUncertainties";
import { tapColumnKeys, tapColumnWords } from "./tapColumns";
import { wakeColumnKeys, wakeColumnWords } from "./wakeColumns";

function choice<const Words extends readonly string[]>(description: string, words: Words) {
  return z.enum(words, { error: `it must be one of ${words.join(", ")}` }).describe(description);
}

function whole(description: string, from: number, to: number) {
  const rule = `it must be a whole number from ${from} to ${to}`;
  return z.int({ error: rule }).gte(from, rule).lte(to, rule).describe(description);
}

function speeds(description: string) {
  const rule = "it must be a list of 1 to 60 speeds, m/s";
  return z.array(quantity("Speed", speedBounds), { error: rule }).min(1, rule).max(60, rule).describe(description);
}

const statement = (description: string) =>
  strictRecord("an uncertainty", {
    plusMinus: quantity("Plus and minus", { from: 0, to: 1e6, unit: "" }),
    kind: choice(
      "What the plus-minus is: one standard deviation, a 95 % interval, or half the width of a distribution",
      statementKinds,
    ),
    degreesOfFreedom: quantity("Of the statement; endless when left out", { above: 0, to: 1e6, unit: "" }).optional(),
  }).describe(description);

const model = strictRecord("a model", {
  section: sectionDocument.optional().describe("A section that spans the tunnel, at full size, without a sweep"),
  spanMetres: quantity("Span of the section at full size", lengthBounds).optional(),
  puck: puckDocument.optional().describe("A puck, at full size"),
  attitude: choice("How the puck is held; edgeOn when left out", puckAttitudes).optional(),
  scale: quantity("Model size / full size; 1 when left out", { from: 0.01, to: 100, unit: "" }).optional(),
  sandGrainRoughnessMetres: quantity("Equivalent sand-grain roughness at full size", roughnessHeightBounds),
})
  .superRefine((value, context) => {
    requireExactlyOne(value, ["section", "puck"], context);
    if (value.section !== undefined && value.spanMetres === undefined) {
      context.addIssue({
        code: "custom",
        path: ["spanMetres"],
        message: "it is missing; a section needs its span",
        input: value,
      });
    }
  })
  .meta({ oneOf: [{ required: ["section", "spanMetres"] }, { required: ["puck"] }] });

const fullScale = strictRecord("the flow at full size", {
  fluid: fluidDocument,
  speedsMetresPerSecond: speeds("Speeds that the test stands for"),
  turbulencePercent: quantity("Turbulence intensity", turbulenceBounds),
});

const force = (description: string) => quantity(description, { above: 0, to: 1e5, unit: "N" });

const facility = strictRecord("a tunnel", {
  name: text("Name of the tunnel", 200).optional(),
  fluid: fluidDocument.describe("What flows in it; temperature and pressure are used where a run table has none"),
  slowestSpeedMetresPerSecond: quantity("Slowest steady speed", speedBounds),
  fastestSpeedMetresPerSecond: quantity("Fastest speed", speedBounds),
  testSectionAreaSquareMetres: quantity("Area of the test section", { above: 0, to: 1e4, unit: "m²" }),
  testSectionHeightMetres: quantity("Height of the test section, across a section that spans it", lengthBounds),
  turbulencePercent: quantity("Turbulence intensity", turbulenceBounds),
  balance: strictRecord("a balance", {
    rangeNewtons: force("Largest force along the stream"),
    resolutionNewtons: force("Smallest step that it shows"),
    noiseNewtons: force("Standard deviation of one reading").optional(),
  }),
})
  .superRefine((value, context) => {
    if (value.fastestSpeedMetresPerSecond > value.slowestSpeedMetresPerSecond) return;
    const message = "it must be above slowestSpeedMetresPerSecond";
    context.addIssue({ code: "custom", path: ["fastestSpeedMetresPerSecond"], message, input: value });
  })
  .describe("The tunnel and its balance");

const plan = strictRecord("a plan", {
  speedsMetresPerSecond: speeds("Tunnel speeds, in place of spread ones").optional(),
  speedCount: whole("How many speeds are spread, closer near a drag crisis; 10 when left out", 2, 60).optional(),
  wantedHalfWidthPercent: quantity("Wanted half-width of the mean's confidence interval", {
    above: 0,
    to: 100,
    unit: "%",
  }).optional(),
  confidencePercent: quantity("Confidence", { from: 50, to: 99.9, unit: "%" }).optional(),
  mostRepeats: whole("Most repeats of one speed; 12 when left out", 2, 100).optional(),
  bothDirections: z
    .boolean({ error: "it must be true or false" })
    .optional()
    .describe("Rising and falling speeds; true when left out"),
  order: choice(
    '"sweeps" up and down, or single points "randomised" in blocks; sweeps when left out',
    runOrders,
  ).optional(),
  tareRepeats: whole("Sweeps of the support alone; 2 when left out", 0, 20).optional(),
  runsBetweenZeros: whole("Randomised order: runs between two zero readings; 8 when left out", 1, 200).optional(),
  minutesPerRun: quantity("Time of one run; 3 when left out", { above: 0, to: 600, unit: "min" }).optional(),
  seed: whole("Seed of the random order", -2147483648, 2147483647).optional(),
}).describe("What the plan is made by");

const runs = strictRecord("a table of runs", {
  ...tableKeys(runColumnKeys, runColumnWords),
  leftOutRows: z
    .array(whole("Row", 1, 1e6), { error: "it must be a list of row numbers" })
    .optional()
    .describe("Rows, counted as in the file with its header, that are not to be used"),
}).describe("Readings to reduce");

const uncertainty = strictRecord("the uncertainty of a test", {
  stated: strictRecord(
    "stated uncertainties",
    Object.fromEntries(statedKeys.map((key) => [key, statement(statedWords[key]).optional()])) as Record<
      (typeof statedKeys)[number],
      z.ZodOptional<ReturnType<typeof statement>>
    >,
  )
    .optional()
    .describe("What is known of instruments, model and stream; what is left out is taken as exact and said so"),
  correlations: z
    .array(
      strictRecord("a correlation", {
        between: z.tuple([choice("One part", statedKeys), choice("Another part", statedKeys)], {
          error: "it must be a pair of keys of stated uncertainties",
        }),
        coefficient: quantity("Correlation coefficient", { from: -1, to: 1, unit: "" }),
      }),
      { error: "it must be a list of correlations" },
    )
    .max(50, "it must be a list of at most 50 correlations")
    .optional(),
  repeatability: choice("Scatter from each point's own repeats (when left out), or pooled over all", [
    "perPoint",
    "pooled",
  ]).optional(),
  coveragePercent: quantity("Coverage of the expanded uncertainty; 95 when left out", {
    from: 50,
    to: 99.9,
    unit: "%",
  }).optional(),
  samples: z
    .union([z.literal(0), whole("Samples", fewestSamples, mostSamples)], {
      error: `it must be 0, or a whole number from ${fewestSamples} to ${mostSamples}`,
    })
    .optional()
    .describe("Monte Carlo samples of each point, 0 for none; 20000 when left out"),
  seed: whole("Seed of the samples", -2147483648, 2147483647).optional(),
});

const dynamicPressureUncertaintyPercent = statement("Uncertainty of the dynamic pressure, %").optional();
const pressure = quantity("Dynamic pressure of the free stream", { above: 0, to: 1e6, unit: "Pa" });

const wakeSurvey = strictRecord("a wake survey", {
  ...tableKeys(wakeColumnKeys, wakeColumnWords),
  dynamicPressurePascals: pressure,
  pressureUncertaintyPascals: statement("Uncertainty of each pressure, Pa").optional(),
  dynamicPressureUncertaintyPercent,
}).describe("A traverse across the wake of a section");

const pressureTaps = strictRecord("pressure taps", {
  ...tableKeys(tapColumnKeys, tapColumnWords),
  dynamicPressurePascals: pressure.optional(),
  reynoldsNumber: quantity("Reynolds number of the readings, on the width", { from: 1e3, to: 1e8, unit: "" }),
  direction: choice("How the speed was reached; rising when left out", ["rising", "falling"]).optional(),
  coefficientUncertainty: statement("Uncertainty of each pressure coefficient").optional(),
  isMirrored: z
    .boolean({ error: "it must be true or false" })
    .optional()
    .describe(
      "True when the taps stand on one half and the other half has the same pressures; of sections that are their own mirror image",
    ),
  dynamicPressureUncertaintyPercent,
}).describe("Surface pressures of a section");

/** A tunnel test: what it stands for, its plan, its readings and its surveys. */
export const tunnelBlockDocument = strictRecord("a tunnel block", {
  model,
  fullScale,
  facility,
  plan: plan.optional(),
  runs: runs.optional(),
  blockageCorrection: choice(
    "Correction that results are reported with; by the model when left out: Maskell for a puck, Allen & Vincenti for a circle, else none",
    blockageMethods,
  ).optional(),
  uncertainty: uncertainty.optional(),
  wakeSurvey: wakeSurvey.optional(),
  pressureTaps: pressureTaps.optional(),
}).describe("A test in a wind or water tunnel");

export type TunnelBlockDocument = z.infer<typeof tunnelBlockDocument>;
