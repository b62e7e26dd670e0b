import { describeSection, type SectionDescription } from "../../../shared/engine/trust/sectionDescription";
import { carryCorrection, type MeasuredCorrection } from "../../../shared/jobs/evidence/carriedCorrection";
import { fractionOf } from "../../../shared/numerics/degreesAndPercent";
import type { CurveGroup } from "../plots/curveRow";
import { risingState, type Solved } from "../section/solved";

/** A measured offset on the section view's design: a figure with its label, or the reason why there is none. */
export interface CarriedFigure {
  readonly value: string;
  readonly detail: string;
}

/** The corrected drag coefficient of a solved design, always with the correction's label. */
export function carriedFigure(correction: MeasuredCorrection, { solution }: Solved): CarriedFigure | null {
  const state = risingState(solution);
  if (state === null) return null;
  const { dragCoefficient, regime } = state;
  const { reynolds, turbulenceIntensity, sandGrainRoughnessRatio, trips } = solution.condition;
  if (trips !== undefined && trips.length > 0) {
    return { value: "–", detail: `not corrected by measurement "${correction.measurement}": the design has trips.` };
  }
  const member = {
    description: describeSection(solution.nodes, solution.incidence, solution.floor !== null),
    settings: { turbulenceIntensity, sandGrainRoughnessRatio },
  };
  const low = solution.band?.low ?? dragCoefficient;
  const high = solution.band?.high ?? dragCoefficient;
  const carried = carryCorrection(correction, member, reynolds, { dragCoefficient, low, high, regime });
  if (!carried.ok) return { value: "–", detail: carried.problem.message };
  const { dragCoefficient: corrected, low: lowest, high: highest, label } = carried.value;
  const band = solution.band === null ? "" : `band ${lowest.toFixed(2)} to ${highest.toFixed(2)}; `;
  return { value: corrected.toFixed(3), detail: `${band}${label}` };
}

/** The curves of a design with the offset carried to their rows, named by the correction; none where it holds nowhere. */
export function carriedCurves(
  correction: MeasuredCorrection,
  { solution }: Solved,
  curves: readonly CurveGroup[],
): CurveGroup[] {
  if (solution.condition.trips !== undefined && solution.condition.trips.length > 0) return [];
  const description = describeSection(solution.nodes, solution.incidence, solution.floor !== null);
  return curves.flatMap(({ name, rows }) => {
    const corrected = rows.flatMap((row) => correctedRow(correction, description, row));
    if (corrected.length === 0) return [];
    const labels = new Set(corrected.map(({ label }) => label));
    const label =
      labels.size === 1
        ? [...labels][0]
        : `corrected by measurement "${correction.measurement}", factor by regime, same family`;
    return [{ name: `${name}, ${label}`, rows: corrected.map(({ row }) => row) }];
  });
}

function correctedRow(
  correction: MeasuredCorrection,
  description: SectionDescription,
  row: CurveGroup["rows"][number],
): { readonly row: CurveGroup["rows"][number]; readonly label: string }[] {
  const { dragCoefficient, regime, dragCoefficientLow, dragCoefficientHigh } = row;
  const known = correction.factors.find((factor) => factor.regime === regime)?.regime;
  if (dragCoefficient === null || known === undefined) return [];
  const settings = {
    turbulenceIntensity: fractionOf(row.turbulencePercent),
    sandGrainRoughnessRatio: row.sandGrainRoughnessRatio,
  };
  const carried = carryCorrection(correction, { description, settings }, row.reynolds, {
    dragCoefficient,
    low: dragCoefficientLow ?? dragCoefficient,
    high: dragCoefficientHigh ?? dragCoefficient,
    regime: known,
  });
  if (!carried.ok) return [];
  const { dragCoefficient: value, low, high, label } = carried.value;
  return [{ row: { ...row, dragCoefficient: value, dragCoefficientLow: low, dragCoefficientHigh: high }, label }];
}
