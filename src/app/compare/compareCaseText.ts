import * as z from "zod";
import { caseVersion } from "../../../shared/document/caseVersion";
import { fluidDocument } from "../../../shared/document/fluidDocument";
import { parseDocument } from "../../../shared/document/parseDocument";
import { sectionDocument } from "../../../shared/document/sectionDocument";
import { resolveFluid } from "../../../shared/engine/fluid/resolveFluid";
import { measurementBlockDocument } from "../../../shared/jobs/evidence/measurementBlockDocument";
import { resolveMeasurements } from "../../../shared/jobs/evidence/resolveMeasurements";
import type { Problem } from "../../../shared/result";
import { type CompareInputs, type MeasuredSetInputs, noMeasurements } from "./compareInputs";

export type CompareReading =
  | { readonly ok: true; readonly value: CompareInputs }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The keys of a case file that measurements need; what else the case has is other views' business. */
const comparedCase = z.object({
  title: z.string().max(200).optional(),
  fluid: fluidDocument.optional(),
  sections: z.array(sectionDocument).optional(),
  measurements: measurementBlockDocument.optional(),
});

/** Reads the measurements of a case file, with sections and fluid that sets take from the case put into the sets. */
export function readCompareCase(text: string): CompareReading {
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

/** The measurements block of the inputs; null without a set, as a block needs one. */
export function measurementBlock({ sets, carriedSet, likelyCauses }: CompareInputs): Record<string, unknown> | null {
  if (sets.length === 0) return null;
  return {
    sets,
    ...(likelyCauses === undefined ? {} : { likelyCauses }),
    ...(carriedSet === null ? {} : { carriedSet }),
  };
}

/** The inputs as a case file of their own. */
export function compareCaseText(inputs: CompareInputs): string {
  const measurements = measurementBlock(inputs);
  return JSON.stringify({
    wakewrightCase: caseVersion,
    title: inputs.title,
    ...(measurements === null ? {} : { measurements }),
  });
}
