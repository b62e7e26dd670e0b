import { describe, expect, it } from "vitest";
import { sectionFlow } from "../../shared/engine/flow/sectionFlow";
import { bluntBaseSpeedRatio } from "../../shared/engine/wake/bluntBase";
import { dragTimesStrouhalAt, vortexStreetTable } from "../../shared/engine/wake/vortexStreet";
import { quadraticAt, wakeFlow } from "../../shared/engine/wake/wakeFlow";
import { nodesOf, unwrap } from "../flow/sections";

const street = vortexStreetTable();
const nodes = nodesOf(
  { family: "dShape", length: 4, height: 1, noseLength: 0.5, cornerRadius: 0.01, flatSide: "rear" },
  200,
);
let corner = nodes.count / 2;
while (!(Math.abs(nodes.y[corner] + 0.5) < 1e-9)) corner--;
const wake = unwrap(wakeFlow(unwrap(sectionFlow(nodes, 0)), corner, nodes.count - corner));

describe("bluntBaseSpeedRatio: a round nose four heights long with a flat sharp rear", () => {
  it("is the wake's own closure where the corners do not hold the layers", () => {
    expect(bluntBaseSpeedRatio(wake, street, 1.4, 0.2, 0)).toBeCloseTo(1.4, 12);
  });

  it("thin layers: drag and street agree, Cd S = F(k) with S = 0.16 k / d' and d' = 0.95 of the base", () => {
    const k = bluntBaseSpeedRatio(wake, street, 1.4, 0, 1);
    const strouhal = (0.16 * k) / (0.95 * wake.separationWidth);
    expect(quadraticAt(wake.pressureDrag, k) * strouhal).toBeCloseTo(dragTimesStrouhalAt(street, k), 8);
  });

  it("layers as thick as the base is wide halve its suction", () => {
    const thin = bluntBaseSpeedRatio(wake, street, 1.4, 0, 1) ** 2 - 1;
    expect(bluntBaseSpeedRatio(wake, street, 1.4, wake.separationWidth, 1) ** 2 - 1).toBeCloseTo(thin / 2, 10);
  });

  it("layers of a fifth of the base: base pressure -0.5 to -0.65 (Bearman 1965, J. Fluid Mech. 21, 241, a blunt trailing edge: -0.58, from memory)", () => {
    const pressure = 1 - bluntBaseSpeedRatio(wake, street, 1.4, 0.2, 1) ** 2;
    expect(pressure).toBeGreaterThan(-0.65);
    expect(pressure).toBeLessThan(-0.5);
  });
});
