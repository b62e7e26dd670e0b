/** What became of one try. */
export interface Outcome {
  /** In one word, for instance "read" or "refused". */
  readonly kind: string;
  /** What must not happen, in words; empty when all is as it should be. */
  readonly faults: readonly string[];
}

/** What became of all tries of an attack. */
export interface AttackResult {
  readonly tried: number;
  /** How many ended in which way. */
  readonly kinds: Readonly<Record<string, number>>;
  /** The longest try, ms; null where it is not the program's own time. */
  readonly slowestMilliseconds: number | null;
  /** Every fault with the seed or place that shows it again. */
  readonly faults: readonly string[];
}

/** One way of attacking the program. */
export interface Attack {
  /** One word, for `--only`. */
  readonly name: string;
  /** What is attacked and what must hold, for the report. */
  readonly what: string;
  /** Tries of a full run. */
  readonly fullCount: number;
  /** @param count tries of this run; attacks that try a fixed list of places in turn may ignore it */
  readonly run: (count: number) => Promise<AttackResult>;
}

/** Gathers outcomes as they come. */
export class Gathered {
  readonly #kinds = new Map<string, number>();
  readonly #faults: string[] = [];
  #tried = 0;
  #slowest: number | null = null;

  /** @param label what shows a fault again */
  add(label: string, { kind, faults }: Outcome, milliseconds: number | null = null): void {
    this.#tried++;
    this.#kinds.set(kind, (this.#kinds.get(kind) ?? 0) + 1);
    this.#faults.push(...faults.map((fault) => `${label}: ${fault}`));
    if (milliseconds !== null) this.#slowest = Math.max(this.#slowest ?? 0, milliseconds);
  }

  get result(): AttackResult {
    return {
      tried: this.#tried,
      kinds: Object.fromEntries([...this.#kinds].sort()),
      slowestMilliseconds: this.#slowest,
      faults: this.#faults,
    };
  }
}
