import { type Design, demoDesign, designRequest } from "../../shared/case/design";
import type { Solved } from "../../src/app/section/solved";
import { createSolver } from "../../workers/solverApi";

/** A design solved here and now, as the page's worker would. */
export async function solvedSection(change: Partial<Design> = {}): Promise<Solved> {
  const design = { ...demoDesign, ...change };
  const made = designRequest(design);
  if (!made.ok) throw new Error(made.problem.message);
  const answer = await createSolver().solveNow(made.value.request, "full");
  if (!answer.ok) throw new Error(answer.problem.message);
  return { design, fluid: made.value.fluid, solution: answer.value };
}
