import type { LitElement, ReactiveController } from "lit";
import { paintScene } from "../../scene/paintScene";
import type { Scene } from "../../scene/scene";

type Host = LitElement;

/** Keeps a canvas inside a component painted, and knows the size that the picture is given. */
export class SceneCanvas implements ReactiveController {
  readonly #host: Host;
  readonly #selector: string;
  #sizes: ResizeObserver | null = null;
  #painted: Scene | null = null;
  width = 0;
  height = 0;

  /** @param selector of the box that holds the canvas, in the component's own root */
  constructor(host: Host, selector = ".picture") {
    this.#host = host;
    this.#selector = selector;
    host.addController(this);
  }

  hostConnected(): void {
    void this.#host.updateComplete.then(() => {
      const box = this.#box();
      if (box === null || this.#sizes !== null || !this.#host.isConnected) return;
      this.#sizes = new ResizeObserver(([entry]) => {
        const { width, height } = entry.contentRect;
        if (Math.abs(width - this.width) < 0.5 && Math.abs(height - this.height) < 0.5) return;
        [this.width, this.height] = [Math.floor(width), Math.floor(height)];
        this.#host.requestUpdate();
      });
      this.#sizes.observe(box);
    });
  }

  hostDisconnected(): void {
    this.#sizes?.disconnect();
    this.#sizes = null;
  }

  get hasSize(): boolean {
    return this.width > 40 && this.height > 20;
  }

  /** Paints after the component has rendered; the same scene is not painted twice. */
  paint(scene: Scene | null): void {
    const canvas = this.#box()?.querySelector("canvas") ?? null;
    if (canvas === null || scene === null || scene === this.#painted) return;
    this.#painted = scene;
    paintScene(canvas, scene);
  }

  #box(): HTMLElement | null {
    return this.#host.renderRoot.querySelector<HTMLElement>(this.#selector);
  }
}
