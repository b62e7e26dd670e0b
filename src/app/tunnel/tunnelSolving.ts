import { proxy } from "comlink";
import type { TunnelResult } from "../../../shared/jobs/tunnel/tunnelResult";
import { tunnelOffer } from "../compare/tunnelOffer";
import { Task } from "../view/task";
import { evidenceWorker } from "../view/workers";
import { offeredSet } from "./offeredSet";
import { tunnelBench } from "./tunnelBench";
import type { TunnelInputs } from "./tunnelInputs";
import { tunnelView } from "./tunnelView";

let begun: Promise<void> | null = null;

/** Keeps the view up to date: the newest inputs are worked out in a worker. Goes on for as long as the page is open. */
export function startTunnelSolving(): Promise<void> {
  begun ??= tunnelView.startKeeping().then(() => {
    const worker = evidenceWorker("The tunnel program");
    const task = new Task<TunnelInputs, TunnelResult>({
      ask: ({ block }, onStep) => worker.call((remote) => remote.solveTunnel(block, proxy(onStep))),
      crashWords: () => "The tunnel program stopped on this test; change it to try again.",
    });
    task.subscribe((solving) => {
      tunnelBench.patch({ solving });
      const { last } = solving;
      if (solving.status === "complete" && last !== null) tunnelOffer.value = offeredSet(last.inputs, last.result);
    });
    let last: TunnelInputs | null = null;
    const follow = () => {
      const { present } = tunnelBench;
      if (present.block === last?.block) return;
      last = present;
      void task.run(present);
    };
    tunnelBench.subscribe(follow);
    follow();
  });
  return begun;
}
