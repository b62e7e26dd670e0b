import { expandSweep } from "../shared/document/expandSweep";
import type { SectionSpec } from "../shared/engine/geometry/sectionSpec";
import { liveSketch } from "../shared/engine/section/liveCurves";
import { prepareShape } from "../shared/engine/section/prepareShape";
import type { ResultRow } from "../shared/engine/section/resultRow";
import { profileSection } from "../shared/jobs/puck/drag/solvedSections";
import type { CasePuck, PuckCase, PuckStream } from "../shared/jobs/puck/puckCase";

/** The drag curves of a puck's two sections, for where its edge-on drag crises lie. */
export interface PuckCurves {
  readonly name: string;
  /** Along the stream through the middle: what a puck shows the water with both faces beside it. */
  readonly profile: readonly ResultRow[];
  /** Across the axis, a circle. */
  readonly plan: readonly ResultRow[];
}

/** Reynolds numbers that hold every crisis of a puck in play. */
const stations = expandSweep({ from: 1e4, to: 1.5e6, count: 19, spacing: "log" });

/** Panels of a section whose crisis alone is wanted. */
const panelCount = 120;

/** The curves of every puck of a case, in the first of its turbulences. */
export function puckCurves({ pucks, stream }: PuckCase): PuckCurves[] {
  return pucks.map((puck) => ({
    name: puck.spec.name,
    profile: curveOf(profileSection(puck.spec, puck.spec.diameterMetres), puck.sandGrainRoughness, stream),
    plan: curveOf({ family: "circle", diameter: puck.spec.diameterMetres }, rimRoughness(puck), stream),
  }));
}

/** None where a section cannot be solved: the drag rows say why. */
function curveOf(section: SectionSpec, sandGrainRoughness: number, stream: PuckStream): ResultRow[] {
  const shape = prepareShape({ section, panelCount });
  if (!shape.ok) return [];
  const [turbulenceIntensity] = stream.turbulenceIntensities;
  const speed = stream.speeds[Math.floor(stream.speeds.length / 2)];
  return liveSketch(shape.value, { speed, fluid: stream.fluid, sandGrainRoughness, turbulenceIntensity }, stations);
}

function rimRoughness({ spec, sandGrainRoughness }: CasePuck): number {
  return spec.rim.kind === "rough" ? spec.rim.sandGrainRoughnessMetres : sandGrainRoughness;
}
