import { caseDocument } from "../../../shared/case/caseDocument";
import { contourExtent } from "../../../shared/case/contourExtent";
import { documentProblems } from "../../../shared/case/documentProblems";
import { readCaseDocument } from "../../../shared/case/readCase";
import { sectionSpecs } from "../../../shared/case/sectionSpecs";
import type { FluidSpec } from "../../../shared/fluid/fluidSpec";
import { resolveFluid } from "../../../shared/fluid/resolveFluid";
import type { Problem } from "../../../shared/result";
import type { Design } from "./design";

export type DesignReading =
  | { readonly ok: true; readonly value: Design }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A case without a fluid is worked on in pool water; the speed then follows from its Reynolds number. */
const standardFluid: FluidSpec = { kind: "freshWater", temperatureCelsius: 27 };

/** Panels of a design whose case leaves the number to the convergence rule. */
const standardPanelCount = 160;

/**
 * The design to start from when a case is opened: its first section and incidence, the middle of its streams, its first
 * roughness and turbulence.
 */
export function caseToDesign(content: unknown, fileName: string): DesignReading {
  const parsed = caseDocument.safeParse(content);
  if (!parsed.success) return { ok: false, problems: documentProblems(content, parsed.error) };
  const reading = readCaseDocument(content, fileName);
  if (!reading.ok) return reading;
  const document = parsed.data;
  const { shapes, stream, roughness, turbulencePercents } = reading.value;
  const [shape] = shapes;
  const [section] = document.sections;
  const incidence = (shape.incidenceDegrees * Math.PI) / 180;
  const width = contourExtent(shape.contour, incidence);
  const fluid = document.fluid ?? standardFluid;
  const properties = resolveFluid(fluid);
  if (!properties.ok) return { ok: false, problems: [properties.problem] };
  const middle = stream.values[Math.floor((stream.values.length - 1) / 2)];
  const [wall] = roughness.values;
  return {
    ok: true,
    value: {
      title: document.title,
      section: sectionSpecs(section)[0].spec,
      sectionName: section.name ?? null,
      incidence,
      fluid,
      speed: stream.by === "speed" ? middle : (middle * properties.value.kinematicViscosity) / width,
      turbulenceIntensity: turbulencePercents[0] / 100,
      sandGrainRoughness: roughness.by === "height" ? wall : wall * width,
      trips: (document.trips ?? []).map((trip) => ({
        side: trip.side,
        arc: trip.arcMetres ?? (trip.arcRatio ?? 0) * width,
        height: trip.heightMetres ?? (trip.heightRatio ?? 0) * width,
      })),
      panelCount: typeof document.panelCount === "number" ? document.panelCount : standardPanelCount,
    },
  };
}
