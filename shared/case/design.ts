import type { FluidProperties, FluidSpec } from "../engine/fluid/fluidSpec";
import { resolveFluid } from "../engine/fluid/resolveFluid";
import type { SectionSpec } from "../engine/geometry/sectionSpec";
import type { LayerMethodName } from "../engine/layer/layerMethodName";
import type { SectionRequest } from "../engine/section/sectionRequest";
import { type Result, success } from "../result";

/** What a person works on: one section in one stream. SI units and radians; plain data, so that it can be kept. */
export interface Design {
  readonly title: string;
  readonly section: SectionSpec;
  /** The section's own name; null names it by its dimensions. */
  readonly sectionName: string | null;
  /** Nose up, rad. */
  readonly incidence: number;
  /** Gap between the lowest point and a floor along the stream, m: 0 when the section lies on it, null without a floor. */
  readonly floorGap: number | null;
  readonly fluid: FluidSpec;
  /** m/s */
  readonly speed: number;
  /** Fraction. */
  readonly turbulenceIntensity: number;
  /** ks, m */
  readonly sandGrainRoughness: number;
  readonly trips: readonly DesignTrip[];
  readonly panelCount: number;
  /** How its boundary layers are worked out; "integral" when left out, as in designs that were kept before there was a choice. */
  readonly layerMethod?: LayerMethodName;
}

/** A trip at an arc length from the nose and with a height, m. */
export interface DesignTrip {
  readonly side: "upper" | "lower";
  readonly arc: number;
  readonly height: number;
}

/** The demo: the profile section of the Harbour League's candidate puck in pool water. */
export const demoDesign: Design = {
  title: "Harbour League candidate puck, profile section",
  section: { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.008 },
  sectionName: null,
  incidence: 0,
  floorGap: null,
  fluid: { kind: "freshWater", temperatureCelsius: 27 },
  speed: 3,
  turbulenceIntensity: 0.01,
  sandGrainRoughness: 20e-6,
  trips: [],
  panelCount: 160,
};

/** The engine's request for a design, with the fluid that was looked up for it. */
export interface DesignRequest {
  readonly request: SectionRequest;
  readonly fluid: FluidProperties;
}

/** The problem's field starts with "fluid." when the fluid cannot be given. */
export function designRequest(design: Design): Result<DesignRequest> {
  const fluid = resolveFluid(design.fluid);
  if (!fluid.ok) return { ok: false, problem: { ...fluid.problem, field: `fluid.${fluid.problem.field ?? ""}` } };
  const { title: _title, sectionName: _name, ...request } = design;
  return success({ fluid: fluid.value, request: { ...request, fluid: fluid.value } });
}
