import type { Quantity } from "../published/quantity";
import { sectionLabel } from "./preparedSections";

type Kind = Quantity["kind"];

/** How a kind of quantity is named in tables, and whether its error is a fraction or in its own unit. */
interface KindText {
  readonly label: string;
  readonly error: "relative" | "absolute";
  /** Digits after the point for absolute errors. */
  readonly decimals: number;
}

const relative = (label: string): KindText => ({ label, error: "relative", decimals: 1 });

export const kindTexts: Record<Kind, KindText> = {
  dragCoefficient: relative("Cd"),
  meanDragCoefficient: relative("mean Cd"),
  lowestDragCoefficient: relative("lowest Cd"),
  strouhal: relative("Strouhal number"),
  meanStrouhal: relative("mean Strouhal number"),
  basePressureCoefficient: { label: "Cpb", error: "absolute", decimals: 2 },
  meanBasePressureCoefficient: { label: "mean Cpb", error: "absolute", decimals: 2 },
  separationAngle: { label: "separation, deg", error: "absolute", decimals: 1 },
  pressureCoefficient: { label: "Cp", error: "absolute", decimals: 2 },
  largestOneSidedLift: { label: "one-sided lift", error: "absolute", decimals: 2 },
  reynoldsAtLowestDrag: relative("Re of lowest Cd"),
  reynoldsAtDrag: relative("Re of falling Cd"),
  criticalReynoldsRatio: relative("critical Re ratio"),
  crossFlowCylinderDrag: relative("Cd across, two free ends"),
  crossFlowLengthFactor: relative("Cd over that of infinite length"),
  axialCylinderDrag: relative("Cd along the axis"),
  edgeOnDiscDrag: relative("Cd of a disc in its plane"),
  laminarSeparation: relative("laminar separation"),
  laminarMomentumThickness: relative("laminar theta"),
  smoothPlateFriction: relative("smooth plate Cf"),
  roughPlateFriction: relative("rough plate Cf"),
  wakeSourceDrag: relative("Cd at given separation"),
  wakeSourceLowestPressure: { label: "lowest Cp at given separation", error: "absolute", decimals: 2 },
  waterDynamicViscosity: relative("water viscosity, Pa s"),
  waterDensity: relative("water density, kg/m3"),
  waterKinematicViscosity: relative("water kinematic viscosity, m2/s"),
  airDynamicViscosity: relative("air viscosity, Pa s"),
  airDensity: relative("air density, kg/m3"),
};

/** Re and other wide-ranging numbers: so many digits, powers of ten from 1e4 on. */
export function compact(value: number, digits = 3): string {
  if (value === 0) return "0";
  const size = Math.abs(value);
  if (size >= 1e4 || size < 1e-2)
    return value
      .toExponential(digits - 1)
      .replace("+", "")
      .replace(/\.?0+e/, "e");
  return String(Number(value.toPrecision(digits)));
}

/** The condition of a quantity in a few words. */
export function conditionText(quantity: Quantity): string {
  if ("section" in quantity) {
    const parts = [sectionLabel(quantity.section)];
    if ("angleDegrees" in quantity) parts.push(`${quantity.angleDegrees} deg`);
    if ("dragCoefficient" in quantity) parts.push(`Cd ${compact(quantity.dragCoefficient)}`);
    parts.push(
      "reynolds" in quantity
        ? `Re ${compact(quantity.reynolds)}`
        : `Re ${compact(quantity.reynoldsFrom)} to ${compact(quantity.reynoldsTo)}`,
    );
    parts.push(`ks/D ${compact(quantity.sandGrainRoughnessRatio)}`);
    parts.push(`Tu ${compact(quantity.turbulenceIntensity * 100)} %`);
    if ("referenceTurbulenceIntensity" in quantity) {
      parts.push(`over Tu ${compact(quantity.referenceTurbulenceIntensity * 100)} %`);
    }
    return parts.join(", ");
  }
  switch (quantity.kind) {
    case "crossFlowCylinderDrag":
    case "crossFlowLengthFactor":
    case "axialCylinderDrag":
      return `L/D ${compact(quantity.lengthToDiameter)}, Re ${compact(quantity.reynolds)}`;
    case "edgeOnDiscDrag":
      return `thickness/diameter ${quantity.thicknessToDiameter}, Re ${compact(quantity.reynolds)}`;
    case "laminarSeparation":
      return `${quantity.edgeSpeed} edge speed`;
    case "laminarMomentumThickness":
      return `${quantity.edgeSpeed} edge speed, station ${quantity.station}`;
    case "smoothPlateFriction":
      return `Re_x ${compact(quantity.reynoldsX)}`;
    case "roughPlateFriction":
      return `x/ks ${compact(quantity.lengthToRoughness)}`;
    case "wakeSourceDrag":
    case "wakeSourceLowestPressure":
      return `circle, separation ${quantity.separationDegrees} deg, Cpb ${quantity.basePressureCoefficient}`;
    case "waterDynamicViscosity":
      return `${quantity.temperatureKelvin} K, ${quantity.densityKgPerCubicMetre} kg/m3`;
    case "waterDensity":
    case "waterKinematicViscosity":
    case "airDynamicViscosity":
    case "airDensity":
      return `${quantity.temperatureCelsius} C`;
  }
}
