import type { StreamFluid } from "../../engine/section/stream";
import type { UncertainDrag } from "../../engine/trust/uncertainDrag";
import type { Result } from "../../result";
import type { Orientation } from "../puck/public";
import type { ComparedCondition } from "./comparison";
import type { UnknownSample } from "./unknownSamples";

/** A design in one condition: its drag as a function of what is not known. */
export interface StudiedDrag {
  readonly drag: UncertainDrag;
  /** False where the engine was compared with nothing of the kind: its errors are then known by their spread alone. */
  readonly isChecked: boolean;
}

/** All designs in one condition, in their order. */
export interface StudyCondition {
  readonly condition: ComparedCondition;
  readonly drags: readonly Result<StudiedDrag>[];
}

/** The stream of a test run. */
export interface RunStream {
  /** m/s, above 0; null for the Reynolds number. */
  readonly speed: number | null;
  readonly reynolds: number | null;
  readonly fluid: StreamFluid | null;
  /** A fraction; null for the study's own water, known or not. */
  readonly turbulenceIntensity: number | null;
}

/** The designs of a case in the conditions that they are compared in. */
export interface Study {
  readonly designs: readonly string[];
  /** Places of the designs that others are compared with, one or more. */
  readonly baselines: readonly number[];
  readonly conditions: readonly StudyCondition[];
  /** Of what is not known; one where all is known. */
  readonly samples: readonly UnknownSample[];
  /** Keys of what is not known. */
  readonly unknown: readonly string[];
  /** A design in a run of a test, solved when it is asked for. @param attitude of a puck; null of a section */
  readonly inRun: (design: number, run: RunStream, attitude: Orientation | null) => Result<StudiedDrag>;
}
