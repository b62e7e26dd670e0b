import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { Notifier } from "./notifier";

/** Ties a component to the part of a store that it shows: the host updates only when that part is replaced. */
export class StoreController<T, S> implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #store: Notifier<T>;
  readonly #select: (value: T) => S;
  #dispose: (() => void) | null = null;
  value: S;

  constructor(host: ReactiveControllerHost, store: Notifier<T>, select: (value: T) => S) {
    this.#host = host;
    this.#store = store;
    this.#select = select;
    this.value = select(store.value);
    host.addController(this);
  }

  hostConnected(): void {
    this.#read(this.#store.value);
    this.#dispose = this.#store.subscribe((value) => this.#read(value));
  }

  hostDisconnected(): void {
    this.#dispose?.();
    this.#dispose = null;
  }

  #read(value: T): void {
    const next = this.#select(value);
    if (Object.is(next, this.value)) return;
    this.value = next;
    this.#host.requestUpdate();
  }
}
