/** Starts one worker of case files. */
export function spawnCaseRunner(): Worker {
  return new Worker(new URL("../../../workers/case.worker.ts", import.meta.url), { type: "module" });
}
