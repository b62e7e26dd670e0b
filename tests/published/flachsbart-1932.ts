import { type PublishedSource, published } from "./publishedValue";
import { smoothStream } from "./streams";

const supercriticalPressure: readonly (readonly [number, number])[] = [
  [0, 1.0],
  [30, 0.08],
  [45, -0.8],
  [60, -1.65],
  [70, -2.15],
  [80, -2.45],
  [90, -2.45],
  [100, -2.0],
  [110, -1.4],
  [120, -0.7],
  [150, -0.3],
];

export const flachsbart1932: PublishedSource = {
  name: "Flachsbart 1932",
  nature: "measurement",
  citation:
    "O. Flachsbart (1932), Winddruck auf geschlossene und offene Gebaeude, Ergebnisse der Aerodynamischen Versuchsanstalt zu Goettingen IV; with Achenbach (1968) at Re 8.5e5",
  remark: "A band through both sources at Re 6.7e5 to 8.5e5; a bubble puts a kink between 100 and 110 degrees.",
  values: supercriticalPressure.map(([angleDegrees, value]) =>
    published(
      { group: "smooth cylinder", scatter: { absolute: 0.25 }, grade: "C", howObtained: "from memory, low confidence" },
      { kind: "pressureCoefficient", ...smoothStream(), reynolds: 7.5e5, angleDegrees },
      value,
    ),
  ),
};
