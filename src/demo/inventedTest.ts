import { allenVincenti, type BlockageMethod, maskell, maskellFactor } from "../../shared/jobs/tunnel/blockage";
import type { TunnelPlan } from "../../shared/jobs/tunnel/plannedTest";
import type { SpeedDirection } from "../../shared/jobs/tunnel/predictedDrag";
import { runColumnKeys } from "../../shared/jobs/tunnel/runColumns";
import type { StatedKey, StatedUncertainties } from "../../shared/jobs/tunnel/statedUncertainties";
import type { TunnelCase } from "../../shared/jobs/tunnel/tunnelCase";
import { fluidAtReading } from "../../shared/jobs/tunnel/tunnelFluid";
import type { RandomDraws } from "../../shared/statistics/randomDraws";
import { standardDraw } from "../../shared/statistics/standardDraw";
import { statedUncertainty } from "../../shared/statistics/uncertaintyStatement";
import type { DataCell, DataTable } from "../../shared/tables/dataTable";

/** A drag curve that is known because it is invented: two levels and a smooth step between them. */
export interface InventedDrag {
  readonly below: number;
  readonly above: number;
  /** Reynolds numbers of the step, with a rising and a falling speed. */
  readonly rising: number;
  readonly falling: number;
  /** Width of the step as a logarithm. */
  readonly width: number;
}

/** What an invented test is like. Its errors are drawn from the uncertainties that the case states. */
export interface InventedTest {
  readonly drag: InventedDrag;
  /** The walls raise the speed at the model by this method, inverted. */
  readonly blockage: BlockageMethod;
  /** Drag area of the support, m^2. */
  readonly supportDragArea: number;
  /** Standard deviation of one reading, N. */
  readonly noise: number;
  /** Zero of the balance: at the start, N, and its drift, N/min. */
  readonly zero: number;
  readonly zeroDrift: number;
  /** Temperature at the start, °C, and its rise, K/min. */
  readonly temperature: number;
  readonly warming: number;
  /** Pa. */
  readonly staticPressure: number;
  /** %; null for a tunnel of water. */
  readonly humidity: number | null;
  readonly minutesPerRun: number;
}

/** True drag coefficient in an unbounded stream. */
export function inventedDrag(drag: InventedDrag, reynolds: number, direction: SpeedDirection): number {
  const step = Math.log(reynolds / drag[direction]) / drag.width;
  return drag.above + (drag.below - drag.above) / (1 + Math.exp(step));
}

/** What the wall does: the drag coefficient on the measured dynamic pressure. */
function confined(
  test: InventedTest,
  theCase: TunnelCase,
  reynolds: number,
  direction: SpeedDirection,
  blockageRatio: number,
) {
  const factor = theCase.model.shape.kind === "section" ? maskellFactor.twoDimensional : maskellFactor.finite;
  let measured = inventedDrag(test.drag, reynolds, direction);
  // The true coefficient is that of the corrected Reynolds number: found by repetition.
  for (let i = 0; i < 60; i++) {
    const corrected =
      test.blockage === "maskell"
        ? maskell(measured, blockageRatio, factor)
        : test.blockage === "allenVincenti"
          ? allenVincenti(measured, blockageRatio)
          : { dragCoefficient: measured, speedRatio: 1 };
    measured *= inventedDrag(test.drag, reynolds * corrected.speedRatio, direction) / corrected.dragCoefficient;
  }
  return measured;
}

/** Errors that all readings of a test share, as they came out. */
type CommonErrors = Readonly<Partial<Record<StatedKey, number>>>;

function drawErrors(stated: StatedUncertainties, draws: RandomDraws): CommonErrors {
  return Object.fromEntries(
    Object.entries(stated).map(([key, statement]) => {
      const { standardUncertainty, distribution, degreesOfFreedom } = statedUncertainty(statement);
      // What is stated with few degrees of freedom was estimated that badly: the true spread is normal.
      const drawn = distribution === "studentT" ? draws.normal() : standardDraw(draws, distribution, degreesOfFreedom);
      return [key, standardUncertainty * drawn];
    }),
  );
}

/**
 * A run table as an instrument would have written it: the plan carried out on a body of known drag, with one draw of
 * every error that the case states and with noise of each reading.
 * @param blockageRatio of the model in the tunnel
 */
export function inventRunTable(
  test: InventedTest,
  theCase: TunnelCase,
  plan: TunnelPlan,
  stated: StatedUncertainties,
  blockageRatio: number,
  draws: RandomDraws,
): DataTable {
  const errors = drawErrors(stated, draws);
  const percent = (key: StatedKey) => 1 + (errors[key] ?? 0) / 100;
  const { reference, facility } = theCase;
  const area = reference.area * percent("referenceAreaPercent");
  const length = reference.length * percent("referenceLengthPercent");
  const { resolution } = facility.balance;
  const rounded = (value: number, step: number) => Number((Math.round(value / step) * step).toFixed(6));
  const rows = plan.runs.map((run, i): DataCell[] => {
    const minutes = i * test.minutesPerRun;
    const temperature = test.temperature + test.warming * minutes;
    const truth = fluidAtReading(facility.fluidSpec, {
      temperature: temperature + (errors.temperatureCelsius ?? 0),
      staticPressure: test.staticPressure + (errors.staticPressurePascals ?? 0),
      humidity: test.humidity === null ? null : test.humidity + (errors.relativeHumidityPercent ?? 0),
    });
    if (!truth.ok) throw new Error(truth.problem.message);
    const { density, kinematicViscosity } = truth.value;
    const aim = run.aimSpeedMetresPerSecond ?? 0;
    const trueSpeed = aim * (1 + 0.002 * draws.normal());
    const truePressure = 0.5 * density * trueSpeed * trueSpeed;
    const readPressure = truePressure / (percent("streamCalibrationPercent") * percent("dynamicPressurePercent"));
    let drag = 0;
    if (run.kind === "model" && run.direction !== null) {
      const reynolds = (trueSpeed * length) / kinematicViscosity;
      drag = confined(test, theCase, reynolds, run.direction, blockageRatio) * truePressure * area;
      drag /= percent("supportInterferencePercent") * percent("otherPercent");
    }
    const support = run.kind === "zero" ? 0 : test.supportDragArea * truePressure;
    const zero = test.zero + test.zeroDrift * minutes + test.noise * draws.normal();
    const force =
      (drag + support) / percent("balanceCalibrationPercent") +
      zero +
      (errors.zeroNewtons ?? 0) * (run.kind === "model" ? 1 : 0);
    const cells: Record<(typeof runColumnKeys)[number], DataCell> = {
      run: run.run,
      kind: run.kind,
      direction: run.direction ?? "",
      aimSpeedMetresPerSecond: run.aimSpeedMetresPerSecond ?? "",
      repeat: run.repeat ?? "",
      timeMinutes: Number(minutes.toFixed(2)),
      speedMetresPerSecond: "",
      dynamicPressurePascals: run.kind === "zero" ? "" : Number(readPressure.toFixed(2)),
      temperatureCelsius: Number(temperature.toFixed(2)),
      staticPressurePascals: facility.fluidSpec.kind === "dryAir" ? test.staticPressure : "",
      relativeHumidityPercent: test.humidity ?? "",
      forceNewtons: rounded(force, resolution),
      incidenceDegrees: "",
      remark: run.remark === "" ? "invented" : `invented; ${run.remark}`,
    };
    return runColumnKeys.map((key) => cells[key]);
  });
  return { columns: [...runColumnKeys], rows };
}
