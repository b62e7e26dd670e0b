import type { CalibratedConstants } from "../constants/calibrated";
import type { FloorPlane } from "../flow/floorPlane";
import type { SectionFlow } from "../flow/sectionFlow";
import type { SectionNodes } from "../geometry/sectionNodes";
import type { LayerMethod } from "../layer/layerMethod";
import type { VortexStreetTable } from "../wake/vortexStreet";
import type { SeparatedFlow } from "./separatedFlow";
import type { SeparationTable } from "./separationTable";

/** A section at one incidence, solved as far as it does not depend on Reynolds number, roughness or turbulence. */
export interface PreparedSection {
  readonly nodes: SectionNodes;
  /** Angle of the stream direction to the x axis, rad: positive is nose up. */
  readonly incidence: number;
  /** D, m. */
  readonly referenceWidth: number;
  /** True when the section is its own mirror image about the stream. */
  readonly symmetric: boolean;
  readonly constants: CalibratedConstants;
  readonly street: VortexStreetTable;
  /** How its boundary layers are worked out. */
  readonly layerMethod: LayerMethod;
  /** The flow as the coupling uses it: folded to one side when symmetric. */
  readonly flow: SectionFlow;
  /** The floor below the section; null in an unbounded stream. */
  readonly floor: FloorPlane | null;
  /** The unfolded flow for one-sided states; made on first use in a symmetric section. */
  readonly fullFlow: () => SectionFlow;
  /** Both sides over a table of separation points, for states that are not symmetric; made on first use. */
  readonly table: () => SeparationTable;
  /** Symmetric wakes over a scan of separation points, front to rear; empty when the section is not symmetric. */
  readonly wakes: readonly SeparatedFlow[];
  /** Those among all symmetric wakes whose layers separate laminar where the wake assumes it; the same for every condition. */
  readonly laminarFlows: readonly SeparatedFlow[];
}
