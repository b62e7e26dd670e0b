import { resolveRange } from "../../document/uncertainRange";
import { radiansOf } from "../../numerics/degreesAndPercent";
import { type Problem, problem, type Result, success } from "../../result";
import type { CaseSurroundings, JobResolution } from "../jobBlock";
import { puckBlock } from "../puck/public";
import type { DurabilityBlockDocument } from "./durabilityBlockDocument";
import type { DurabilityJob, ImpactSetup, WearSetup } from "./durabilityJob";
import { type ElasticMaterial, findElastic } from "./elasticMaterials";

/** Values of keys that a case leaves out. A corner that was broken by hand: common practice, no source. */
const standard = {
  draws: 1000,
  seed: 1,
  tiltDegrees: 45,
  sharpEdgeRadius: { from: 0.0003, to: 0.001 },
  shares: { face: 1, rim: 0, edge: 0 },
};

type PuckDocument = Parameters<(typeof puckBlock)["resolve"]>[0];

/** The durability block ready to run, or everything that is wrong with it. Fields of problems begin with "durability". */
export function resolveDurability(
  block: DurabilityBlockDocument,
  { fluid, documentOf }: Pick<CaseSurroundings, "fluid" | "documentOf">,
): JobResolution<DurabilityJob> {
  const pucks = documentOf(puckBlock);
  if (pucks === undefined || fluid === null) {
    const message = "durability: it is that of the case's pucks; the case needs the keys puck and fluid";
    return { ok: false, problems: [{ code: "durability", message, field: "durability" }] };
  }
  const elastic: ElasticMaterial[] = (block.materials ?? []).map(({ name, youngsModulusPascals, ...rest }) => ({
    name,
    youngsModulus: resolveRange(youngsModulusPascals),
    ...rest,
  }));
  const problems: Problem[] = materialProblems(pucks, elastic, (block.impacts ?? []).length > 0);
  const impacts: ImpactSetup[] = [];
  for (const [i, one] of (block.impacts ?? []).entries()) {
    const { name, contact, medium, speedMetresPerSecond, dropHeightMetres } = one;
    const onto = findElastic(one.onto, elastic, `durability.impacts[${i}].onto`);
    if (!onto.ok) {
      problems.push(onto.problem);
      continue;
    }
    if (impacts.some((other) => other.name === name)) {
      const field = `durability.impacts[${i}].name`;
      problems.push({ code: "impact-name", message: `${field}: "${name}" stands twice; each needs its own`, field });
    }
    impacts.push({
      name,
      onto: onto.value,
      contact,
      medium,
      tilt: radiansOf(one.tiltDegrees ?? standard.tiltDegrees),
      start:
        speedMetresPerSecond === undefined
          ? { kind: "drop", range: resolveRange(dropHeightMetres ?? 1) }
          : { kind: "speed", range: resolveRange(speedMetresPerSecond) },
    });
  }
  const wear = wearSetup(block, pucks);
  if (!wear.ok) problems.push(wear.problem);
  if (problems.length > 0 || !wear.ok) return { ok: false, problems };
  return {
    ok: true,
    value: {
      fluid,
      elastic,
      userMaterials: pucks.materials ?? [],
      impacts,
      wear: wear.value,
      sharpEdgeRadius: resolveRange(block.sharpEdgeRadiusMetres ?? standard.sharpEdgeRadius),
      draws: block.draws ?? standard.draws,
      seed: block.seed ?? standard.seed,
      puckCount: pucks.baselines.length + (pucks.candidates ?? []).length,
    },
  };
}

/** Every material of a puck that is hit needs a stiffness. */
function materialProblems(pucks: PuckDocument, elastic: readonly ElasticMaterial[], areHit: boolean): Problem[] {
  if (!areHit) return [];
  const names = [...pucks.baselines, ...(pucks.candidates ?? [])].flatMap(({ puck }) =>
    puck.core.kind === "none" ? [puck.coatMaterial] : [puck.coatMaterial, puck.core.material],
  );
  return [...new Set(names)].flatMap((name) => {
    const found = findElastic(name, elastic, "durability.materials");
    return found.ok ? [] : [found.problem];
  });
}

function wearSetup({ wear }: DurabilityBlockDocument, { wantedMass }: PuckDocument): Result<WearSetup | null> {
  if (wear === undefined) return success(null);
  const leastCover = wear.leastCoverMetres ?? wantedMass?.leastCoverMetres;
  if (leastCover === undefined) {
    const field = "durability.wear.leastCoverMetres";
    return problem("wear", `${field}: it must be given where the pucks have no wantedMass, from 0 to 1 m`, field);
  }
  const { face, rim, edge } = wear.slidingShares ?? standard.shares;
  const sum = face + rim + edge;
  return success({
    wearCoefficient: resolveRange(wear.wearCoefficientCubicMetresPerNewtonMetre),
    slidingPerHour: resolveRange(wear.slidingMetresPerHour),
    press: resolveRange(wear.pressNewtons ?? 0),
    shares: { face: face / sum, rim: rim / sum, edge: edge / sum },
    leastCover,
    playedHours: wear.playedHours,
  });
}
