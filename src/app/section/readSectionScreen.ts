import { roughnessHeightBounds } from "../../../shared/document/limits";
import type { SurfacePattern } from "../../../shared/engine/pattern/surfacePattern";
import { firstTools, type LayerChoice, type SectionTools } from "./sectionTools";
import { mostPins } from "./solved";

/** What the section view shows, as plain data. Designs are case-file texts, checked like any case file. */
export interface SectionScreen extends SectionTools {
  readonly design: string;
  readonly pins: readonly string[];
  readonly positionMeasure: "angle" | "arc";
}

/** Reads a screen that may be hostile. Tools that it does not name, or badly, are as at first. @returns null when it is none */
export function readSectionScreen(text: string): SectionScreen | null {
  const screen = parsed(text);
  if (typeof screen !== "object" || screen === null) return null;
  const { design, pins, positionMeasure, pattern, layerChoice } = screen as Partial<
    Record<keyof SectionScreen, unknown>
  >;
  if (typeof design !== "string" || !isPinList(pins) || !(positionMeasure === "angle" || positionMeasure === "arc"))
    return null;
  return {
    design,
    pins,
    positionMeasure,
    pattern: isPattern(pattern) ? pattern : firstTools.pattern,
    layerChoice: isLayerChoice(layerChoice) ? layerChoice : firstTools.layerChoice,
  };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function isPinList(pins: unknown): pins is readonly string[] {
  return Array.isArray(pins) && pins.length <= mostPins && pins.every((pin) => typeof pin === "string");
}

function isPattern(pattern: unknown): pattern is SurfacePattern {
  if (typeof pattern !== "object" || pattern === null) return false;
  const { kind, depth, width, pitch } = pattern as Partial<Record<keyof SurfacePattern, unknown>>;
  const isLength = (value: unknown) => typeof value === "number" && value > 0 && value <= roughnessHeightBounds.to;
  return (kind === "grooves" || kind === "ridges" || kind === "dimples") && [depth, width, pitch].every(isLength);
}

function isLayerChoice(choice: unknown): choice is LayerChoice {
  return ["all", "momentumThickness", "shapeFactor", "skinFriction"].some((one) => one === choice);
}
