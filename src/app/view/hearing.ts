import type { ReactiveController, ReactiveControllerHost } from "lit";

type Listeners = { readonly [Name in keyof PageEvents]?: (detail: PageEvents[Name]) => void };

/** Answers the events that rise to a component from those inside it. */
export class Hearing implements ReactiveController {
  readonly #host: EventTarget;
  readonly #entries: readonly (readonly [string, (event: Event) => void])[];

  constructor(host: ReactiveControllerHost & EventTarget, listeners: Listeners) {
    this.#host = host;
    this.#entries = Object.entries(listeners).map(([name, listen]) => [
      name,
      (event) => {
        event.stopPropagation();
        (listen as (detail: unknown) => void)((event as CustomEvent<unknown>).detail);
      },
    ]);
    host.addController(this);
  }

  hostConnected(): void {
    for (const [name, listen] of this.#entries) this.#host.addEventListener(name, listen);
  }

  hostDisconnected(): void {
    for (const [name, listen] of this.#entries) this.#host.removeEventListener(name, listen);
  }
}
