import { describe, expect, it } from "vitest";
import { WAKE_NUMBERS } from "../../shared/engine/constants/wakeNumbers";
import { floorContact } from "../../shared/engine/flow/floorContact";
import { nodesOf } from "./sections";

const panels = 720;
const circle = nodesOf({ family: "circle", diameter: 2 }, panels);

describe("floorContact(nodes, upX, upY, lowest, referenceWidth)", () => {
  // A circle of radius R is no higher than h above its lowest point on either side of it by acos(1 - h / R).
  const halfAngle = Math.acos(1 - 2 * WAKE_NUMBERS.contactHeight.value);

  for (const incidence of [0, 0.2, 0.3031, -0.7]) {
    it(`of a circle at incidence ${incidence} spans the low part of its arc, with its foot under the centre`, () => {
      const [upX, upY] = [-Math.sin(incidence), Math.cos(incidence)];
      const contact = floorContact(circle, upX, upY, -1, 2);
      // Positions count node steps counter-clockwise from the nose at (-1, 0).
      const lowest = ((Math.PI / 2 + incidence) / (2 * Math.PI)) * panels;
      const half = (halfAngle / (2 * Math.PI)) * panels;
      expect(Math.abs(contact.middle - lowest)).toBeLessThan(0.02);
      expect(Math.abs(contact.rear - (lowest + half))).toBeLessThan(0.02);
      expect(Math.abs(contact.front - (lowest - half))).toBeLessThan(0.02);
      expect(contact.x).toBeCloseTo(-upX, 4);
      expect(contact.y).toBeCloseTo(-upY, 4);
      // The foot lies on the lowest level itself.
      expect(upX * contact.x + upY * contact.y).toBeCloseTo(-1, 12);
    });
  }
});
