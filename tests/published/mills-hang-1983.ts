import { type PublishedSource, published } from "./publishedValue";

/** Local friction of a fully rough plate at x / ks, 150 to 1.5e7. */
export function millsHangFriction(lengthToRoughness: number): number {
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: a fitted constant, not the root of one half
  return (3.476 + 0.707 * Math.log(lengthToRoughness)) ** -2.46;
}

/** Least x / ks that the formula is given for. */
export const millsHangLeast = 150;

export const millsHang1983: PublishedSource = {
  name: "Mills and Hang 1983",
  nature: "theory",
  citation:
    "A. F. Mills and X. Hang (1983), On the skin friction coefficient for a fully rough flat plate, J. Fluids Eng. 105, 364-365",
  remark:
    "Fitted to the measurements of Pimenta et al. (1975); formula and range from memory, medium confidence. 9 to 17 % below Prandtl and Schlichting (1934), whose formula rests on pipes.",
  values: [millsHangLeast, 1e3, 1e4, 1e5].map((lengthToRoughness) =>
    published(
      {
        group: "boundary-layer flows",
        scatter: { relative: 0.05 },
        grade: "B",
        howObtained: "from memory, medium confidence",
      },
      { kind: "roughPlateFriction", lengthToRoughness },
      Number(millsHangFriction(lengthToRoughness).toPrecision(4)),
    ),
  ),
};
