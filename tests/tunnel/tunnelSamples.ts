import type { FluidProperties, FluidSpec } from "../../shared/engine/fluid/fluidSpec";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import type { TunnelFacility } from "../../shared/jobs/tunnel/tunnelFacility";
import type { TunnelModel } from "../../shared/jobs/tunnel/tunnelShape";
import type { Result } from "../../shared/result";

export function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
}

export const roomAir: FluidSpec = { kind: "dryAir", temperatureCelsius: 20, pressurePascals: 101325 };

/** A circular section, 80 mm across, 0.4 m of span. */
export function circleModel(): TunnelModel {
  return {
    shape: {
      kind: "section",
      name: "circle",
      contour: value(buildContour({ family: "circle", diameter: 0.08 })),
      width: 0.08,
      length: 0.08,
      isCircle: true,
      span: 0.4,
    },
    scale: 1,
    sandGrainRoughness: 1e-5,
  };
}

export function facilityOf(fluid: FluidProperties): TunnelFacility {
  return {
    fluidSpec: roomAir,
    fluid,
    slowestSpeed: 5,
    fastestSpeed: 80,
    testSectionArea: 1,
    testSectionHeight: 2,
    turbulenceIntensity: 0.01,
    balance: { range: 500, resolution: 0.01, noise: 0.02 },
  };
}
