import { type PublishedSource, published } from "./publishedValue";
import { smoothStream } from "./streams";

/** Strouhal number, 1.6e3 < Re < 1.5e5. */
export function norbergStrouhal(reynolds: number): number {
  return 0.1853 + 0.0261 * Math.exp(-0.9 * Math.log10(reynolds / 1600) ** 2.3);
}

export const norberg2003: PublishedSource = {
  name: "Norberg 2003",
  nature: "measurement",
  citation:
    "C. Norberg (2003), Fluctuating lift on a circular cylinder: review and new measurements, J. Fluids Struct. 17, 57-96",
  remark: "Fit to measurements; constants from memory, medium confidence.",
  values: [1e4, 2e4, 5e4, 1e5, 1.4e5].map((reynolds) =>
    published(
      {
        group: "smooth cylinder",
        scatter: { absolute: 0.008 },
        grade: "B",
        howObtained: "computed from the stated formula",
      },
      { kind: "strouhal", ...smoothStream(), reynolds },
      Number(norbergStrouhal(reynolds).toFixed(3)),
    ),
  ),
};

export const norberg1994: PublishedSource = {
  name: "Norberg 1994",
  nature: "measurement",
  citation:
    "C. Norberg (1994), An experimental investigation of the flow around a circular cylinder: influence of aspect ratio, J. Fluid Mech. 258, 287-316; with Norberg (1987)",
  remark: "Base pressure of long cylinders.",
  values: (
    [
      [1e4, -1.1],
      [2e4, -1.15],
      [1e5, -1.2],
    ] as const
  ).map(([reynolds, value]) =>
    published(
      {
        group: "smooth cylinder",
        scatter: { absolute: 0.08 },
        grade: "B",
        howObtained: "from memory, medium confidence",
      },
      { kind: "basePressureCoefficient", ...smoothStream(), reynolds },
      value,
    ),
  ),
};
