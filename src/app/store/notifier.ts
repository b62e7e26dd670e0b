export type Listener<T> = (value: T) => void;

/** One value that tells its listeners when it is replaced. Setting the same object again is silent. */
export class Notifier<T> {
  #value: T;
  readonly #listeners = new Set<Listener<T>>();

  constructor(value: T) {
    this.#value = value;
  }

  get value(): T {
    return this.#value;
  }

  set value(next: T) {
    if (Object.is(next, this.#value)) return;
    this.#value = next;
    for (const listener of [...this.#listeners]) {
      // A listener that replaced the value has told everyone of the newer one; the rest must not get the older after it.
      if (!Object.is(this.#value, next)) return;
      listener(next);
    }
  }

  /** Replaces the given keys of an object value. */
  patch(change: Partial<T>): void {
    this.value = { ...this.#value, ...change };
  }

  /** Calls the listener at every change from now on. @returns a function that ends it */
  subscribe(listener: Listener<T>): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }
}
