/**
 * Runs one job at a time. A newer request replaces the one that waits, so while a handle is dragged only the newest is
 * solved next and what lies between is dropped.
 */
export class NewestOnly<Request> {
  readonly #run: (request: Request) => Promise<void>;
  #waiting: { readonly request: Request } | null = null;
  #running = false;
  #dropped = 0;

  constructor(run: (request: Request) => Promise<void>) {
    this.#run = run;
  }

  /** Requests that were never run because a newer one came. */
  get dropped(): number {
    return this.#dropped;
  }

  get isBusy(): boolean {
    return this.#running;
  }

  submit(request: Request): void {
    if (this.#waiting !== null) this.#dropped++;
    this.#waiting = { request };
    if (!this.#running) void this.#drain();
  }

  async #drain(): Promise<void> {
    this.#running = true;
    try {
      while (this.#waiting !== null) {
        const { request } = this.#waiting;
        this.#waiting = null;
        await this.#run(request);
      }
    } finally {
      this.#running = false;
    }
  }
}
