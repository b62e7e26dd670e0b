import type { ViewPart } from "../engine/viewRegistry";
import { openTunnelCase } from "./openTunnelCase";
import { changeTunnel, presentTunnel, redoTunnel, tunnelBench, undoTunnel } from "./tunnelBench";
import { tunnelCaseText } from "./tunnelCaseText";
import { startTunnel } from "./tunnelInputs";

/** The view of tunnel tests: the tunnel block of a case. */
export const tunnelPart: ViewPart = {
  look: () => {
    const { past, present, future } = tunnelBench.value.history;
    return { title: present.title, canUndo: past.length > 0, canRedo: future.length > 0 };
  },
  subscribe: (listener) => tunnelBench.subscribe(listener),
  undo: undoTunnel,
  redo: redoTunnel,
  rename: (title) => changeTunnel({ title }),
  caseKeys: () => (presentTunnel() === startTunnel ? {} : { tunnel: presentTunnel().block }),
  openCase: openTunnelCase,
  screenText: () => tunnelCaseText(presentTunnel()),
  showScreen: async (text, from) => (await openTunnelCase(from, text)).map(({ message }) => message),
};
