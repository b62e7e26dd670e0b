import { type SurfaceFlow, traceStreamline } from "../flow/fieldVelocity";
import type { SectionNodes } from "../geometry/sectionNodes";
import type { SectionState } from "../solution";
import type { PreparedSection } from "../solve/preparedSection";

/** Lines for a drawing of the flow: x, y interleaved, m, body axes. */
export interface FlowPicture {
  /** From above to below upstream of the section. */
  readonly streamlines: readonly Float64Array[];
  /** Free shear layers from the separation points downstream. */
  readonly upperShear: Float64Array;
  /** Empty when the section lies on a floor: the wake then reaches down to the floor. */
  readonly lowerShear: Float64Array;
}

/** Window of the picture around the centroid, in units of the section's largest radius. */
const ahead = 2.7;
const behind = 4.8;
const aside = 1.8;
/** Number of streamlines and length of a step, in the same unit. */
const drawing = { full: { lineCount: 20, step: 0.1 }, quick: { lineCount: 14, step: 0.14 } } as const;

/** Streamlines and free shear layers of one state, the section's stream speed being 1. */
export function flowPicture(
  { nodes, incidence, floor }: PreparedSection,
  state: SectionState,
  detail: keyof typeof drawing = "full",
): FlowPicture {
  const { lineCount, step } = drawing[detail];
  const [centreX, centreY] = nodes.centroid;
  let radius = 0;
  for (let i = 0; i < nodes.count; i++) {
    radius = Math.max(radius, Math.hypot(nodes.x[i] - centreX, nodes.y[i] - centreY));
  }
  const flow: SurfaceFlow = { surfaceVelocity: state.surfaceVelocity, outflow: state.outflow, incidence, floor };
  const [cosine, sine] = [Math.cos(incidence), Math.sin(incidence)];
  const far = (ahead + behind) * radius;
  const box = [centreX - far, centreY - far, centreX + far, centreY + far] as const;
  const steps = Math.ceil((1.2 * (ahead + behind)) / step);
  const trace = (start: readonly [number, number], most: number) =>
    traceStreamline(nodes, flow, start, box, step * radius, most);
  const lowest =
    floor === null ? -aside * radius : Math.max(-aside * radius, floor.level - (cosine * centreY - sine * centreX));
  const streamlines = Array.from({ length: lineCount }, (_, i) => {
    const across = lowest + ((i + 0.5) / lineCount) * (aside * radius - lowest);
    const along = -ahead * radius;
    return trace([centreX + along * cosine - across * sine, centreY + along * sine + across * cosine], steps);
  });
  const shear = (arc: number) => trace(offSurface(nodes, arc), Math.ceil((1.2 * behind) / step));
  return {
    streamlines,
    upperShear: shear(state.upper.separationContourArc),
    lowerShear: floor?.contact ? new Float64Array(0) : shear(state.lower.separationContourArc),
  };
}

/** A point one panel off the surface, where the panel sums are accurate again. */
function offSurface(nodes: SectionNodes, arc: number): readonly [number, number] {
  let nearest = 0;
  for (let i = 1; i < nodes.count; i++) {
    if (Math.abs(nodes.arc[i] - arc) < Math.abs(nodes.arc[nearest] - arc)) nearest = i;
  }
  const off = 0.8 * nodes.ds[nearest];
  return [nodes.x[nearest] + off * nodes.tangentY[nearest], nodes.y[nearest] - off * nodes.tangentX[nearest]];
}
