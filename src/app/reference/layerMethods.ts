import type { LayerMethodName } from "../../../shared/engine/layer/layerMethodName";

/** What a choice of layer method is called, and what to know of it. */
export interface LayerMethodText {
  readonly label: string;
  readonly hint: string;
}

export const layerMethodTexts: Readonly<Record<LayerMethodName, LayerMethodText>> = {
  integral: {
    label: "Integral, rough walls and turbulence",
    hint: "The engine's own: its drag was calibrated and checked with it.",
  },
  textbook: {
    label: "Textbook: Thwaites, Michel, Head",
    hint: "For comparison: pin the design first. Transition as in a quiet stream, turbulent layers as on a smooth wall; the drag was not checked.",
  },
};
