import { largestCaseBytes } from "../document/limits";
import { parseDocument } from "../document/parseDocument";
import { sectionSpecs } from "../document/sectionSpecs";
import type { FluidSpec } from "../engine/fluid/fluidSpec";
import { resolveFluid } from "../engine/fluid/resolveFluid";
import type { SurfacePattern } from "../engine/pattern/surfacePattern";
import { contourExtent } from "../engine/section/contourExtent";
import type { Problem } from "../result";
import { caseDocument } from "./caseDocument";
import { caseSections } from "./caseSections";
import type { Design } from "./design";
import { checkCase } from "./readCase";

export type DesignReading =
  | {
      readonly ok: true;
      readonly value: Design;
      /** The pattern that its roughness was estimated from; null where it was given. */
      readonly pattern: SurfacePattern | null;
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A case without a fluid is worked on in pool water; the speed then follows from its Reynolds number. */
const standardFluid: FluidSpec = { kind: "freshWater", temperatureCelsius: 27 };

/** Panels of a design whose case leaves the number to the convergence rule. */
const standardPanelCount = 160;

/**
 * The design to start from when a case is opened: its first section and incidence at its working point; without one, in
 * the middle of its streams at its first roughness and turbulence.
 */
export function caseToDesign(text: string, fileName: string): DesignReading {
  if (text.length > largestCaseBytes) {
    const message = `${fileName} has ${text.length} characters; a case file must have at most ${largestCaseBytes}.`;
    return { ok: false, problems: [{ code: "size", message }] };
  }
  const parsed = parseDocument(text, caseDocument);
  if (!parsed.ok) return parsed;
  const document = parsed.value;
  const reading = checkCase(document, fileName);
  if (!reading.ok) return reading;
  const { shapes, stream, roughness, turbulencePercents } = reading.value;
  if (shapes.length === 0) {
    const message = `${fileName} has no sections and no pucks, so there is no section to work on.`;
    return { ok: false, problems: [{ code: "no-section", message, field: "sections" }] };
  }
  const [shape] = shapes;
  const [{ section }] = caseSections(document);
  const incidence = (shape.incidenceDegrees * Math.PI) / 180;
  const width = contourExtent(shape.contour, incidence);
  const fluid = document.fluid ?? standardFluid;
  const properties = resolveFluid(fluid);
  if (!properties.ok) return { ok: false, problems: [properties.problem] };
  const middle = stream.values[Math.floor((stream.values.length - 1) / 2)];
  const [wall] = roughness.values;
  const point = document.workingPoint ?? {
    speedMetresPerSecond: stream.by === "speed" ? middle : (middle * properties.value.kinematicViscosity) / width,
    sandGrainRoughnessMetres: roughness.by === "height" ? wall : wall * width,
    turbulencePercent: turbulencePercents[0],
  };
  return {
    ok: true,
    pattern: document.workingPoint === undefined ? (reading.value.pattern?.pattern ?? null) : null,
    value: {
      title: document.title,
      section: sectionSpecs(section)[0].spec,
      sectionName: section.name ?? null,
      incidence,
      floorGap: shape.floorGapMetres,
      fluid,
      speed: point.speedMetresPerSecond,
      turbulenceIntensity: point.turbulencePercent / 100,
      sandGrainRoughness: point.sandGrainRoughnessMetres,
      trips: (document.trips ?? []).map((trip) => ({
        side: trip.side,
        arc: trip.arcMetres ?? (trip.arcRatio ?? 0) * width,
        height: trip.heightMetres ?? (trip.heightRatio ?? 0) * width,
      })),
      panelCount: typeof document.panelCount === "number" ? document.panelCount : standardPanelCount,
    },
  };
}
