import { type PublishedSource, published } from "./publishedValue";
import { roughStream } from "./streams";

export const achenbachHeinecke1981: PublishedSource = {
  name: "Achenbach and Heinecke 1981",
  citation:
    "E. Achenbach and E. Heinecke (1981), On vortex shedding from smooth and rough cylinders in the range of Reynolds numbers 6e3 to 5e6, J. Fluid Mech. 109, 239-251",
  values: [7.5e-4, 3e-3, 9e-3].map((ratio) =>
    published(
      {
        group: "rough cylinder",
        scatter: { absolute: 0.02 },
        grade: "C",
        howObtained: "from memory, medium confidence",
      },
      { kind: "meanStrouhal", ...roughStream(ratio), reynoldsFrom: 1e6, reynoldsTo: 5e6 },
      0.25,
      "one level for all rough cylinders",
    ),
  ),
};
