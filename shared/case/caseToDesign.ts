import { largestCaseBytes } from "../document/limits";
import { parseDocument } from "../document/parseDocument";
import { sectionSpecs } from "../document/sectionSpecs";
import type { FluidSpec } from "../engine/fluid/fluidSpec";
import { resolveFluid } from "../engine/fluid/resolveFluid";
import type { SurfacePattern } from "../engine/pattern/surfacePattern";
import { contourExtent } from "../engine/section/contourExtent";
import { fractionOf } from "../numerics/degreesAndPercent";
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
  const { shapes, speeds, walls, turbulenceIntensities } = reading.value;
  if (shapes.length === 0) {
    const message = `${fileName} has no sections and no pucks, so there is no section to work on.`;
    return { ok: false, problems: [{ code: "no-section", message, field: "sections" }] };
  }
  const [shape] = shapes;
  const [{ section }] = caseSections(document);
  const { incidence } = shape;
  const width = contourExtent(shape.section, incidence);
  const fluid = document.fluid ?? standardFluid;
  const properties = resolveFluid(fluid);
  if (!properties.ok) return { ok: false, problems: [properties.problem] };
  const { kinematicViscosity } = properties.value;
  const middle = speeds[Math.floor((speeds.length - 1) / 2)];
  const [wall] = walls;
  const point = document.workingPoint;
  const speed = "speed" in middle ? middle.speed : (middle.reynolds * kinematicViscosity) / width;
  const sandGrainRoughness =
    "sandGrainRoughness" in wall ? wall.sandGrainRoughness : wall.sandGrainRoughnessRatio * width;
  return {
    ok: true,
    pattern: point === undefined ? (reading.value.pattern?.pattern ?? null) : null,
    value: {
      title: document.title,
      section: sectionSpecs(section)[0].spec,
      sectionName: section.name ?? null,
      incidence,
      floorGap: shape.floorGap,
      fluid,
      speed: point?.speedMetresPerSecond ?? speed,
      turbulenceIntensity: point === undefined ? turbulenceIntensities[0] : fractionOf(point.turbulencePercent),
      sandGrainRoughness: point?.sandGrainRoughnessMetres ?? sandGrainRoughness,
      trips: (document.trips ?? []).map((trip) => ({
        side: trip.side,
        arc: trip.arcMetres ?? (trip.arcRatio ?? 0) * width,
        height: trip.heightMetres ?? (trip.heightRatio ?? 0) * width,
      })),
      panelCount: typeof document.panelCount === "number" ? document.panelCount : standardPanelCount,
      ...(document.layerMethod === undefined ? {} : { layerMethod: document.layerMethod }),
    },
  };
}
