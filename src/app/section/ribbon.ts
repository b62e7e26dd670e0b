import type { Design } from "../../../shared/case/design";
import type { ResultRow } from "../../../shared/engine/section/resultRow";
import type { RibbonRange } from "./ribbonRange";

/** The drag over one input of the design, everything else as it is. Plain data. */
export interface Ribbon {
  /** Key of the input. */
  readonly key: string;
  readonly range: RibbonRange;
  readonly values: readonly number[];
  /** Value by value; null where nothing is known yet or nothing could be solved. */
  readonly rows: readonly (ResultRow | null)[];
  /** The design that the input was varied in. */
  readonly design: Design;
  /** True once all points are computed. */
  readonly isComplete: boolean;
}
