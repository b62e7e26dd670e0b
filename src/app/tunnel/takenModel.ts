import type { Design } from "../../../shared/case/design";
import { sectionToDocument } from "../../../shared/case/sectionToDocument";
import type { TunnelBlockDocument } from "../../../shared/jobs/tunnel/tunnelBlockDocument";
import type { PuckMake } from "../puck/puckInputs";

type Model = TunnelBlockDocument["model"];

/** A puck as the model of a test, at the scale and in the attitude of the present one; surveys belong to a section. */
export function puckAsModel(
  { model }: TunnelBlockDocument,
  { spec, sandGrainRoughness }: PuckMake,
): Partial<TunnelBlockDocument> {
  const { scale, attitude } = model;
  const taken: Model = {
    puck: spec as NonNullable<Model["puck"]>,
    attitude: attitude ?? "edgeOn",
    scale,
    sandGrainRoughnessMetres: sandGrainRoughness,
  };
  return { model: withoutGaps(taken), wakeSurvey: undefined, pressureTaps: undefined };
}

/** A design's section as the model of a test, at the scale and with the roughness of the present one. */
export function designAsModel({ model, facility }: TunnelBlockDocument, design: Design): Partial<TunnelBlockDocument> {
  const { scale, spanMetres, sandGrainRoughnessMetres } = model;
  const taken: Model = {
    section: sectionToDocument(design.section, design.sectionName),
    spanMetres: spanMetres ?? facility.testSectionHeightMetres,
    scale,
    sandGrainRoughnessMetres,
  };
  return { model: withoutGaps(taken) };
}

/** Without keys of no value, as a case file is written. */
function withoutGaps<T extends object>(record: T): T {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as T;
}
