import { resolveRange } from "../../document/uncertainRange";
import type { Problem } from "../../result";
import { costBlock } from "../cost/public";
import { durabilityBlock } from "../durability/public";
import type { CaseSurroundings, JobResolution } from "../jobBlock";
import { puckBlock } from "../puck/public";
import { trialBlock } from "../trial/public";
import type { ChoiceBlockDocument } from "./choiceBlockDocument";
import type { ChoiceCriterion, ChoiceJob } from "./choiceJob";
import { criterionCatalogue } from "./criteria";

/** Values of keys that a case leaves out. */
const standard = { draws: 4000, seed: 1 };

type CriterionDocument = ChoiceBlockDocument["criteria"][number];

/** The choice block ready to run, or everything that is wrong with it. Fields of problems begin with "choice". */
export function resolveChoice(block: ChoiceBlockDocument, around: CaseSurroundings): JobResolution<ChoiceJob> {
  const pucks = around.documentOf(puckBlock);
  if (pucks === undefined || around.fluid === null) {
    const message = "choice: it is one between the case's pucks; the case needs the keys puck and fluid";
    return { ok: false, problems: [{ code: "choice", message, field: "choice" }] };
  }
  const resolved = <Document, Job>(job: {
    readonly key: string;
    readonly schema: Parameters<CaseSurroundings["documentOf"]>[0]["schema"];
    resolve(document: Document, around: CaseSurroundings): JobResolution<Job>;
  }): Job | null => {
    const document = around.documentOf(job) as Document | undefined;
    const found = document === undefined ? null : job.resolve(document, around);
    // What is wrong with another job is told by that job.
    return found?.ok === true ? found.value : null;
  };
  const cost = resolved(costBlock);
  const durability = resolved(durabilityBlock);
  const trial = resolved(trialBlock);
  const names = [...pucks.baselines, ...(pucks.candidates ?? [])].map(({ puck }) => puck.name);
  const candidates = block.candidates ?? names;
  const problems: Problem[] = [];
  const add = (field: string, message: string) =>
    problems.push({ code: "choice", message: `${field}: ${message}`, field });
  if (candidates.length < 2) add("choice", "the case has one puck; a choice needs 2 or more");
  candidates.forEach((name, i) => {
    if (!names.includes(name)) {
      add(`choice.candidates[${i}]`, `no puck is called "${name}"; the names are ${names.join(", ")}`);
    }
    if (candidates.indexOf(name) < i) add(`choice.candidates[${i}]`, `"${name}" stands twice`);
  });
  const withSwing = block.criteria.filter(({ swing }) => swing !== undefined).length;
  if (withSwing > 0 && withSwing < block.criteria.length) {
    const i = block.criteria.findIndex(({ swing }) => swing === undefined);
    add(`choice.criteria[${i}].swing`, "it must be given for every criterion or for none, from 0 to 100");
  }
  block.criteria.forEach((document, i) => {
    for (const [key, message] of criterionFaults(document, candidates, { cost, durability, trial })) {
      add(`choice.criteria[${i}]${key === "" ? "" : `.${key}`}`, message);
    }
    const name = document.name ?? criterionCatalogue[document.criterion].label;
    const twice = block.criteria.findIndex(
      (other) => (other.name ?? criterionCatalogue[other.criterion].label) === name,
    );
    if (twice < i) add(`choice.criteria[${i}].name`, `"${name}" stands twice; give each criterion its own name`);
  });
  const hasSwing = block.criteria.some(({ swing }) => swing !== undefined && resolveRange(swing).to > 0);
  if (withSwing > 0 && !hasSwing) add("choice.criteria[0].swing", "swings must not all be 0");
  if (problems.length > 0) return { ok: false, problems };
  const { upright, flat, faceOn } = pucks.play.orientationShares;
  const sum = upright + flat + faceOn;
  const middle = around.speeds[Math.floor(around.speeds.length / 2)] ?? 1;
  return {
    ok: true,
    value: {
      candidates,
      criteria: block.criteria.map((document) => criterionOf(document, middle, { cost, durability })),
      draws: block.draws ?? standard.draws,
      seed: block.seed ?? standard.seed,
      cost,
      durability,
      trial,
      making: {
        tolerances: pucks.making?.tolerances ?? {},
        sizes: pucks.making?.sizes ?? "uniform",
        fluidDensity: around.fluid.density,
        kinematicViscosity: around.fluid.kinematicViscosity,
        userMaterials: pucks.materials ?? [],
        shares: { upright: upright / sum, flat: flat / sum, faceOn: faceOn / sum },
      },
    },
  };
}

type Jobs = Pick<ChoiceJob, "cost" | "durability" | "trial">;

/** What a criterion lacks, each with its key ("" for the criterion as a whole). */
function criterionFaults(
  { criterion, sense, target, worst, best, scale, batchSize, impact }: CriterionDocument,
  candidates: readonly string[],
  { cost, durability, trial }: Jobs,
): [string, string][] {
  const faults: [string, string][] = [];
  const { sense: usual } = criterionCatalogue[criterion];
  if (sense === undefined && usual === null)
    faults.push(["sense", `it must be given for ${criterion}: least, most or near`]);
  if ((sense === "near") !== (target !== undefined)) {
    faults.push(["target", 'it goes with sense "near", and that with it']);
  }
  if (worst !== undefined && worst === best) faults.push(["best", `it is ${best}; it must differ from worst`]);
  if (scale === "log" && [worst, best].some((end) => end !== undefined && !(end > 0))) {
    faults.push(["scale", "log needs worst and best above 0"]);
  }
  if (scale === "log" && (criterion === "liking" || sense === "near")) {
    faults.push(["scale", "log needs values above 0, which this criterion does not have"]);
  }
  if (criterion === "liking") {
    if (trial === null || trial.scores === null) faults.push(["", "liking needs a trial with scores in the case"]);
    else if (!trial.isUnblinded) {
      faults.push(["", "the trial is blind; unblind it (trial.unblinded) before its liking goes into a choice"]);
    } else {
      const missing = candidates.find((name) => !trial.setup.pucks.some((puck) => puck.name === name));
      if (missing !== undefined) faults.push(["", `"${missing}" is not in the trial; choose from candidates that are`]);
    }
  }
  if (criterion === "cost") {
    if (cost === null) faults.push(["", "cost needs the key cost in the case"]);
    else if (batchSize !== undefined && !cost.batchSizes.includes(batchSize)) {
      faults.push([
        "batchSize",
        `it is ${batchSize}; it must be one of cost.batchSizes, ${cost.batchSizes.join(", ")}`,
      ]);
    }
  }
  if (criterion === "durability" && (durability === null || durability.wear === null)) {
    faults.push(["", "durability needs durability.wear in the case"]);
  }
  if (criterion === "coatStrain" || criterion === "floorCare") {
    const known = durability?.impacts.map(({ name }) => name) ?? [];
    if (known.length === 0) faults.push(["", `${criterion} needs durability.impacts in the case`]);
    else if (impact !== undefined && !known.includes(impact)) {
      faults.push(["impact", `no impact is called "${impact}"; the names are ${known.join(", ")}`]);
    }
  }
  return faults;
}

function criterionOf(
  document: CriterionDocument,
  middleSpeed: number,
  { cost, durability }: Pick<Jobs, "cost" | "durability">,
): ChoiceCriterion {
  const { criterion: key, swing } = document;
  const usual = criterionCatalogue[key];
  return {
    key,
    name: document.name ?? usual.label,
    sense: document.sense ?? usual.sense ?? "least",
    target: document.target ?? null,
    worst: document.worst ?? null,
    best: document.best ?? null,
    scale: document.scale ?? usual.scale,
    swing: swing === undefined ? null : resolveRange(swing),
    speed: document.speedMetresPerSecond ?? middleSpeed,
    batchSize: document.batchSize ?? cost?.batchSizes[0] ?? 1,
    impact: document.impact ?? durability?.impacts[0]?.name ?? "",
  };
}
