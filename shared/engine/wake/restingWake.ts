import { problem, type Result, success } from "../../result";
import { WAKE_NUMBERS } from "../constants/wakeNumbers";
import type { FloorContact } from "../flow/floorContact";
import { flowBeneath } from "../flow/flowBeneath";
import { type SectionFlow, sourceVelocity } from "../flow/sectionFlow";
import { interpolateAtPosition } from "../geometry/arcPosition";
import { fullLengthBehind, heightAt, widestBehindAt } from "../geometry/fullLength";
import { outflowStrengths } from "./outflow";
import { assembleWake, type WakeFlow } from "./wakeFlow";

/**
 * Wake of a section that lies on the floor. No water passes beneath: section and floor are one streamline, and section
 * and image one body of twice the height, of which this is the upper half. So there is one separation point, on the
 * upper side; the base runs from it down to the contact and blows as the upper half of the doubled body's base. Outflow
 * and circulation are fixed by the speed k at separation and by no flow beneath.
 *
 * Widths are those of the doubled body over 2 D (the wake and the separation points are both twice as far apart), so
 * that the drag closure applies to it as to any body; its afterbody is half as long in terms of its height. On the lower
 * side the pressure is that of the water at rest ahead of the contact and the base's behind it; the lift that follows
 * says nothing of how much water gets between section and floor, and is not to be used.
 * @param upper separation position, node steps from the nose, in (contact.rear, count)
 * @returns a problem "degenerate-wake" when no outflow and circulation satisfy both conditions
 */
export function restingWake(flow: SectionFlow, contact: FloorContact, upper: number): Result<WakeFlow> {
  const { nodes, streamVelocity, circulationVelocity, beneath, floor, referenceWidth } = flow;
  if (circulationVelocity === null || beneath === null || floor === null) {
    throw new RangeError("the flow has no floor contact; sectionFlow makes one for a gap of 0.");
  }
  const outflow = outflowStrengths(nodes, contact.rear, upper, 0.5);
  const sourced = sourceVelocity(flow, outflow);
  const sourceBeneath = flowBeneath(nodes, floor, sourced, outflow, 0);
  const stream = interpolateAtPosition(streamVelocity, upper);
  const source = interpolateAtPosition(sourced, upper);
  const around = interpolateAtPosition(circulationVelocity, upper);
  // stream + a source + Gamma around = -k, and the same flows beneath add up to 0.
  const determinant = source * beneath.circulation - around * sourceBeneath;
  const amplitude: [number, number] = [
    (-stream * beneath.circulation + around * beneath.stream) / determinant,
    -beneath.circulation / determinant,
  ];
  const circulation: [number, number] = [
    (-source * beneath.stream + stream * sourceBeneath) / determinant,
    sourceBeneath / determinant,
  ];
  if (![...amplitude, ...circulation].every(Number.isFinite)) {
    return problem(
      "degenerate-wake",
      `no wake from position ${upper.toFixed(2)} to the floor has the speed asked for.`,
    );
  }
  const x = interpolateAtPosition(nodes.x, upper);
  const y = interpolateAtPosition(nodes.y, upper);
  const height = floor.upX * (x - contact.x) + floor.upY * (y - contact.y);
  const along = floor.upY * x - floor.upX * y;
  const solved = { lower: contact.middle, upper, outflow, sourced, amplitude, circulation };
  return success(
    assembleWake(flow, solved, {
      separationWidth: height / referenceWidth,
      afterbodyHeight: 1,
      afterbodyLength: fullLengthBehind(flow.fullLength, along) / (2 * referenceWidth),
      widestBehind: Math.max(height, widestBehindAt(flow.fullLength, along)) / referenceWidth,
      heightBehind: heightAt(flow.fullLength, along + 2 * height) / referenceWidth,
    }),
  );
}

/** Speed / U below which the water in the corner ahead of the contact counts as at rest. The layer forgets where it began. */
const CORNER_SPEED = WAKE_NUMBERS.cornerSpeed.value;

/**
 * Where the layer of a section on the floor begins: in the corner ahead of the contact the speed falls off
 * exponentially, so that there is no stagnation point to start from.
 * @param velocity counter-clockwise surface velocity / U, shape [count]
 * @returns node steps from the nose (may be negative); null when the speed is reached nowhere before separation
 */
export function cornerPosition(velocity: Readonly<Float64Array>, contact: FloorContact, upper: number): number | null {
  const count = velocity.length;
  for (let j = Math.floor(contact.front); j > upper - count; j--) {
    if (-velocity[((j % count) + count) % count] > CORNER_SPEED) return Math.min(contact.front, j + 0.5);
  }
  return null;
}
