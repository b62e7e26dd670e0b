import { roughnessHeightBounds, speedBounds, turbulenceBounds } from "./limits";
import { quantity, strictRecord } from "./quantity";

/** The condition at which the page opens a case whose stream is a list; what is solved is the list all the same. */
export const workingPointDocument = strictRecord("a working point", {
  speedMetresPerSecond: quantity("Stream speed", speedBounds),
  sandGrainRoughnessMetres: quantity("Equivalent sand-grain roughness ks", roughnessHeightBounds),
  turbulencePercent: quantity("Turbulence intensity", turbulenceBounds),
}).describe("Where the page opens the case's section; the command line solves the lists of the case and ignores this");
