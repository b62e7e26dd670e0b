import type { ReactiveController, ReactiveControllerHost } from "lit";
import { loadPublishedGroups, publishedGroups } from "../../desk/publishedGroups";
import { tell } from "../../store/notices";

type TourModule = typeof import("../../tour/tourSolving");

/** Gallery and tour: their programs are loaded when they are first opened, and the tour is solved then. */
export class ExtraDialogs implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  hasGallery = false;
  tour: TourModule | null = null;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {}

  get published() {
    return publishedGroups.value;
  }

  async open(dialog: "gallery" | "tour"): Promise<void> {
    try {
      if (dialog === "gallery") {
        await import("../gallery/gallery");
        this.hasGallery = true;
      } else if (this.tour === null) {
        const [module] = await Promise.all([import("../../tour/tourSolving"), import("../tour/tour")]);
        this.tour = module;
        module.tour.subscribe(() => this.#host.requestUpdate());
        publishedGroups.subscribe(() => this.#host.requestUpdate());
        void loadPublishedGroups();
        void module.solveTour();
      }
      this.#host.requestUpdate();
    } catch {
      tell("warning", "This part could not be loaded. Try again when the network is back.");
    }
  }
}
