/** Every source and every design has a mark of its own. */
export type MarkName = "circle" | "square" | "diamond" | "triangle" | "nabla" | "hexagon" | "cross" | "bow" | "plus";
