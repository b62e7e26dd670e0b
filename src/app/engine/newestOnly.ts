/**
 * Runs few jobs at a time, one unless said otherwise. A newer request replaces the one that waits, so while a handle is dragged only the newest is
 * solved next and what lies between is dropped.
 */
export class NewestOnly<Request> {
  readonly #run: (request: Request) => Promise<void>;
  #waiting: { readonly request: Request } | null = null;
  readonly #mostRunning: number;
  #running = 0;
  #dropped = 0;

  /** @param mostRunning  2 keeps a worker busy while the page still draws its last answer; answers come in order */
  constructor(run: (request: Request) => Promise<void>, mostRunning = 1) {
    this.#run = run;
    this.#mostRunning = mostRunning;
  }

  /** Requests that were never run because a newer one came. */
  get dropped(): number {
    return this.#dropped;
  }

  get isBusy(): boolean {
    return this.#running > 0;
  }

  submit(request: Request): void {
    if (this.#waiting !== null) this.#dropped++;
    this.#waiting = { request };
    if (this.#running < this.#mostRunning) void this.#drain();
  }

  async #drain(): Promise<void> {
    this.#running++;
    try {
      while (this.#waiting !== null) {
        const { request } = this.#waiting;
        this.#waiting = null;
        await this.#run(request);
      }
    } finally {
      this.#running--;
    }
  }
}
