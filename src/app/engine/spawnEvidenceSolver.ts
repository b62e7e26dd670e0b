/** Starts one evidence worker: tests, trials and measurements. */
export function spawnEvidenceSolver(): Worker {
  return new Worker(new URL("../../../workers/evidence.worker.ts", import.meta.url), { type: "module" });
}
