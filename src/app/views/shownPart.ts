import type { ReactiveController, ReactiveControllerHost } from "lit";
import { pageState } from "../store/pageState";
import type { ViewLook, ViewPart } from "../view/viewPart";
import { loadedParts } from "./viewRegistry";

/** Ties a component to the part of the view that is shown: the host updates when what the masthead shows of it changes. */
export class ShownPart implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #ends: (() => void)[] = [];
  #leavePart: () => void = () => {};
  #look: ViewLook | null = null;
  /** null until the shown view's program is loaded. */
  part: ViewPart | null = null;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    this.#ends = [pageState.subscribe(() => this.#follow()), loadedParts.subscribe(() => this.#follow())];
    this.#follow();
  }

  hostDisconnected(): void {
    for (const end of this.#ends) end();
    this.#leavePart();
    this.part = null;
  }

  #follow(): void {
    const part = loadedParts.value[pageState.value.view] ?? null;
    if (part === this.part) return;
    this.#leavePart();
    this.part = part;
    this.#leavePart = part?.subscribe(() => this.#compare()) ?? (() => {});
    this.#look = null;
    this.#compare();
  }

  #compare(): void {
    const look = this.part?.look() ?? null;
    const last = this.#look;
    this.#look = look;
    const isSame =
      look !== null &&
      last !== null &&
      look.title === last.title &&
      look.canUndo === last.canUndo &&
      look.canRedo === last.canRedo;
    if (!isSame) this.#host.requestUpdate();
  }
}
