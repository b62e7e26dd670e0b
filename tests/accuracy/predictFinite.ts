import type { PuckSpec } from "../../shared/jobs/puck/body/puckSpec";
import { endRelief } from "../../shared/jobs/puck/drag/endRelief";
import { faceOnDrag } from "../../shared/jobs/puck/drag/faceOnDrag";
import type { FiniteBodyQuantity } from "../published/quantity";
import { notPredicted, type Prediction, predicted } from "./prediction";

/** The table of length factors that has two columns changes from one to the other here (DNV-RP-C205). */
const crisisReynolds = 2e5;

const tableNote = "end relief is a mean of published tables, this one among them: consistency, not proof";
const axialNote = "read from a published table (Kritzinger 2004), no flow is solved";

/**
 * The engine's drag of a short cylinder: the section's drag times the end relief, or the axial table.
 * @param section the engine's answer for the endless cylinder at the same Reynolds number; used across the stream only
 */
export function predictFinite(
  quantity: Exclude<FiniteBodyQuantity, { kind: "edgeOnDiscDrag" }>,
  section: Prediction | null,
): Prediction {
  switch (quantity.kind) {
    case "crossFlowCylinderDrag":
      if (section === null || section.value === null || section.regime === null) {
        return notPredicted(`endless cylinder: ${section?.note ?? "no state"}`);
      }
      return {
        value: section.value * endRelief(quantity.lengthToDiameter, section.regime).expected,
        regime: section.regime,
        note: tableNote,
      };
    case "crossFlowLengthFactor": {
      const regime = quantity.reynolds < crisisReynolds ? "subcritical" : "supercritical";
      return { ...predicted(endRelief(quantity.lengthToDiameter, regime).expected), note: tableNote };
    }
    case "axialCylinderDrag": {
      const drag = faceOnDrag(sharpCylinder(quantity.lengthToDiameter));
      if (!drag.ok) return notPredicted(drag.problem.message);
      return { ...predicted(drag.value.dragCoefficient.expected), note: axialNote };
    }
  }
}

/** A cylinder of 1 m diameter; a disc is a very short one. */
function sharpCylinder(lengthToDiameter: number): PuckSpec {
  return {
    name: "cylinder",
    diameterMetres: 1,
    thicknessMetres: Math.max(lengthToDiameter, 1e-6),
    edge: { kind: "radius", edgeRadiusMetres: 0 },
    face: { kind: "flat" },
    rim: { kind: "plain" },
    core: { kind: "none" },
    coatMaterial: "",
  };
}
