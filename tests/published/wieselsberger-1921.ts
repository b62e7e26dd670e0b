import { type PublishedSource, published } from "./publishedValue";
import { smoothStream } from "./streams";

/** Re and Cd, symbols of figure 1 of a photostat. */
const symbols: readonly (readonly [number, number])[] = [
  [1.088e4, 1.042],
  [1.298e4, 1.068],
  [1.817e4, 1.071],
  [1.832e4, 1.104],
  [2.017e4, 1.107],
  [2.343e4, 1.103],
  [3.129e4, 1.104],
  [6.059e4, 1.104],
  [7.617e4, 1.105],
  [8.471e4, 1.102],
  [9.703e4, 1.104],
  [9.738e4, 1.041],
  [1.099e5, 1.105],
  [1.224e5, 1.105],
  [1.696e5, 1.102],
  [1.806e5, 1.103],
  [2.046e5, 1.027],
  [2.066e5, 1.043],
  [3.256e5, 0.768],
  [3.549e5, 0.7],
  [3.852e5, 0.618],
  [6.075e5, 0.45],
  [8.411e5, 0.318],
  [9.324e5, 0.32],
];

export const wieselsberger1921: PublishedSource = {
  name: "Wieselsberger 1921",
  nature: "measurement",
  experiment: "Wieselsberger",
  citation:
    "C. Wieselsberger (1921), New data on the laws of fluid resistance, NACA TN 84, figure 1; digitised by others",
  remark:
    "The same experiment as Wieselsberger (1922), read by somebody else, 5 to 7 % lower throughout: what two careful readings of one figure may differ by.",
  values: symbols
    .filter(([reynolds]) => reynolds >= 1.5e4)
    .map(([reynolds, value]) =>
      published(
        {
          group: "smooth cylinder",
          scatter: { relative: 0.06 },
          grade: "C",
          howObtained: "public copy of a digitised figure",
          shownOnly: "a second reading of Wieselsberger (1922)",
        },
        { kind: "dragCoefficient", ...smoothStream(), reynolds },
        value,
      ),
    ),
};
