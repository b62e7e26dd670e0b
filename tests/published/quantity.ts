/** What a published number is of. Every kind states its unit; the engine's answer to it is in the same unit. */
export type Quantity = SectionQuantity | FiniteBodyQuantity | LayerQuantity | WakeQuantity | FluidQuantity;

/** A section as a source describes it; lengths as ratios, incidence zero, the first length along the stream. */
export type PublishedSection =
  | { readonly shape: "circle" }
  | { readonly shape: "ellipse"; readonly lengthToHeight: number }
  /** cornerRadiusToHeight 0 is a sharp corner. */
  | { readonly shape: "rectangle"; readonly lengthToHeight: number; readonly cornerRadiusToHeight: number }
  | { readonly shape: "plate across the stream" }
  /** A square whose diagonal lies along the stream; corner radius over the side. */
  | { readonly shape: "diagonal square"; readonly cornerRadiusToSide: number }
  /** Equilateral; corner radius over the height across the stream. */
  | {
      readonly shape: "triangle";
      readonly pointing: "apex upstream" | "face upstream";
      readonly cornerRadiusToHeight: number;
    }
  /** Sharp, twelve equal sides, a side facing the stream. */
  | { readonly shape: "dodecagon" }
  /** A semicircle (as much of it as the length holds), straight sides, a flat rear with sharp corners. */
  | { readonly shape: "round nose, flat rear"; readonly lengthToHeight: number }
  /** A plate in the wake's middle, which keeps vortices from shedding. */
  | { readonly shape: "circle with splitter plate" };

/** The stream that the section meets, apart from its Reynolds number; ks / D and Tu as a fraction. */
export interface PublishedStream {
  readonly section: PublishedSection;
  readonly sandGrainRoughnessRatio: number;
  readonly turbulenceIntensity: number;
}

/** Reynolds numbers are on the extent across the stream, unless the source's remark says otherwise. */
export type SectionQuantity = PublishedStream &
  (
    | {
        /** Angles in degrees from the front stagnation point; the rest without unit. */
        readonly kind: "dragCoefficient" | "strouhal" | "basePressureCoefficient" | "separationAngle";
        readonly reynolds: number;
      }
    | { readonly kind: "pressureCoefficient"; readonly reynolds: number; readonly angleDegrees: number }
    | {
        /** Mean over the logarithm of the Reynolds number. */
        readonly kind: "meanDragCoefficient" | "meanStrouhal" | "meanBasePressureCoefficient";
        readonly reynoldsFrom: number;
        readonly reynoldsTo: number;
      }
    | {
        readonly kind: "lowestDragCoefficient" | "reynoldsAtLowestDrag";
        readonly reynoldsFrom: number;
        readonly reynoldsTo: number;
      }
    | {
        /** Largest magnitude of the lift coefficient among steady states that differ on the two sides. */
        readonly kind: "largestOneSidedLift";
        readonly reynoldsFrom: number;
        readonly reynoldsTo: number;
      }
    | {
        /** Reynolds number at which the drag coefficient of a slowly rising speed first falls below a value. */
        readonly kind: "reynoldsAtDrag";
        readonly dragCoefficient: number;
        readonly reynoldsFrom: number;
        readonly reynoldsTo: number;
      }
    | {
        /** reynoldsAtDrag in this stream over the same in a stream of the reference turbulence. */
        readonly kind: "criticalReynoldsRatio";
        readonly dragCoefficient: number;
        readonly referenceTurbulenceIntensity: number;
        readonly reynoldsFrom: number;
        readonly reynoldsTo: number;
      }
  );

/** Drag of a body of finite length, on its frontal area. */
export type FiniteBodyQuantity =
  | {
      /** Disc or wheel with a fully rounded rim, moving along its plane in the open, area diameter times thickness. */
      readonly kind: "edgeOnDiscDrag";
      readonly thicknessToDiameter: number;
      /** On the diameter. */
      readonly reynolds: number;
    }
  | {
      /** Circular cylinder across the stream, both ends free, area diameter times length. */
      readonly kind: "crossFlowCylinderDrag";
      readonly lengthToDiameter: number;
      readonly reynolds: number;
    }
  | {
      /** Two free ends: drag over that of the infinitely long body. */
      readonly kind: "crossFlowLengthFactor";
      readonly lengthToDiameter: number;
      readonly reynolds: number;
    }
  | {
      /** Circular cylinder along the stream, flat sharp ends, area of the disc; 0 is a disc. */
      readonly kind: "axialCylinderDrag";
      readonly lengthToDiameter: number;
      readonly reynolds: number;
    };

/** Edge velocities with a known layer: linearly falling, twice the sine, and Hiemenz's measured polynomial. */
export type GivenEdgeSpeed = "howarth" | "sine" | "hiemenz";

export type LayerQuantity =
  /** x / L for the linearly falling speed, degrees from the front for the others. */
  | { readonly kind: "laminarSeparation"; readonly edgeSpeed: GivenEdgeSpeed }
  | {
      /** Units of the tables in howarth-1938.ts, terrill-1960.ts and hiemenz-1911.ts; station as in laminarSeparation. */
      readonly kind: "laminarMomentumThickness";
      readonly edgeSpeed: GivenEdgeSpeed;
      readonly station: number;
    }
  /** Local friction of a smooth turbulent plate at Re_x. */
  | { readonly kind: "smoothPlateFriction"; readonly reynoldsX: number }
  /** Local friction of a fully rough plate at x / ks. */
  | { readonly kind: "roughPlateFriction"; readonly lengthToRoughness: number };

export type WakeQuantity =
  /** Pressure drag and lowest pressure of a circle with given separation angle (degrees) and base pressure. */
  {
    readonly kind: "wakeSourceDrag" | "wakeSourceLowestPressure";
    readonly separationDegrees: number;
    readonly basePressureCoefficient: number;
  };

export type FluidQuantity =
  | {
      /** Pa s */
      readonly kind: "waterDynamicViscosity";
      readonly temperatureKelvin: number;
      readonly densityKgPerCubicMetre: number;
    }
  /** kg/m^3 */
  | { readonly kind: "waterDensity"; readonly temperatureCelsius: number }
  /** m^2/s */
  | { readonly kind: "waterKinematicViscosity"; readonly temperatureCelsius: number }
  /** Pa s, kg/m^3 */
  | { readonly kind: "airDynamicViscosity" | "airDensity"; readonly temperatureCelsius: number };
