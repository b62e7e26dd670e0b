import { resolveFluid } from "../../engine/fluid/resolveFluid";
import { fractionOf, fractionOr } from "../../numerics/degreesAndPercent";
import type { Problem } from "../../result";
import { statedUncertainty, type UncertaintyStatement } from "../../statistics/uncertaintyStatement";
import { inlineRows } from "../../tables/tableDocument";
import type { BlockageMethod } from "./blockage";
import { BlockFaults } from "./blockFaults";
import { correlationFaults } from "./correlationFaults";
import { planWishes } from "./planWishes";
import { rangeProblems } from "./rangeProblems";
import { tunnelShape } from "./resolveShape";
import { readRunTable } from "./runTable";
import { readTapTable } from "./tapTable";
import type { TunnelBlockDocument } from "./tunnelBlockDocument";
import type { TapSetting, TunnelCase } from "./tunnelCase";
import { blockageOf } from "./tunnelFacility";
import { modelReference, type TunnelShape } from "./tunnelShape";
import { uncertaintyDefaults } from "./uncertaintyDefaults";
import { readWakeTable } from "./wakeTable";

export type TunnelResolution =
  | { readonly ok: true; readonly value: TunnelCase }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The tunnel block ready to run, or everything that is wrong with it. Fields of problems begin with "tunnel". */
export function resolveTunnel(block: TunnelBlockDocument): TunnelResolution {
  const faults = new BlockFaults();
  const setup = tunnelSetup(block, faults);
  if (setup === null) return { ok: false, problems: faults.problems };
  const { model, fullScale, facility } = setup;
  faults.problems.push(...rangeProblems(model, fullScale, facility));
  reportCorrelations(block, faults);
  const unreadTables: string[] = [];
  const runs = runReadings(block, setup, faults, unreadTables);
  const wake = wakeTraverse(block, faults, unreadTables);
  const taps = tapReadings(block, faults, unreadTables);
  if (model.shape.kind === "puck") refuseSurveys(block, faults);
  if (faults.problems.length > 0) return { ok: false, problems: faults.problems };
  return {
    ok: true,
    value: {
      facilityName: block.facility.name ?? null,
      model,
      reference: modelReference(model),
      fullScale,
      facility,
      plan: planWishes(block.plan),
      runs,
      wake,
      taps,
      unreadTables,
    },
  };
}

type TunnelSetup = Pick<TunnelCase, "model" | "fullScale" | "facility">;

/** Model, full-scale flow and tunnel; null where a fluid or the shape cannot be had. */
function tunnelSetup(block: TunnelBlockDocument, faults: BlockFaults): TunnelSetup | null {
  const { facility, model, fullScale } = block;
  const waterFluid = faults.keep(resolveFluid(fullScale.fluid), "tunnel.fullScale.fluid");
  const tunnelFluid = faults.keep(resolveFluid(facility.fluid), "tunnel.facility.fluid");
  const shape = faults.keep(tunnelShape(block, waterFluid?.density ?? 0), "tunnel.model");
  if (waterFluid === null || tunnelFluid === null || shape === null) return null;
  return {
    model: { shape, scale: model.scale ?? 1, sandGrainRoughness: model.sandGrainRoughnessMetres },
    fullScale: {
      fluid: waterFluid,
      speeds: [...new Set(fullScale.speedsMetresPerSecond)].sort((a, b) => a - b),
      turbulenceIntensity: fractionOf(fullScale.turbulencePercent),
    },
    facility: {
      fluidSpec: facility.fluid,
      fluid: tunnelFluid,
      slowestSpeed: facility.slowestSpeedMetresPerSecond,
      fastestSpeed: facility.fastestSpeedMetresPerSecond,
      testSectionArea: facility.testSectionAreaSquareMetres,
      testSectionHeight: facility.testSectionHeightMetres,
      turbulenceIntensity: fractionOf(facility.turbulencePercent),
      balance: {
        range: facility.balance.rangeNewtons,
        resolution: facility.balance.resolutionNewtons,
        noise: facility.balance.noiseNewtons ?? null,
      },
    },
  };
}

function reportCorrelations({ uncertainty }: TunnelBlockDocument, faults: BlockFaults): void {
  for (const { index, message } of correlationFaults(uncertainty?.correlations ?? [])) {
    faults.add("correlation", `tunnel.uncertainty.correlations${index === null ? "" : `[${index}]`}`, message);
  }
}

/** The rows of a table; null, and its path noted, where the case only names a file. */
function rowsOf(data: Parameters<typeof inlineRows>[0], unreadTables: string[]) {
  const rows = inlineRows(data);
  if (rows === null && typeof data === "string") unreadTables.push(data);
  return rows;
}

/** The runs of the model, its supports and the balance at rest, with how they are reduced. */
function runReadings(
  { runs, blockageCorrection, uncertainty }: TunnelBlockDocument,
  { model, facility }: TunnelSetup,
  faults: BlockFaults,
  unreadTables: string[],
): TunnelCase["runs"] {
  if (runs === undefined) return null;
  const rows = rowsOf(runs.data, unreadTables);
  if (rows === null) return null;
  const { readings, notes, problems } = readRunTable(
    rows,
    runs.columns ?? {},
    runs.decimalMark ?? null,
    runs.leftOutRows,
  );
  faults.addTable(problems, "tunnel.runs");
  if (problems.length === 0 && !readings.some(({ kind }) => kind === "model")) {
    const message = "no row has a run of the model with a force and a speed";
    faults.addTable([{ row: null, column: null, message }], "tunnel.runs");
  }
  return {
    readings,
    notes,
    setting: {
      shape: model.shape,
      reference: modelReference(model),
      fluidSpec: facility.fluidSpec,
      balance: facility.balance,
      blockageRatio: blockageOf(model, facility),
      correction: blockageCorrection ?? standardCorrection(model.shape),
      stated: uncertainty?.stated ?? {},
      correlations: uncertainty?.correlations ?? [],
      repeatability: uncertainty?.repeatability ?? "perPoint",
      coverage: fractionOr(uncertainty?.coveragePercent, uncertaintyDefaults.coverage),
      samples: uncertainty?.samples ?? uncertaintyDefaults.samples,
      seed: uncertainty?.seed ?? uncertaintyDefaults.seed,
    },
  };
}

/** The traverse of the wake. */
function wakeTraverse(
  { wakeSurvey, uncertainty }: TunnelBlockDocument,
  faults: BlockFaults,
  unreadTables: string[],
): TunnelCase["wake"] {
  if (wakeSurvey === undefined) return null;
  const rows = rowsOf(wakeSurvey.data, unreadTables);
  if (rows === null) return null;
  const { traverse, problems } = readWakeTable(rows, wakeSurvey.columns ?? {}, wakeSurvey.decimalMark ?? null);
  faults.addTable(problems, "tunnel.wakeSurvey");
  return {
    traverse: { ...traverse, dynamicPressure: wakeSurvey.dynamicPressurePascals },
    uncertainty: {
      pressurePascals: standard(wakeSurvey.pressureUncertaintyPascals, 1),
      dynamicPressureShare: standard(wakeSurvey.dynamicPressureUncertaintyPercent, fractionOf(1)),
      referenceLengthShare: standard(uncertainty?.stated?.referenceLengthPercent, fractionOf(1)),
    },
  };
}

/** The pressure taps. */
function tapReadings(
  { pressureTaps }: TunnelBlockDocument,
  faults: BlockFaults,
  unreadTables: string[],
): TapSetting | null {
  if (pressureTaps === undefined) return null;
  const rows = rowsOf(pressureTaps.data, unreadTables);
  if (rows === null) return null;
  const { taps, problems, notes } = readTapTable(
    rows,
    pressureTaps.columns ?? {},
    pressureTaps.decimalMark ?? null,
    pressureTaps.dynamicPressurePascals ?? null,
  );
  faults.addTable(problems, "tunnel.pressureTaps");
  return {
    taps,
    notes,
    isMirrored: pressureTaps.isMirrored ?? false,
    reynolds: pressureTaps.reynoldsNumber,
    direction: pressureTaps.direction ?? "rising",
    tapUncertainty: standard(pressureTaps.coefficientUncertainty, 1),
    dynamicPressureShare: standard(pressureTaps.dynamicPressureUncertaintyPercent, fractionOf(1)),
  };
}

/** Wake and taps are those of a section that spans the tunnel. */
function refuseSurveys(block: TunnelBlockDocument, faults: BlockFaults): void {
  for (const key of ["wakeSurvey", "pressureTaps"] as const) {
    if (block[key] === undefined) continue;
    faults.add("tunnel-survey", `tunnel.${key}`, "it needs a section that spans the tunnel; the model is a puck");
  }
}

function standard(statement: UncertaintyStatement | undefined, scale: number): number {
  return statement === undefined ? 0 : statedUncertainty(statement, scale).standardUncertainty;
}

/** The correction that was made for a shape. */
export function standardCorrection(shape: TunnelShape): BlockageMethod {
  if (shape.kind === "puck") return "maskell";
  return shape.isCircle ? "allenVincenti" : "none";
}
