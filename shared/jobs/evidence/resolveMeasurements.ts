import { roughnessRatioBounds } from "../../document/limits";
import type { SectionDocument } from "../../document/sectionDocument";
import type { FluidProperties } from "../../engine/fluid/fluidSpec";
import { resolveFluid } from "../../engine/fluid/resolveFluid";
import { fractionOf } from "../../numerics/degreesAndPercent";
import { type Problem, type Result, success } from "../../result";
import type { MeasurementBlockDocument, MeasurementSetDocument } from "./measurementBlockDocument";
import type { CaseMeasurement, MeasurementCase } from "./measurementCase";
import { resolveDesign } from "./resolveDesign";
import { readStatedPoints } from "./statedPoints";

/** What the measurements take from the rest of the case. */
export interface MeasurementSurroundings {
  /** For speeds, where a set names no fluid of its own; null without one. */
  readonly fluid: FluidProperties | null;
  /** That sets may name instead of describing their own. */
  readonly sections: readonly SectionDocument[];
  /** Whether the case has a tunnel test with runs, whose points a set may take. */
  readonly hasTunnelRuns: boolean;
}

export type MeasurementReading =
  | { readonly ok: true; readonly value: MeasurementCase }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The measurements block ready to run, or everything that is wrong with it. Fields of problems begin with "measurements". */
export function resolveMeasurements(
  block: MeasurementBlockDocument,
  about: MeasurementSurroundings,
): MeasurementReading {
  const problems: Problem[] = [];
  const measurements: CaseMeasurement[] = [];
  block.sets.forEach((document, i) => {
    const field = `measurements.sets[${i}]`;
    if (block.sets.findIndex(({ name }) => name === document.name) !== i) {
      problems.push(at(`${field}.name`, `"${document.name}" is the name of another set; each needs its own`));
    }
    const resolved = resolveSet(document, field, about);
    if (resolved.ok) measurements.push(resolved.value);
    else problems.push(...resolved.problems);
  });
  const { carriedSet = null } = block;
  if (carriedSet !== null && !block.sets.some(({ name }) => name === carriedSet)) {
    const names = block.sets.map(({ name }) => `"${name}"`).join(", ");
    problems.push(at("measurements.carriedSet", `there is no set "${carriedSet}"; the sets are ${names}`));
  }
  return problems.length > 0
    ? { ok: false, problems }
    : { ok: true, value: { measurements, findCauses: block.likelyCauses ?? true, carriedSet } };
}

type SetReading =
  | { readonly ok: true; readonly value: CaseMeasurement }
  | { readonly ok: false; readonly problems: readonly Problem[] };

function resolveSet(document: MeasurementSetDocument, field: string, about: MeasurementSurroundings): SetReading {
  if (document.fromTunnel === true && !about.hasTunnelRuns) {
    const message =
      "needs a tunnel block with runs in the case; on the page, take the test from the view of tunnel tests";
    return { ok: false, problems: [at(`${field}.fromTunnel`, message)] };
  }
  const resolved = resolveDesign(document, about.sections);
  if (!resolved.ok) {
    return { ok: false, problems: [at(`${field}.${resolved.problem.field}`, resolved.problem.message)] };
  }
  const { name: designName, design, width, scale, referenceText, shownOn } = resolved.value;
  const fluid = fluidOf(document, about);
  if (!fluid.ok) return { ok: false, problems: [at(`${field}.fluid.${fluid.problem.field}`, fluid.problem.message)] };
  const roughness = roughnessOf(document, width);
  if (roughness !== null && roughness > roughnessRatioBounds.to) {
    const message = `is ks/D ${roughness.toPrecision(3)}; it must be at most ${roughnessRatioBounds.to}, here ${(roughnessRatioBounds.to * width).toPrecision(3)} m`;
    return { ok: false, problems: [at(`${field}.sandGrainRoughnessMetres`, message)] };
  }
  const reading = readStatedPoints(document, field, {
    reynoldsPerSpeed: fluid.value === null ? null : width / fluid.value.kinematicViscosity,
    scale,
  });
  if (!reading.ok) return reading;
  const { name, kind, source } = document;
  return {
    ok: true,
    value: {
      set: {
        name,
        kind,
        source,
        direction: document.direction ?? null,
        conditions: {
          turbulenceIntensity: document.turbulencePercent === undefined ? null : fractionOf(document.turbulencePercent),
          sandGrainRoughnessRatio: roughness,
          blockageRatio: document.blockageRatio ?? null,
          blockageCorrected: document.blockageCorrected ?? false,
          lengthToWidth: document.lengthToWidth ?? null,
          ends: document.ends ?? "endless",
        },
        points: reading.points,
      },
      note: document.note ?? null,
      designName,
      design,
      referenceText,
      shownOn,
      fromTunnel: document.fromTunnel ?? false,
      skipped: reading.skipped,
    },
  };
}

function fluidOf({ fluid }: MeasurementSetDocument, about: MeasurementSurroundings): Result<FluidProperties | null> {
  return fluid === undefined ? success(about.fluid) : resolveFluid(fluid);
}

function roughnessOf(document: MeasurementSetDocument, width: number): number | null {
  if (document.sandGrainRoughnessMetres !== undefined) return document.sandGrainRoughnessMetres / width;
  return document.sandGrainRoughnessRatio ?? null;
}

function at(field: string, message: string): Problem {
  return { code: "measurements", message: `${field}: ${message}`, field };
}
