import { randomDraws } from "../../statistics/randomDraws";
import { shuffledOrder } from "../../statistics/shuffle";
import type { PlannedRun, PlannedSpeed, PlanSettings, RunKind } from "./plannedTest";
import type { SpeedDirection } from "./predictedDrag";

/** The runs of a plan in order: the support alone, then the model, with zero readings between. */
export function plannedRuns(speeds: readonly PlannedSpeed[], settings: PlanSettings): PlannedRun[] {
  return numbered([...tareRuns(speeds, settings), ...modelRuns(speeds, settings)]);
}

type OpenRun = Omit<PlannedRun, "run">;

function zeroRun(remark: string): OpenRun {
  return {
    kind: "zero",
    direction: null,
    aimSpeedMetresPerSecond: null,
    aimDynamicPressurePascals: null,
    expectedForceNewtons: null,
    repeat: null,
    remark,
  };
}

function windRun(kind: RunKind, direction: SpeedDirection, speed: PlannedSpeed, repeat: number, remark = ""): OpenRun {
  return {
    kind,
    direction,
    aimSpeedMetresPerSecond: speed.speedMetresPerSecond,
    aimDynamicPressurePascals: speed.dynamicPressurePascals,
    expectedForceNewtons: kind === "model" ? (speed.expectedForceNewtons?.expected ?? null) : null,
    repeat,
    remark,
  };
}

function tareRuns(speeds: readonly PlannedSpeed[], { tareRepeats }: PlanSettings): OpenRun[] {
  const runs: OpenRun[] = [];
  for (let repeat = 1; repeat <= tareRepeats; repeat++) {
    runs.push(zeroRun(repeat === 1 ? "support alone, model off; flow at rest" : "flow at rest"));
    runs.push(...speeds.map((speed) => windRun("tare", "rising", speed, repeat)));
  }
  if (tareRepeats > 0) runs.push(zeroRun("flow at rest; then mount the model"));
  return runs;
}

function modelRuns(speeds: readonly PlannedSpeed[], settings: PlanSettings): OpenRun[] {
  return settings.order === "sweeps" ? sweepRuns(speeds, settings) : randomisedRuns(speeds, settings);
}

function sweepRuns(speeds: readonly PlannedSpeed[], { bothDirections }: PlanSettings): OpenRun[] {
  const sweeps = Math.max(...speeds.map(({ repeats }) => repeats));
  const runs: OpenRun[] = [zeroRun("model on; flow at rest")];
  for (let repeat = 1; repeat <= sweeps; repeat++) {
    const own = speeds.filter(({ repeats }) => repeats >= repeat);
    runs.push(...own.map((speed) => windRun("model", "rising", speed, repeat)));
    if (bothDirections) {
      // The fall begins above the crisis only when the sweep went up to the top.
      const remark = "come down from the top speed, never from below";
      runs.push(
        ...[...own].reverse().map((speed, i) => windRun("model", "falling", speed, repeat, i === 0 ? remark : "")),
      );
    }
    runs.push(zeroRun("flow at rest"));
  }
  return runs;
}

function randomisedRuns(speeds: readonly PlannedSpeed[], settings: PlanSettings): OpenRun[] {
  const directions: readonly SpeedDirection[] = settings.bothDirections ? ["rising", "falling"] : ["rising"];
  const draws = randomDraws(settings.seed);
  const sweeps = Math.max(...speeds.map(({ repeats }) => repeats));
  const runs: OpenRun[] = [zeroRun("model on; flow at rest")];
  let sinceZero = 0;
  // Blocks: every repeat holds each point once, in an order of its own, so that drift spreads over all points.
  for (let repeat = 1; repeat <= sweeps; repeat++) {
    const block = speeds
      .filter(({ repeats }) => repeats >= repeat)
      .flatMap((speed) => directions.map((direction) => ({ speed, direction })));
    for (const index of shuffledOrder(draws, block.length)) {
      const { speed, direction } = block[index];
      const remark = direction === "rising" ? "from rest" : "from the top speed";
      runs.push(windRun("model", direction, speed, repeat, remark));
      sinceZero++;
      if (sinceZero >= settings.runsBetweenZeros) {
        runs.push(zeroRun("flow at rest"));
        sinceZero = 0;
      }
    }
  }
  if (sinceZero > 0) runs.push(zeroRun("flow at rest"));
  return runs;
}

function numbered(runs: readonly OpenRun[]): PlannedRun[] {
  return runs.map((run, i) => ({ run: i + 1, ...run }));
}
