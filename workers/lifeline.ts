/** What every worker of the page offers besides its own work. */
export interface Lifeline {
  holdLifeline(lockName: string): Promise<boolean>;
}

/**
 * Holds a named lock for as long as this worker lives. The page waits for the same lock and so learns of a crash or a
 * closed worker, which would otherwise leave its calls unanswered without any event.
 * @returns true once the lock is held; false where the browser has no locks, so that only error events tell of a crash
 */
export function holdLifeline(lockName: string): Promise<boolean> {
  if (!("locks" in navigator)) return Promise.resolve(false);
  return new Promise((resolve) => {
    void navigator.locks.request(lockName, () => {
      resolve(true);
      return new Promise<never>(() => {});
    });
  });
}
