import * as z from "zod";
import { fluidDocument } from "../../../shared/document/fluidDocument";
import { parseDocument } from "../../../shared/document/parseDocument";
import { sectionDocument } from "../../../shared/document/sectionDocument";
import { resolveFluid } from "../../../shared/engine/fluid/resolveFluid";
import { measurementBlockDocument } from "../../../shared/jobs/evidence/measurementBlockDocument";
import { resolveMeasurements } from "../../../shared/jobs/evidence/resolveMeasurements";
import { type CaseReading, caseTextOf } from "../view/caseText";
import { type CompareInputs, type MeasuredSetInputs, noMeasurements } from "./compareInputs";

/** The keys of a case file that measurements need; what else the case has is other views' business. */
const comparedCase = z.object({
  title: z.string().max(200).optional(),
  fluid: fluidDocument.optional(),
  sections: z.array(sectionDocument).optional(),
  measurements: measurementBlockDocument.optional(),
});

/** Reads the measurements of a case file, with sections and fluid that sets take from the case put into the sets. */
export function readCompareCase(text: string): CaseReading<CompareInputs> {
  const parsed = parseDocument(text, comparedCase);
  if (!parsed.ok) return parsed;
  const { title, fluid, sections = [], measurements } = parsed.value;
  if (measurements === undefined)
    return { ok: true, value: { ...noMeasurements, title: title ?? noMeasurements.title } };
  const properties = fluid === undefined ? null : resolveFluid(fluid);
  const resolved = resolveMeasurements(measurements, {
    fluid: properties?.ok === true ? properties.value : null,
    sections,
    // Shown, and said beside it that its points are to be taken from the other view.
    hasTunnelRuns: true,
  });
  if (!resolved.ok) return resolved;
  const sets = measurements.sets.flatMap((set): MeasuredSetInputs[] => {
    const section = typeof set.section === "string" ? sections.find(({ name }) => name === set.section) : set.section;
    if (section === undefined && set.puck === undefined) return [];
    const needsFluid = set.fluid === undefined && fluid !== undefined && JSON.stringify(set).includes("speedMetres");
    const own = section === undefined ? {} : { section };
    return [{ ...set, ...own, ...(needsFluid ? { fluid } : {}) } as MeasuredSetInputs];
  });
  return {
    ok: true,
    value: {
      title: title ?? noMeasurements.title,
      sets,
      carriedSet: measurements.carriedSet ?? null,
      likelyCauses: measurements.likelyCauses,
    },
  };
}

/** The case keys of the inputs: none without a set, as a block needs one. */
export function measurementKeys({ sets, carriedSet, likelyCauses }: CompareInputs): Record<string, unknown> {
  if (sets.length === 0) return {};
  const measurements = {
    sets,
    ...(likelyCauses === undefined ? {} : { likelyCauses }),
    ...(carriedSet === null ? {} : { carriedSet }),
  };
  return { measurements };
}

/** The inputs as a case file of their own. */
export function compareCaseText(inputs: CompareInputs): string {
  return caseTextOf(inputs.title, measurementKeys(inputs));
}
