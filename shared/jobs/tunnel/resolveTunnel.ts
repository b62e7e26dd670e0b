import { resolveFluid } from "../../engine/fluid/resolveFluid";
import { fractionOf, fractionOr } from "../../numerics/degreesAndPercent";
import type { Problem, Result } from "../../result";
import { statedUncertainty, type UncertaintyStatement } from "../../statistics/uncertaintyStatement";
import { type TableProblem, tableProblemText } from "../../tables/dataTable";
import { inlineRows } from "../../tables/tableDocument";
import type { BlockageMethod } from "./blockage";
import { correlationFaults } from "./correlationFaults";
import { planWishes } from "./planWishes";
import { rangeProblems } from "./rangeProblems";
import { tunnelShape } from "./resolveShape";
import { readRunTable } from "./runTable";
import type { FullScaleFlow } from "./similarity";
import { readTapTable } from "./tapTable";
import type { TunnelBlockDocument } from "./tunnelBlockDocument";
import type { TapSetting, TunnelCase } from "./tunnelCase";
import { blockageOf, type TunnelFacility } from "./tunnelFacility";
import { modelReference, type TunnelModel, type TunnelShape } from "./tunnelShape";
import { uncertaintyDefaults } from "./uncertaintyDefaults";
import { readWakeTable } from "./wakeTable";

export type TunnelResolution =
  | { readonly ok: true; readonly value: TunnelCase }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The tunnel block ready to run, or everything that is wrong with it. Fields of problems begin with "tunnel". */
export function resolveTunnel(block: TunnelBlockDocument): TunnelResolution {
  const problems: Problem[] = [];
  const keep = <T>(result: Result<T>, field: string): T | null => {
    if (result.ok) return result.value;
    const place = result.problem.field === undefined ? field : `${field}.${result.problem.field}`;
    problems.push({ ...result.problem, message: `${place}: ${result.problem.message}`, field: place });
    return null;
  };
  const waterFluid = keep(resolveFluid(block.fullScale.fluid), "tunnel.fullScale.fluid");
  const tunnelFluid = keep(resolveFluid(block.facility.fluid), "tunnel.facility.fluid");
  const shape = keep(tunnelShape(block, waterFluid?.density ?? 0), "tunnel.model");
  if (waterFluid === null || tunnelFluid === null || shape === null) return { ok: false, problems };
  const model: TunnelModel = {
    shape,
    scale: block.model.scale ?? 1,
    sandGrainRoughness: block.model.sandGrainRoughnessMetres,
  };
  const fullScale: FullScaleFlow = {
    fluid: waterFluid,
    speeds: [...new Set(block.fullScale.speedsMetresPerSecond)].sort((a, b) => a - b),
    turbulenceIntensity: fractionOf(block.fullScale.turbulencePercent),
  };
  const { facility: stated } = block;
  const facility: TunnelFacility = {
    fluidSpec: stated.fluid,
    fluid: tunnelFluid,
    slowestSpeed: stated.slowestSpeedMetresPerSecond,
    fastestSpeed: stated.fastestSpeedMetresPerSecond,
    testSectionArea: stated.testSectionAreaSquareMetres,
    testSectionHeight: stated.testSectionHeightMetres,
    turbulenceIntensity: fractionOf(stated.turbulencePercent),
    balance: {
      range: stated.balance.rangeNewtons,
      resolution: stated.balance.resolutionNewtons,
      noise: stated.balance.noiseNewtons ?? null,
    },
  };
  problems.push(...rangeProblems(model, fullScale, facility));
  for (const { index, message } of correlationFaults(block.uncertainty?.correlations ?? [])) {
    const field = `tunnel.uncertainty.correlations${index === null ? "" : `[${index}]`}`;
    problems.push({ code: "correlation", message: `${field}: ${message}`, field });
  }
  const unreadTables: string[] = [];
  const table = (data: Parameters<typeof inlineRows>[0]) => {
    const rows = inlineRows(data);
    if (rows === null && typeof data === "string") unreadTables.push(data);
    return rows;
  };
  const report = (found: readonly TableProblem[], field: string) => {
    problems.push(...found.map((each) => ({ code: "table", message: `${field}: ${tableProblemText(each)}`, field })));
  };

  let runs: TunnelCase["runs"] = null;
  const runRows = block.runs === undefined ? null : table(block.runs.data);
  if (block.runs !== undefined && runRows !== null) {
    const read = readRunTable(
      runRows,
      block.runs.columns ?? {},
      block.runs.decimalMark ?? null,
      block.runs.leftOutRows,
    );
    report(read.problems, "tunnel.runs");
    runs = {
      readings: read.readings,
      notes: read.notes,
      setting: {
        shape,
        reference: modelReference(model),
        fluidSpec: stated.fluid,
        balance: facility.balance,
        blockageRatio: blockageOf(model, facility),
        correction: block.blockageCorrection ?? standardCorrection(shape),
        stated: block.uncertainty?.stated ?? {},
        correlations: block.uncertainty?.correlations ?? [],
        repeatability: block.uncertainty?.repeatability ?? "perPoint",
        coverage: fractionOr(block.uncertainty?.coveragePercent, uncertaintyDefaults.coverage),
        samples: block.uncertainty?.samples ?? uncertaintyDefaults.samples,
        seed: block.uncertainty?.seed ?? uncertaintyDefaults.seed,
      },
    };
    if (read.problems.length === 0 && !read.readings.some(({ kind }) => kind === "model")) {
      report(
        [{ row: null, column: null, message: "no row has a run of the model with a force and a speed" }],
        "tunnel.runs",
      );
    }
  }

  let wake: TunnelCase["wake"] = null;
  const { wakeSurvey, pressureTaps } = block;
  const wakeRows = wakeSurvey === undefined ? null : table(wakeSurvey.data);
  if (wakeSurvey !== undefined && wakeRows !== null) {
    const read = readWakeTable(wakeRows, wakeSurvey.columns ?? {}, wakeSurvey.decimalMark ?? null);
    report(read.problems, "tunnel.wakeSurvey");
    wake = {
      traverse: { ...read.traverse, dynamicPressure: wakeSurvey.dynamicPressurePascals },
      uncertainty: {
        pressurePascals: standard(wakeSurvey.pressureUncertaintyPascals, 1),
        dynamicPressureShare: standard(wakeSurvey.dynamicPressureUncertaintyPercent, 0.01),
        referenceLengthShare: standard(block.uncertainty?.stated?.referenceLengthPercent, 0.01),
      },
    };
  }

  let taps: TapSetting | null = null;
  const tapRows = pressureTaps === undefined ? null : table(pressureTaps.data);
  if (pressureTaps !== undefined && tapRows !== null) {
    const read = readTapTable(
      tapRows,
      pressureTaps.columns ?? {},
      pressureTaps.decimalMark ?? null,
      pressureTaps.dynamicPressurePascals ?? null,
    );
    report(read.problems, "tunnel.pressureTaps");
    taps = {
      taps: read.taps,
      reynolds: pressureTaps.reynoldsNumber,
      direction: pressureTaps.direction ?? "rising",
      tapUncertainty: standard(pressureTaps.coefficientUncertainty, 1),
      dynamicPressureShare: standard(pressureTaps.dynamicPressureUncertaintyPercent, 0.01),
    };
  }
  if (shape.kind === "puck") {
    for (const key of ["wakeSurvey", "pressureTaps"] as const) {
      if (block[key] === undefined) continue;
      const message = `tunnel.${key}: it needs a section that spans the tunnel; the model is a puck`;
      problems.push({ code: "tunnel-survey", message, field: `tunnel.${key}` });
    }
  }
  if (problems.length > 0) return { ok: false, problems };
  return {
    ok: true,
    value: {
      facilityName: stated.name ?? null,
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

function standard(statement: UncertaintyStatement | undefined, scale: number): number {
  return statement === undefined ? 0 : statedUncertainty(statement, scale).standardUncertainty;
}

/** The correction that was made for a shape. */
export function standardCorrection(shape: TunnelShape): BlockageMethod {
  if (shape.kind === "puck") return "maskell";
  return shape.isCircle ? "allenVincenti" : "none";
}
