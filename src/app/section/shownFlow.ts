import type { Design } from "../../../shared/case/design";
import { Notifier } from "../store/notifier";
import type { Solved } from "./solved";

/** The flow that is looked at; "own" for the design's own. */
export interface ShownFlow {
  readonly key: string;
  /** The design at the speed where such a flow is computed; left out for the design's own. */
  readonly design?: Design;
  /** null while it is solved. */
  readonly solved: Solved | null;
}

export const ownFlow: ShownFlow = { key: "own", solved: null };

export const shownFlow = new Notifier<ShownFlow>(ownFlow);
