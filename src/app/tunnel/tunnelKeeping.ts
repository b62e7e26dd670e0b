import { loadDemoCase } from "../files/demoCases";
import { followInputs, keepChanges } from "../files/keepChanges";
import { readKeptText } from "../files/storage";
import { openTunnelCase } from "./openTunnelCase";
import { presentTunnel, tunnelBench } from "./tunnelBench";
import { tunnelCaseText } from "./tunnelCaseText";
import { startTunnel } from "./tunnelInputs";

const keptName = "tunnel";
const demoCaseName = "harbour-tunnel.json";

let begun: Promise<void> | null = null;

/** Brings back the test that this browser kept, else the demo; then keeps every change shortly after it. */
export function startTunnelKeeping(): Promise<void> {
  begun ??= bringBack().then(() =>
    keepChanges({
      name: keptName,
      text: currentText,
      keptText: currentText(),
      follow: (changed) => followInputs(tunnelBench, changed),
    }),
  );
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

function currentText(): string {
  return tunnelCaseText(presentTunnel());
}
