import { type PublishedSource, published } from "./publishedValue";
import { smoothStream } from "./streams";

const recalled = { group: "smooth cylinder", grade: "B", howObtained: "from memory, high confidence" } as const;
const stream = { ...smoothStream(), reynolds: 1e6 } as const;

export const shih1993: PublishedSource = {
  name: "Shih et al. 1993",
  nature: "measurement",
  citation:
    "W. C. L. Shih, C. Wang, D. Coles and A. Roshko (1993), Experiments on flow past rough circular cylinders at large Reynolds numbers, J. Wind Eng. Ind. Aerodyn. 49, 351-368",
  remark:
    "Its weak spectral peak at Strouhal 0.22 disagrees with the 0.46 to 0.48 of Bearman and Schewe; both stay in.",
  values: [
    published({ ...recalled, scatter: { absolute: 0.04 } }, { kind: "dragCoefficient", ...stream }, 0.24),
    published({ ...recalled, scatter: { absolute: 0.06 } }, { kind: "basePressureCoefficient", ...stream }, -0.33),
    published({ ...recalled, grade: "C", scatter: { absolute: 0.03 } }, { kind: "strouhal", ...stream }, 0.22),
  ],
};
