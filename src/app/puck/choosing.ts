import { proxy } from "comlink";
import type { PuckResult } from "../../../shared/jobs/puck/puckResult";
import type { CaseApi } from "../../../workers/caseApi";
import type { ChosenPucks } from "../../../workers/choiceWork";
import { Task } from "../view/task";
import type { WatchedWorker } from "../view/watchedWorker";
import { caseWorker } from "../view/workers";
import { puckBench } from "./puckBench";
import { puckCaseText } from "./puckCaseText";
import type { PuckInputs } from "./puckInputs";

let worker: WatchedWorker<CaseApi> | null = null;

/** Durability, cost and choice of the pucks that are shown, as they are solved now. */
const choosing = new Task<PuckInputs, ChosenPucks>({
  ask: (inputs, onStep) => {
    worker ??= caseWorker(null);
    const { pins, solved } = puckBench.value;
    const known: readonly (PuckResult | null)[] = [
      solved?.baseline ?? null,
      solved?.candidate ?? null,
      ...pins.map(({ result }) => result),
    ];
    if (known.includes(null)) {
      const message = "Not every puck is solved yet; choose once the drag of all is there.";
      return Promise.resolve({ kind: "done", value: { ok: false, problems: [{ code: "unsolved", message }] } });
    }
    const text = puckCaseText(
      inputs,
      pins.map(({ make }) => make),
    );
    const pucks = known.filter((result) => result !== null);
    return worker.call((remote) => remote.choosePucks(text, "this page", pucks, proxy(onStep)));
  },
  end: () => worker?.cancel(),
  crashWords: (reason) => `The choice stopped: ${reason}.`,
});
choosing.subscribe((state) => puckBench.patch({ choosing: state }));

export const chooseControls = {
  start: () => void choosing.run(puckBench.present),
  cancel: () => choosing.cancel(),
} as const;
