import { type CrisisKind, quietStreamTurbulence } from "./bandTable";
import type { SectionDescription } from "./sectionDescription";

/** The crises that share the error of their Reynolds number with that of a section in a stream. */
export function crisisKind(shape: SectionDescription["shape"], turbulenceIntensity: number): CrisisKind {
  if (shape !== "circle") return "other section";
  return turbulenceIntensity <= quietStreamTurbulence ? "circle in a quiet stream" : "circle in a turbulent stream";
}
