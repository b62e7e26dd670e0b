/** Starts one puck worker. */
export function spawnPuckSolver(): Worker {
  return new Worker(new URL("../../../workers/puck.worker.ts", import.meta.url), { type: "module" });
}
