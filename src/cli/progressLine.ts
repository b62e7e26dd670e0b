/** Milliseconds before the first word, so that short work stays silent, and between lines where no line can be redrawn. */
const silentFor = 1000;
const betweenLines = 5000;

/** What a progress line is written to: standard error, or a stand-in. */
export interface ProgressStream {
  readonly isTTY?: boolean;
  readonly columns?: number;
  write(text: string): unknown;
}

/** A progress line for long work: redrawn in place on a terminal, now and then a new line elsewhere. */
export class ProgressLine {
  private readonly started: number;
  private lastWritten: number | null = null;

  constructor(
    private readonly stream: ProgressStream,
    private readonly now: () => number = () => performance.now(),
  ) {
    this.started = this.now();
  }

  /** Tells how far the work is; writes only when it is time to. */
  update(done: number, total: number, label: string): void {
    const time = this.now();
    const isTerminal = this.stream.isTTY === true;
    if (time - this.started < silentFor) return;
    if (!isTerminal && this.lastWritten !== null && time - this.lastWritten < betweenLines) return;
    this.lastWritten = time;
    const text = `${done} of ${total} steps, ${((time - this.started) / 1000).toFixed(0)} s: ${label}`;
    this.stream.write(isTerminal ? `\r${text.slice(0, (this.stream.columns ?? 80) - 1)}\u001b[K` : `${text}\n`);
  }

  /** Clears the line of a terminal, so that what follows starts clean. */
  end(): void {
    if (this.stream.isTTY === true && this.lastWritten !== null) this.stream.write("\r\u001b[K");
  }
}
