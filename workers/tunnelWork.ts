import { predictDrag } from "../shared/jobs/tunnel/predictedDrag";
import { resolveTunnel } from "../shared/jobs/tunnel/resolveTunnel";
import type { TunnelBlockDocument } from "../shared/jobs/tunnel/tunnelBlockDocument";
import type { TunnelResult } from "../shared/jobs/tunnel/tunnelResult";
import { type TunnelStep, tunnelSteps } from "../shared/jobs/tunnel/tunnelSteps";
import type { Problem } from "../shared/result";
import { runSteps } from "./runSteps";

export type TunnelOutcome =
  | { readonly ok: true; readonly value: TunnelResult }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** What the evidence worker does with tunnel tests. */
export interface TunnelWork {
  /** Similarity, plan, reduced runs and surveys of a tunnel block, its tables in place. */
  solveTunnel(block: TunnelBlockDocument, onStep: (step: TunnelStep) => Promise<void>): Promise<TunnelOutcome>;
}

/** The work with a memory of the last prediction: most changes leave model and stream as they are. */
export function tunnelWork(): TunnelWork {
  let lastKey = "";
  let last: ReturnType<typeof predictDrag> | null = null;
  return {
    async solveTunnel(block, onStep) {
      const resolved = resolveTunnel(block);
      if (!resolved.ok) return resolved;
      const steps = tunnelSteps(resolved.value, (model, reynolds, turbulences) => {
        const key = JSON.stringify([block.model, reynolds, turbulences]);
        if (last === null || key !== lastKey) {
          last = predictDrag(model, reynolds, turbulences);
          lastKey = key;
        }
        return last;
      });
      return { ok: true, value: await runSteps(steps, onStep) };
    },
  };
}
