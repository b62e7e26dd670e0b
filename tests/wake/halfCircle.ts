import type { SectionNodes } from "../../shared/engine/geometry/sectionNodes";
import { nodesOf } from "../flow/sections";
import { rotateNodes } from "../geometry/nodeTransforms";

/** A half circle of diameter 1 that lies on its flat side (raised 6 mm for rounded corners), its first node at the upstream corner. */
export function halfCircle(panels: number): SectionNodes {
  const upright = nodesOf(
    { family: "dShape", length: 0.506, height: 1, noseLength: 0.5, cornerRadius: 0.0055, flatSide: "rear" },
    panels,
  );
  const lying = rotateNodes(upright, -Math.PI / 2);
  let first = 0;
  for (let i = 1; i < panels; i++) if (lying.x[i] < lying.x[first]) first = i;
  const rolled = (values: Float64Array) => values.map((_, i) => values[(i + first) % panels]);
  const start = lying.arc[first];
  return {
    ...lying,
    x: rolled(lying.x),
    y: rolled(lying.y),
    tangentX: rolled(lying.tangentX),
    tangentY: rolled(lying.tangentY),
    ds: rolled(lying.ds),
    curvature: rolled(lying.curvature),
    arc: rolled(lying.arc).map((arc) => (arc - start + lying.perimeter) % lying.perimeter),
    mirrorSymmetric: false,
  };
}
