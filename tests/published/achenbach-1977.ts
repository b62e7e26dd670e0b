import { type PublishedSource, published } from "./publishedValue";
import { roughStream } from "./streams";

/** Reynolds number at the lowest drag of a rough cylinder, Re = 6000 (ks / D)^-1/2. */
export function roughCriticalReynolds(roughnessRatio: number): number {
  return 6000 / Math.sqrt(roughnessRatio);
}

export const achenbach1977: PublishedSource = {
  name: "Achenbach 1977",
  nature: "measurement",
  citation:
    "E. Achenbach (1977), The effect of surface roughness on the heat transfer from a circular cylinder to the cross flow of air, Int. J. Heat Mass Transfer 20, 359-369",
  remark: "Law from memory, medium confidence; no turbulence in it.",
  values: [1e-3, 1.1e-3, 3e-3, 4.5e-3, 9e-3, 1e-2, 2e-2].map((ratio) =>
    published(
      {
        group: "rough cylinder",
        scatter: { relative: 0.2 },
        grade: ratio <= 1e-2 ? "B" : "C",
        howObtained: "computed from the stated formula",
      },
      { kind: "reynoldsAtLowestDrag", ...roughStream(ratio), reynoldsFrom: 2e4, reynoldsTo: 1e6 },
      Math.round(roughCriticalReynolds(ratio) / 100) * 100,
    ),
  ),
};
