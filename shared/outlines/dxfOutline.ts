import { problem, type Result, success } from "../result";
import { chooseOutline } from "./chooseOutline";
import { dxfChains } from "./dxfChains";
import { readDxfParts } from "./groupCodes";
import { joinChains } from "./joinChains";
import { type Outline, type OutlineUnit, tooLarge } from "./outline";

/** Header variable $INSUNITS. Source: DXF Reference, Autodesk (2011), "Default drawing units". */
const unitOfCode: Readonly<Record<number, OutlineUnit>> = { 1: "in", 4: "mm", 5: "cm", 6: "m" };

/** Reads the largest closed outline of a text DXF drawing: polylines with arcs, or lines, arcs and curves whose ends meet. */
export function dxfOutline(text: string): Result<Outline> {
  const large = tooLarge(text);
  if (large !== null) return large;
  const parts = readDxfParts(text);
  if (!parts.ok) return parts;
  const { entities, unitCode } = parts.value;
  const drawn = dxfChains(entities);
  if (!drawn.ok) return drawn;
  const { chains, passedOver } = drawn.value;
  const others = [...passedOver].map(([type, count]) => `${count} ${type.slice(0, 30)}`).slice(0, 8);
  if (chains.length === 0) {
    const found = others.length === 0 ? "nothing" : others.join(", ");
    const blocks = passedOver.has("INSERT") ? "; explode the blocks before it is saved" : "";
    return problem(
      "outline",
      `the drawing has ${found}; it must have lines, arcs, circles, ellipses, splines or polylines${blocks}`,
    );
  }
  const chosen = chooseOutline(joinChains(chains), "drawing");
  if (!chosen.ok) return chosen;
  const { sides, remarks } = chosen.value;
  const left = others.length === 0 ? [] : [`Not read: ${others.join(", ")}.`];
  return success({ sides, unit: unitOfCode[unitCode ?? 0] ?? null, fitted: null, remarks: [...remarks, ...left] });
}
