/** Jobs that take long on the main thread, run one per pause so that input is answered in between. */
export class DrawQueue {
  readonly #waiting = new Map<object, () => Promise<void>>();
  #running = false;

  /** Asks for a job; an older job of the same owner that has not run yet is replaced. */
  request(owner: object, job: () => Promise<void>): void {
    this.#waiting.set(owner, job);
    if (!this.#running) void this.#drain();
  }

  withdraw(owner: object): void {
    this.#waiting.delete(owner);
  }

  async #drain(): Promise<void> {
    this.#running = true;
    try {
      for (;;) {
        const [next] = this.#waiting;
        if (next === undefined) return;
        await pause();
        const job = this.#waiting.get(next[0]);
        this.#waiting.delete(next[0]);
        await job?.();
      }
    } finally {
      this.#running = false;
    }
  }
}

function pause(): Promise<void> {
  return new Promise((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve, 0));
  });
}
