import type { TunnelResult } from "../../../shared/jobs/tunnel/tunnelResult";
import type { Problem } from "../../../shared/result";
import { type History, record, redo, startHistory, undo } from "../store/history";
import { Notifier } from "../store/notifier";
import { recordTyped } from "../store/typing";
import { startTunnel, type TunnelInputs } from "./tunnelInputs";

/** What the tunnel view works on and what is known of it. The last good result stays; it names its inputs. */
export interface TunnelBench {
  readonly history: History<TunnelInputs>;
  readonly solved: { readonly inputs: TunnelInputs; readonly result: TunnelResult } | null;
  /** What is wrong with the present inputs; empty when all is well. */
  readonly problems: readonly Problem[];
  /** What is being worked out; null when nothing is. */
  readonly working: string | null;
}

export const tunnelBench = new Notifier<TunnelBench>({
  history: startHistory(startTunnel),
  solved: null,
  problems: [],
  working: null,
});

export function presentTunnel(): TunnelInputs {
  return tunnelBench.value.history.present;
}

/** Changes the inputs as one step of the history. */
export function changeTunnel(change: Partial<TunnelInputs>): void {
  const { history } = tunnelBench.value;
  tunnelBench.patch({ history: recordTyped(history, { ...history.present, ...change }) });
}

/** Replaces keys of the block as one step of the history; undefined takes a key away. */
export function changeBlock(change: Partial<TunnelInputs["block"]>): void {
  const { block } = presentTunnel();
  const entries = Object.entries({ ...block, ...change }).filter(([, value]) => value !== undefined);
  changeTunnel({ block: Object.fromEntries(entries) as unknown as TunnelInputs["block"] });
}

/** Shows other inputs; the view's own start is no step to go back to. */
export function showTunnel(inputs: TunnelInputs): void {
  const isFirst = presentTunnel() === startTunnel;
  const { history } = tunnelBench.value;
  tunnelBench.patch({ history: isFirst ? startHistory(inputs) : record(history, inputs) });
}

export function undoTunnel(): void {
  tunnelBench.patch({ history: undo(tunnelBench.value.history) });
}

export function redoTunnel(): void {
  tunnelBench.patch({ history: redo(tunnelBench.value.history) });
}
