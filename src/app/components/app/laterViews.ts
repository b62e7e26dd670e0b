import { html, type TemplateResult } from "lit";
import type { ViewName } from "../../store/viewNames";

/** A view whose program is loaded when it is first asked for. What it renders is one element, a `ViewElement`. */
export interface LaterView {
  readonly load: () => Promise<unknown>;
  readonly render: () => TemplateResult;
}

/** Every view but the first. */
export const laterViews: Readonly<Record<Exclude<ViewName, "section">, LaterView>> = {
  puck: {
    load: () => import("../puck-view/puck-view"),
    render: () => html`<ww-puck-view></ww-puck-view>`,
  },
  tunnel: {
    load: () => import("../tunnel-view/tunnel-view"),
    render: () => html`<ww-tunnel-view></ww-tunnel-view>`,
  },
  trial: {
    load: () => import("../trial-view/trial-view"),
    render: () => html`<ww-trial-view></ww-trial-view>`,
  },
  compare: {
    load: () => import("../compare-view/compare-view"),
    render: () => html`<ww-compare-view></ww-compare-view>`,
  },
};

export const laterViewNames = Object.keys(laterViews) as Exclude<ViewName, "section">[];
