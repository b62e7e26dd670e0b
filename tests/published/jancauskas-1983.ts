import { type PublishedSource, published } from "./publishedValue";
import { rectangle, sectionStream } from "./streams";

export const jancauskas1983: PublishedSource = {
  name: "Jancauskas 1983",
  nature: "measurement",
  citation:
    "E. D. Jancauskas (1983), The cross-wind excitation of bluff structures, thesis, Monash University; as printed in CIRSOC 102 (2025), annex I, table I.3A",
  remark: "Sharp rectangles in a smooth stream; no Reynolds number in the table.",
  values: (
    [
      [0.1, 2.2],
      [0.65, 3.0],
      [2, 1.6],
      [4, 1.3],
    ] as const
  ).map(([lengthToHeight, value]) =>
    published(
      { group: "rectangles over length/height", scatter: { relative: 0.1 }, grade: "A", howObtained: "public copy" },
      { kind: "dragCoefficient", ...sectionStream(rectangle(lengthToHeight)), reynolds: 1e5 },
      value,
    ),
  ),
};
