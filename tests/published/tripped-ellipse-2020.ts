import { type PublishedSource, published } from "./publishedValue";
import { sectionStream } from "./streams";

export const trippedEllipse2020: PublishedSource = {
  name: "Elliptic cylinder with wires 2020",
  nature: "measurement",
  citation:
    "Iranian Journal of Science and Technology, Transactions of Mechanical Engineering (2020), doi 10.1007/s40997-020-00373-6",
  remark: "Axis ratio 2, long axis along the stream, without its wires; its Re on the long axis halved to the height.",
  values: [1.95e4, 3.2e4].map((reynolds) =>
    published(
      { group: "ellipses", scatter: { relative: 0.15 }, grade: "B", howObtained: "public copy" },
      {
        kind: "dragCoefficient",
        ...sectionStream({ shape: "ellipse", lengthToHeight: 2 }),
        reynolds,
      },
      0.6,
    ),
  ),
};
