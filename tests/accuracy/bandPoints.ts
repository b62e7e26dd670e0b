import type { BandTable, CrisisKind, ShapeFamily } from "../../shared/engine/trust/bandTable";
import { crisisKind } from "../../shared/engine/trust/crisisKind";
import { crisisFactor } from "../../shared/engine/trust/dragBand";
import { type DragState, statesNearby } from "../../shared/engine/trust/nearbyStates";
import { describeSection, type SectionDescription } from "../../shared/engine/trust/sectionDescription";
import { shapeFamily } from "../../shared/engine/trust/shapeFamily";
import { experimentOf, type PublishedSource, type PublishedValue } from "../published/publishedValue";
import type { Quantity } from "../published/quantity";

import type { DragReading, Prediction } from "./prediction";
import { type Half, splitForBands } from "./sourceSplit";

/** A published drag coefficient beside the state that answers it. */
export interface BandPoint extends DragReading {
  readonly source: string;
  readonly experiment: string;
  readonly value: PublishedValue;
  /** Null where the value is only shown. */
  readonly half: Half | null;
  readonly section: SectionDescription;
  readonly family: ShapeFamily;
}

/** Error of a published Reynolds number of a drag crisis: |ln(predicted / published)|. */
export interface CrisisError {
  readonly source: string;
  readonly half: Half;
  readonly kind: CrisisKind;
  readonly error: number;
}

/** All published drag coefficients of sections that the engine answers with one state. */
export function bandPoints(
  sources: readonly PublishedSource[],
  predictionOf: (quantity: Quantity) => Prediction | undefined,
): BandPoint[] {
  const halves = splitForBands(sources);
  return sources.flatMap((source) =>
    source.values.flatMap((value) => {
      const drag = predictionOf(value.quantity)?.drag;
      if (drag === undefined) return [];
      const { nodes, incidence } = drag.curve.section;
      const section = describeSection(nodes, incidence);
      return [
        {
          ...drag,
          source: source.name,
          experiment: experimentOf(source),
          value,
          half: halves.get(value) ?? null,
          section,
          family: shapeFamily(section, drag.condition),
        },
      ];
    }),
  );
}

/** States near a point that may stand for it; none for values of a range. */
export function pointNearby(
  { curve, index, section, condition }: BandPoint,
  table: Pick<BandTable, "crisisReynoldsFactor">,
): DragState[] {
  if (index === null) return [];
  const factor = crisisFactor(section, condition, table);
  return statesNearby(curve.section, curve.conditions, curve.outcomes, index, factor);
}

/** All published Reynolds numbers of drag crises that the engine answers; ratios of two of them included. */
export function crisisErrors(
  sources: readonly PublishedSource[],
  predictionOf: (quantity: Quantity) => Prediction | undefined,
): CrisisError[] {
  const halves = splitForBands(sources);
  return sources.flatMap(({ name, values }) =>
    values.flatMap((value): CrisisError[] => {
      const { quantity } = value;
      const kinds = ["reynoldsAtDrag", "reynoldsAtLowestDrag", "criticalReynoldsRatio"];
      const predicted = predictionOf(quantity)?.value ?? null;
      const half = halves.get(value);
      if (half === undefined || !kinds.includes(quantity.kind) || !("section" in quantity) || predicted === null)
        return [];
      const shape = quantity.section.shape === "circle" ? "circle" : "other";
      const kind = crisisKind(shape, quantity.turbulenceIntensity);
      return [{ source: name, half, kind, error: Math.abs(Math.log(predicted / value.value)) }];
    }),
  );
}
