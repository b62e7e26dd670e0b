export type ViewName = "section" | "puck" | "tunnel" | "trial" | "compare";

/** The views by the name on their button, in the order of the work. */
export const viewTexts: Readonly<Record<ViewName, string>> = {
  section: "Section",
  puck: "Puck",
  tunnel: "Tunnel",
  trial: "Players",
  compare: "Measured",
};

export const viewNames = Object.keys(viewTexts) as ViewName[];
