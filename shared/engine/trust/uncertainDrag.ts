import type { Regime } from "../solution";
import { regimes } from "./bandTable";
import type { ErrorKnowledge } from "./errorKnowledge";
import { type StudyBody, type StudyDraws, studyDraws } from "./studyDraws";

/** One world of a study as a design meets it. */
export interface DragWorld {
  /** Which of the equally likely streams is the true one. */
  readonly stream: number;
  /** Cd and regime of a part of the design; where there is no such part it is subcritical. */
  drag(part: number): number;
  regime(part: number): Regime;
  /** Standard normal draw of an error that designs share by its name. */
  shared(name: string): number;
}

/**
 * Drag of a design in one condition as a function of what is not known: of the drag of the sections that it is made up
 * of, and of errors that it shares with other designs by name (an end relief, a base pressure). Whatever estimates a
 * body from several sections or states can be given in this form.
 */
export interface UncertainDrag {
  /** Sections that it is made up of; none where all of it is shared by name. */
  readonly parts: readonly StudyBody[];
  /** How many equally likely streams it knows; the same for all designs of a study, and for the parts. */
  readonly streamCount: number;
  readonly sharedErrors: readonly string[];
  /** Drag over the dynamic pressure, m^2 or m^2 per m of span, above 0. */
  evaluate(world: DragWorld): number;
}

const SUBCRITICAL = regimes.indexOf("subcritical");

/** Drags of designs in the same worlds. */
export interface DrawnDrags extends Pick<StudyDraws, "count" | "stream"> {
  /** ln of the drag over the dynamic pressure, shape [designs][draws]. */
  readonly logDrag: readonly Float64Array[];
  /** Share of draws in which any part of the design is past its crisis, shape [designs]. */
  readonly pastCrisisShare: readonly number[];
}

/**
 * Draws that all designs share.
 * @param count of draws
 * @param seed  whole number
 */
export function drawDrags(
  knowledge: ErrorKnowledge,
  designs: readonly UncertainDrag[],
  count: number,
  seed: number,
): DrawnDrags {
  const names = [...new Set(designs.flatMap(({ sharedErrors }) => sharedErrors))].sort();
  const bodies = designs.flatMap(({ parts }) => parts);
  const drawn = studyDraws(knowledge, bodies, count, seed, names.length, streamCount(designs));
  let first = 0;
  const pastCrisisShare: number[] = [];
  const logDrag = designs.map(({ parts, evaluate }) => {
    const offset = first;
    first += parts.length;
    let k = 0;
    const world: DragWorld = {
      get stream() {
        return drawn.stream[k];
      },
      drag: (part) => Math.exp(drawn.logDrag[offset + part][k]),
      regime: (part) => (part < parts.length ? regimes[drawn.regime[offset + part][k]] : "subcritical"),
      shared: (name) => drawn.shared[names.indexOf(name)][k],
    };
    const column = new Float64Array(count);
    let past = 0;
    for (; k < count; k++) {
      column[k] = Math.log(evaluate(world));
      if (parts.some((_, part) => drawn.regime[offset + part][k] !== SUBCRITICAL)) past++;
    }
    pastCrisisShare.push(past / count);
    return column;
  });
  return { count, stream: drawn.stream, logDrag, pastCrisisShare };
}

function streamCount(designs: readonly UncertainDrag[]): number {
  const [{ streamCount: count }] = designs;
  const other = designs.find((design) => design.streamCount !== count);
  if (other !== undefined) {
    throw new RangeError(`a design has ${other.streamCount} streams and the first ${count}; all need the same number.`);
  }
  return count;
}

/** A section by itself: its drag coefficient times its width, m, or the coefficient alone with a width of 1. */
export function sectionDragOf(body: StudyBody, widths: readonly number[]): UncertainDrag {
  return {
    parts: [body],
    streamCount: body.streams.length,
    sharedErrors: [],
    evaluate: (world) => world.drag(0) * widths[Math.min(world.stream, widths.length - 1)],
  };
}
