import { Bench, type BenchState } from "../view/bench";
import { initialTask } from "../view/taskState";
import { startTunnel, type TunnelInputs } from "./tunnelInputs";
import type { TunnelTask } from "./tunnelTask";

/** What the tunnel view works on and what is known of it. */
export interface TunnelState extends BenchState<TunnelInputs> {
  readonly solving: TunnelTask;
}

export const tunnelBench = new Bench<TunnelInputs, TunnelState>(startTunnel, { solving: initialTask });

/** Replaces keys of the block as one step of the history; undefined takes a key away. */
export function changeBlock(change: Partial<TunnelInputs["block"]>): void {
  tunnelBench.change({ block: blockWith(tunnelBench.present.block, change) });
}

/** The block with keys replaced; undefined takes a key away. */
export function blockWith(block: TunnelInputs["block"], change: Partial<TunnelInputs["block"]>): TunnelInputs["block"] {
  const entries = Object.entries({ ...block, ...change }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries) as unknown as TunnelInputs["block"];
}
