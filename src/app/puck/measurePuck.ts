import { resolveFluid } from "../../../shared/engine/fluid/resolveFluid";
import type { PuckSetting } from "../../../shared/jobs/puck/body/puckFigures";
import { puckFigures } from "../../../shared/jobs/puck/body/puckFigures";
import { problem, type Result, success } from "../../../shared/result";
import type { MeasuredPuck } from "./puckAnswers";
import type { PuckInputs } from "./puckInputs";

/** Figures of the candidate and of the baseline in the fluid of play; problems of the fluid begin with "fluid.". */
export function measurePuck(inputs: PuckInputs): Result<MeasuredPuck> {
  const fluid = resolveFluid(inputs.play.fluid);
  if (!fluid.ok) return problem(fluid.problem.code, fluid.problem.message, `fluid.${fluid.problem.field ?? ""}`);
  const setting: PuckSetting = { fluidDensity: fluid.value.density, userMaterials: inputs.userMaterials };
  const candidate = puckFigures(inputs.candidate.spec, setting);
  if (!candidate.ok) return candidate;
  const baseline = puckFigures(inputs.baseline.spec, setting);
  if (!baseline.ok) {
    return problem(baseline.problem.code, `The baseline cannot be made: ${baseline.problem.message}`, "baseline");
  }
  return success({ inputs, setting, fluid: fluid.value, candidate: candidate.value, baseline: baseline.value });
}
