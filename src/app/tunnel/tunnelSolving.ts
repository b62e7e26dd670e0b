import { proxy } from "comlink";
import type { EvidenceApi } from "../../../workers/evidenceApi";
import { tunnelOffer } from "../compare/tunnelOffer";
import { NewestOnly } from "../engine/newestOnly";
import { spawnEvidenceSolver } from "../engine/spawnEvidenceSolver";
import { WatchedWorker } from "../engine/watchedWorker";
import { tell } from "../store/notices";
import { offeredSet } from "./offeredSet";
import { presentTunnel, tunnelBench } from "./tunnelBench";
import type { TunnelInputs } from "./tunnelInputs";
import { startTunnelKeeping } from "./tunnelKeeping";

let begun: Promise<void> | null = null;

/** Keeps the view up to date: the newest inputs are worked out in a worker. Goes on for as long as the page is open. */
export function startTunnelSolving(): Promise<void> {
  begun ??= startTunnelKeeping().then(() => {
    const worker = new WatchedWorker<EvidenceApi>(spawnEvidenceSolver, (reason) =>
      tell("warning", `The tunnel program stopped (${reason}) and was started again. Nothing was lost.`),
    );
    const solving = new NewestOnly<TunnelInputs>((inputs) => solve(worker, inputs));
    let last: TunnelInputs | null = null;
    const follow = () => {
      const present = presentTunnel();
      if (present.block === last?.block) return;
      last = present;
      solving.submit(present);
    };
    tunnelBench.subscribe(follow);
    follow();
  });
  return begun;
}

async function solve(worker: WatchedWorker<EvidenceApi>, inputs: TunnelInputs): Promise<void> {
  const isPresent = () => presentTunnel().block === inputs.block;
  tunnelBench.patch({ working: "solving the model" });
  const onStep = async ({ label }: { readonly label: string }) => {
    if (isPresent()) tunnelBench.patch({ working: label });
  };
  const outcome = await worker.call((remote) => remote.solveTunnel(inputs.block, proxy(onStep)));
  if (!isPresent()) return;
  if (outcome.kind !== "done") {
    const message = "The tunnel program stopped on this test; change it to try again.";
    tunnelBench.patch({ problems: [{ code: "crash", message }], working: null });
    return;
  }
  if (outcome.value.ok) {
    tunnelBench.patch({ solved: { inputs, result: outcome.value.value }, problems: [], working: null });
    tunnelOffer.value = offeredSet(inputs, outcome.value.value);
  } else {
    tunnelBench.patch({ problems: outcome.value.problems, working: null });
  }
}
