import { html } from "lit";
import { kindWords } from "../../../../shared/jobs/evidence/comparisonTable";
import type { MeasurementKind } from "../../../../shared/jobs/evidence/measurement";
import { measurementKinds } from "../../../../shared/jobs/evidence/measurementBlockDocument";

/** The options of a choice of kinds. */
export function kindOptions(chosen: MeasurementKind) {
  return measurementKinds.map(
    (kind) => html`<option value=${kind} ?selected=${kind === chosen}>${kindWords[kind]}</option>`,
  );
}
