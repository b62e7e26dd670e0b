import * as z from "zod";
import { fewestPanels, mostPanels } from "../engine/geometry/gradedNodes";

const rule = `it must be "auto" or an even whole number from ${fewestPanels} to ${mostPanels}`;

/** How many panels a section gets. */
export const evenPanelCount = z
  .union(
    [z.literal("auto"), z.int({ error: rule }).gte(fewestPanels, rule).lte(mostPanels, rule).multipleOf(2, rule)],
    { error: rule },
  )
  .describe(
    `Panels around a section, even, ${fewestPanels} to ${mostPanels}, or "auto" (the default): enough for the bends of the section, doubled at most twice until the drag coefficient stays within 0.5 %`,
  );
