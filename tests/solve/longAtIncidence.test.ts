import { describe, expect, it } from "vitest";
import { prepareSection } from "../../shared/engine/solve/prepareSection";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import { nodesOf, unwrap } from "../flow/sections";
import { quietCondition } from "./sections";

/** Drag coefficient on the section's own height at an incidence, deg, Reynolds number on that height. */
function dragOnHeight(lengthToHeight: number, edgeRadiusRatio: number, degrees: number): number {
  const height = 0.1;
  const spec = { family: "roundedRectangle", length: lengthToHeight * height, height } as const;
  const nodes = nodesOf({ ...spec, edgeRadius: edgeRadiusRatio * height }, 160);
  const section = unwrap(prepareSection(nodes, (degrees * Math.PI) / 180));
  const widening = section.referenceWidth / height;
  return solveCondition(section, quietCondition(1e5 * widening)).states[0].dragCoefficient * widening;
}

describe("long and bluff sections at an incidence", () => {
  it("a 10:1 section gains no more at 1 and 2 deg than a plate's normal force turned back, 2 pi alpha L/H sin(alpha), and 5 %", () => {
    // Thin-aerofoil theory bounds the normal force: Glauert (1926), The Elements of Aerofoil and Airscrew Theory.
    const level = dragOnHeight(10, 0.1, 0);
    for (const degrees of [1, 2]) {
      const alpha = (degrees * Math.PI) / 180;
      const bound = 1.05 * level + 2 * Math.PI * alpha * 10 * Math.sin(alpha);
      const drag = dragOnHeight(10, 0.1, degrees);
      expect(drag).toBeLessThan(bound);
      expect(drag).toBeGreaterThan(0.95 * level);
    }
  });

  it("a square's drag on its side falls from 0 to 15 deg: Norberg (1993), J. Wind Eng. Ind. Aerodyn. 49, 187, from memory: 2.1 to about 1.7", () => {
    const [level, five, fifteen] = [0, 5, 15].map((degrees) => dragOnHeight(1, 0.01, degrees));
    expect(five).toBeLessThan(1.02 * level);
    expect(fifteen).toBeLessThan(0.97 * level);
    expect(Math.abs(fifteen / 1.7 - 1)).toBeLessThan(0.2);
  });
});
