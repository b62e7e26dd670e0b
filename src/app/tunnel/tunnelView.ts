import { defineView } from "../view/defineView";
import { tunnelBench } from "./tunnelBench";
import { readTunnelCase, tunnelCaseText } from "./tunnelCaseText";
import { withTables } from "./withTables";

/** The view of tunnel tests: the tunnel block of a case. */
export const tunnelView = defineView({
  bench: tunnelBench,
  read: readTunnelCase,
  show: async (inputs) => tunnelBench.show({ ...inputs, block: await withTables(inputs.block) }),
  caseKeys: () => (tunnelBench.isUntouched ? {} : { tunnel: tunnelBench.present.block }),
  screenText: () => tunnelCaseText(tunnelBench.present),
  kept: { name: "tunnel", demo: "harbour-tunnel.json" },
});
