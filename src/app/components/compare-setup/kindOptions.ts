import { html } from "lit";
import { kindWords } from "../../../../shared/evidence/comparisonTable";
import type { MeasurementKind } from "../../../../shared/evidence/measurement";
import { measurementKinds } from "../../../../shared/evidence/measurementBlockDocument";

/** The options of a choice of kinds. */
export function kindOptions(chosen: MeasurementKind) {
  return measurementKinds.map(
    (kind) => html`<option value=${kind} ?selected=${kind === chosen}>${kindWords[kind]}</option>`,
  );
}
