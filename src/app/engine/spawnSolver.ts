/** Starts one solver worker. */
export function spawnSolver(): Worker {
  return new Worker(new URL("../../../workers/solver.worker.ts", import.meta.url), { type: "module" });
}
