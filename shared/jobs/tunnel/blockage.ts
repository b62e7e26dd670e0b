import type { TunnelShape } from "./tunnelShape";

export const blockageMethods = ["none", "maskell", "allenVincenti"] as const;
export type BlockageMethod = (typeof blockageMethods)[number];

export const blockageMethodWords: Readonly<Record<BlockageMethod, string>> = {
  none: "no correction",
  maskell: "Maskell (1963)",
  allenVincenti: "Allen & Vincenti (1944)",
};

/** Drag coefficient and speed as they would be in an unbounded stream, over the measured ones. */
export interface BlockageCorrected {
  readonly dragCoefficient: number;
  /** Corrected speed / measured speed. */
  readonly speedRatio: number;
}

/** Whether a method was made for a body and a blockage like these. */
export interface BlockageRange {
  /** null when the method has no meaning here at all, so that nothing is computed. */
  readonly isInRange: boolean | null;
  readonly reason: string;
}

/**
 * Blockage factor eps of flows that separate for good. Source: Maskell (1963), ARC R&M 3400: 5/2 for blunt plates of
 * aspect ratio 1 to 10, 0.96 in two dimensions (from memory). On circular cylinders 0.96 and Allen & Vincenti's formula
 * were found to be the best of the known ones below the drag crisis, neither above it: Anthoine, Olivari & Portugaels
 * (2009), Wind and Structures 12 (abstract read; authors and journal from memory).
 */
export const maskellFactor = { finite: 2.5, twoDimensional: 0.96 } as const;

/**
 * Maskell's correction: q_c / q = 1 + eps Cd S / C, Cd_c = Cd / (1 + eps Cd S / C).
 * Source: Maskell (1963), ARC R&M 3400.
 * @param dragCoefficient on the area S
 * @param blockageRatio   S / C with C the area of the test section; of a section that spans it, width / height
 * @param factor          eps, 0 or more
 */
export function maskell(dragCoefficient: number, blockageRatio: number, factor: number): BlockageCorrected {
  const pressureRatio = 1 + factor * dragCoefficient * blockageRatio;
  return { dragCoefficient: dragCoefficient / pressureRatio, speedRatio: Math.sqrt(Math.max(0, pressureRatio)) };
}

/**
 * Correction of a circular section that spans the tunnel: U_c / U = 1 + Cd (d/h) / 4 + 0.82 (d/h)^2,
 * Cd_c / Cd = 1 - Cd (d/h) / 2 - 2.5 (d/h)^2. Source: Allen & Vincenti (1944), NACA TR 782.
 * @param dragCoefficient on the diameter
 * @param blockageRatio   diameter / height of the tunnel
 * @param share           1 for the correction as published; other values stretch it, for its uncertainty
 */
export function allenVincenti(dragCoefficient: number, blockageRatio: number, share = 1): BlockageCorrected {
  const r = blockageRatio;
  return {
    dragCoefficient: dragCoefficient * (1 - share * (0.5 * dragCoefficient * r + 2.5 * r * r)),
    speedRatio: 1 + share * (0.25 * dragCoefficient * r + 0.82 * r * r),
  };
}

/** A correction for a shape. @param share 1 as published; see allenVincenti */
export function correctBlockage(
  method: BlockageMethod,
  shape: Pick<TunnelShape, "kind">,
  dragCoefficient: number,
  blockageRatio: number,
  share = 1,
): BlockageCorrected {
  switch (method) {
    case "none":
      return { dragCoefficient, speedRatio: 1 };
    case "maskell": {
      const factor = shape.kind === "section" ? maskellFactor.twoDimensional : maskellFactor.finite;
      return maskell(dragCoefficient, blockageRatio, share * factor);
    }
    case "allenVincenti":
      return allenVincenti(dragCoefficient, blockageRatio, share);
  }
}

/** Largest ratios that the methods were checked at; from memory, low confidence. */
const mostRatio = { maskell: 0.1, allenVincenti: 0.2 };

/** Streamwise length / height up to which a bluff body is taken to keep its flow separated. Common practice, no source. */
const staysSeparated = 1;

/** Whether a method holds for a shape at a blockage, and why. */
export function blockageRange(method: BlockageMethod, shape: TunnelShape, blockageRatio: number): BlockageRange {
  const ratio = `${Number((100 * blockageRatio).toPrecision(2))} %`;
  if (method === "none") {
    return blockageRatio < 0.02
      ? {
          isInRange: true,
          reason: `blockage ${ratio}: the correction is about as small as the uncertainty of most tests`,
        }
      : {
          isInRange: false,
          reason: `blockage ${ratio} raises the speed at the model; without a correction the drag coefficient is too high`,
        };
  }
  const isSmall = blockageRatio <= mostRatio[method];
  const limit = `${100 * mostRatio[method]} %`;
  if (method === "allenVincenti") {
    if (shape.kind !== "section") {
      return { isInRange: null, reason: "holds for sections that span the tunnel, not for a body with free ends" };
    }
    if (!shape.isCircle) {
      return { isInRange: false, reason: "its solid-blockage term is that of a circle; this section is none" };
    }
    return { isInRange: isSmall, reason: `circular section, blockage ${ratio} (linear terms, best below ${limit})` };
  }
  if (!isSmall) return { isInRange: false, reason: `blockage ${ratio}; checked up to about ${limit}` };
  const slenderness =
    shape.kind === "section"
      ? shape.length / shape.width
      : shape.attitude === "faceOn"
        ? shape.spec.thicknessMetres / shape.spec.diameterMetres
        : shape.spec.diameterMetres / shape.spec.thicknessMetres;
  if (shape.kind === "section" && shape.isCircle) {
    return {
      isInRange: true,
      reason: `fully separated flow, blockage ${ratio}; above the crisis the wake is narrow and it over-corrects`,
    };
  }
  return slenderness <= staysSeparated
    ? { isInRange: true, reason: `short body, flow separated for good, blockage ${ratio}` }
    : {
        isInRange: false,
        reason: "made for flow that stays separated; on a body this long it may come back to the sides",
      };
}
