/** The layer methods, the engine's own first. */
export const layerMethodNames = ["integral", "textbook"] as const;

/**
 * How boundary layers are worked out: "integral" is the engine's own choice, on which its drag was calibrated and
 * compared; "textbook" is Thwaites' laminar layer, Michel's transition and Head's turbulent layer.
 */
export type LayerMethodName = (typeof layerMethodNames)[number];
