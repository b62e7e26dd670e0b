import { historyLook } from "../engine/viewLook";
import type { ViewPart } from "../engine/viewRegistry";
import { openTunnelCase } from "./openTunnelCase";
import { changeTunnel, presentTunnel, redoTunnel, tunnelBench, undoTunnel } from "./tunnelBench";
import { tunnelCaseText } from "./tunnelCaseText";
import { startTunnel } from "./tunnelInputs";

/** The view of tunnel tests: the tunnel block of a case. */
export const tunnelPart: ViewPart = {
  look: () => historyLook(tunnelBench.value.history),
  subscribe: (listener) => tunnelBench.subscribe(listener),
  undo: undoTunnel,
  redo: redoTunnel,
  rename: (title) => changeTunnel({ title }),
  caseKeys: () => (presentTunnel() === startTunnel ? {} : { tunnel: presentTunnel().block }),
  openCase: openTunnelCase,
  screenText: () => tunnelCaseText(presentTunnel()),
  showScreen: async (text, from) => (await openTunnelCase(from, text)).map(({ message }) => message),
};
