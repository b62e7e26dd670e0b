/**
 * A puck as a person describes it: a body of revolution about its axis, its mid-plane at height 0, with a core and a
 * coat. Plain data, lengths in metres.
 */
export interface PuckSpec {
  readonly name: string;
  readonly diameterMetres: number;
  /** Between the faces' highest points. */
  readonly thicknessMetres: number;
  readonly edge: PuckEdge;
  readonly face: PuckFace;
  readonly rim: RimTexture;
  readonly core: PuckCore;
  /** Material of everything that is not core, by name. */
  readonly coatMaterial: string;
}

/** How a face turns into the rim; both edges are alike. */
export type PuckEdge =
  | { readonly kind: "radius"; readonly edgeRadiusMetres: number }
  | { readonly kind: "bevel"; readonly radialMetres: number; readonly axialMetres: number }
  /** Straight lines through points (inset from the rim, inset from the face), m, from the face (0 from it) to the rim. */
  | { readonly kind: "profile"; readonly points: readonly (readonly [number, number])[] };

export type FaceSide = "top" | "bottom" | "both";

export type PuckFace =
  | { readonly kind: "flat" }
  /** A round pocket with straight walls and a flat floor, concentric with the face. */
  | {
      readonly kind: "recess";
      readonly side: FaceSide;
      readonly diameterMetres: number;
      readonly depthMetres: number;
    }
  /** Straight grooves of rectangular section along radii, equally spaced. */
  | {
      readonly kind: "radialGrooves";
      readonly side: FaceSide;
      readonly number: number;
      readonly widthMetres: number;
      readonly depthMetres: number;
      readonly innerRadiusMetres: number;
      readonly outerRadiusMetres: number;
    };

/** Texture of the straight part of the rim. */
export type RimTexture =
  | { readonly kind: "plain" }
  /** Rough all over, without a change of volume: equivalent sand-grain roughness for the drag. */
  | { readonly kind: "rough"; readonly sandGrainRoughnessMetres: number }
  /** Flat-floored grooves along the axis, equally spaced around the rim. */
  | {
      readonly kind: "axialGrooves";
      readonly number: number;
      readonly widthMetres: number;
      readonly depthMetres: number;
    }
  /** Rectangular rings around the rim, equally spaced over its straight part. */
  | {
      readonly kind: "ringGrooves";
      readonly number: number;
      readonly widthMetres: number;
      readonly depthMetres: number;
    };

/** A disc and a ring sit with their middle at heightMetres above the mid-plane (0 when left out). */
export type PuckCore =
  | { readonly kind: "none" }
  | {
      readonly kind: "disc";
      readonly material: string;
      readonly diameterMetres: number;
      readonly thicknessMetres: number;
      readonly edgeRadiusMetres?: number;
      readonly heightMetres?: number;
    }
  | {
      readonly kind: "ring";
      readonly material: string;
      readonly outerDiameterMetres: number;
      readonly innerDiameterMetres: number;
      readonly thicknessMetres: number;
      readonly heightMetres?: number;
    }
  /** Everything deeper than the coat is thick; for edges with a radius or a bevel. */
  | { readonly kind: "underCoat"; readonly material: string; readonly coatThicknessMetres: number };
