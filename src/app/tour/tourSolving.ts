import { expandSweep } from "../../../shared/document/expandSweep";
import type { SectionRequest } from "../../../shared/engine/section/sectionRequest";
import type { SolverApi } from "../../../workers/solverApi";
import { Notifier } from "../store/notifier";
import type { WatchedWorker } from "../view/watchedWorker";
import { solverWorker } from "../view/workers";
import type { TourState, TourStream } from "./tourState";
import { stopReynolds, tourStart, tourStops } from "./tourStops";

const nothing: TourState = { stream: tourStart, stop: 0, curve: [], flows: tourStops.map(() => null) };

export const tour = new Notifier<TourState>(nothing);

const reynoldsNumbers = expandSweep({ from: 1e4, to: 1e7, count: 41, spacing: "log" });

/** The cylinder of the tour; everything about it goes by ratios. */
const cylinder = { section: { family: "circle", diameter: 0.1 }, panelCount: 160 } as const;

let worker: WatchedWorker<SolverApi> | null = null;
let call = 0;

/** Solves the tour in a stream, the shown stop first; a newer stream replaces an older. */
export async function solveTour(stream: TourStream = tour.value.stream): Promise<void> {
  worker ??= solverWorker("The solver");
  const own = worker;
  const mine = ++call;
  const isNewest = () => mine === call;
  tour.patch({ stream });
  const request = (reynolds: number, roughness: number | null): SectionRequest => ({
    ...cylinder,
    reynolds,
    turbulenceIntensity: stream.turbulenceIntensity,
    sandGrainRoughnessRatio: roughness ?? stream.sandGrainRoughnessRatio,
  });
  const curve = await own.insist((remote) => remote.sketchCurve(request(1e5, null), reynoldsNumbers), 1);
  if (!isNewest() || curve.kind !== "done" || !curve.value.ok) return;
  tour.patch({ curve: curve.value.value });
  const order = [tour.value.stop, ...tourStops.keys()];
  for (const i of new Set(order)) {
    const stop = tourStops[i];
    const at = request(stopReynolds(stop, tour.value.curve), stop.sandGrainRoughnessRatio);
    const solved = await own.insist((remote) => remote.solveNow(at, "full"), 1);
    if (!isNewest()) return;
    if (solved.kind === "done" && solved.value.ok) {
      const flow = solved.value.value;
      tour.patch({ flows: tour.value.flows.map((one, k) => (k === i ? flow : one)) });
    }
  }
}

export function goToStop(stop: number): void {
  tour.patch({ stop: Math.max(0, Math.min(tourStops.length - 1, stop)) });
}
