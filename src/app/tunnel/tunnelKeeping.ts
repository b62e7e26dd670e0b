import { loadDemoCase } from "../files/demoCases";
import { keepText, readKeptText } from "../files/storage";
import { openTunnelCase } from "./openTunnelCase";
import { presentTunnel, tunnelBench } from "./tunnelBench";
import { tunnelCaseText } from "./tunnelCaseText";
import { startTunnel } from "./tunnelInputs";

const keptName = "tunnel";
const demoCaseName = "harbour-tunnel.json";
const calmMilliseconds = 600;

let begun: Promise<void> | null = null;

/** Brings back the test that this browser kept, else the demo; then keeps every change shortly after it. */
export function startTunnelKeeping(): Promise<void> {
  begun ??= bringBack().then(keepChanges);
  return begun;
}

async function bringBack(): Promise<void> {
  // A case that was opened before the view was first shown is newer than anything kept.
  if (presentTunnel() !== startTunnel) return;
  const kept = await readKeptText(keptName);
  if (kept !== null && (await openTunnelCase("the autosave", kept)).length === 0) return;
  try {
    await openTunnelCase(demoCaseName, await loadDemoCase(demoCaseName));
  } catch {
    // The page was built without this demo case: the view's own start stays.
  }
}

function keepChanges(): void {
  let timer: ReturnType<typeof setTimeout> | null = null;
  let last = tunnelCaseText(presentTunnel());
  let lastInputs = presentTunnel();
  let refused = false;
  const save = async () => {
    timer = null;
    const text = tunnelCaseText(presentTunnel());
    if (refused || text === last) return;
    last = text;
    refused = !(await keepText(keptName, text));
  };
  tunnelBench.subscribe(({ history }) => {
    if (history.present === lastInputs) return;
    lastInputs = history.present;
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => void save(), calmMilliseconds);
  });
  addEventListener("pagehide", () => void save());
}
