import { type PublishedSource, published } from "./publishedValue";
import { smoothStream } from "./streams";

/** Mean separation angle in degrees, 270 < Re < 1e5. */
export function jiangSeparationDegrees(reynolds: number): number {
  return 78.8 + 505 / Math.sqrt(reynolds);
}

export const jiang2020: PublishedSource = {
  name: "Jiang 2020",
  nature: "theory",
  citation:
    "H. Jiang (2020), Separation angle for flow past a circular cylinder in the subcritical regime, Phys. Fluids 32, 014106",
  remark: "Fit to simulations and measurements; constants from memory, medium confidence.",
  values: [1e4, 2e4, 3e4, 6e4, 1e5].map((reynolds) =>
    published(
      {
        group: "smooth cylinder",
        scatter: { absolute: 2 },
        grade: "B",
        howObtained: "computed from the stated formula",
      },
      { kind: "separationAngle", ...smoothStream(), reynolds },
      Number(jiangSeparationDegrees(reynolds).toFixed(1)),
    ),
  ),
};
