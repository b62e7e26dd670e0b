import type { FluidSpec } from "../../../shared/engine/fluid/fluidSpec";
import { guessMeasuredMapping, type MeasuredColumnKey } from "../../../shared/jobs/evidence/measuredColumns";
import type { MeasurementKind } from "../../../shared/jobs/evidence/measurement";
import { resolveMeasurements } from "../../../shared/jobs/evidence/resolveMeasurements";
import type { DecimalMark } from "../../../shared/tables/cellNumber";
import type { ColumnMapping } from "../../../shared/tables/columnMapping";
import { readCsvTable } from "../../../shared/tables/csvTable";
import type { DataTable } from "../../../shared/tables/dataTable";
import type { MeasuredSetInputs } from "./compareInputs";
import type { MeasuredThing } from "./designChoices";

/** A table that is being imported: everything that a person has typed or chosen, so that nothing is lost. */
export interface ImportDraft {
  readonly name: string;
  readonly kind: MeasurementKind;
  readonly source: string;
  /** The file's text, or what was pasted. */
  readonly text: string;
  readonly mapping: ColumnMapping<MeasuredColumnKey>;
  /** null: told from the cells. */
  readonly decimalMark: DecimalMark | null;
  /** Key of what was measured. */
  readonly section: string;
}

export const emptyDraft: ImportDraft = {
  name: "",
  kind: "tunnelTest",
  source: "",
  text: "",
  mapping: {},
  decimalMark: null,
  section: "design",
};

/** The draft with a table's text and a first guess of its columns; what the person has named stays. */
export function withTable(draft: ImportDraft, text: string, fileName: string | null): ImportDraft {
  const table = readCsvTable(text);
  const { name } = draft;
  return {
    ...draft,
    text,
    mapping: table.ok ? guessMeasuredMapping(table.value.columns) : {},
    decimalMark: null,
    name: name === "" && fileName !== null ? fileName.replace(/\.[^.]*$/, "").slice(0, 100) : name,
  };
}

/** What a draft amounts to now. */
export type DraftReading =
  | {
      readonly ok: true;
      readonly set: MeasuredSetInputs;
      readonly pointCount: number;
      readonly skipped: readonly string[];
    }
  | { readonly ok: false; readonly messages: readonly string[] };

/** The columns of a draft's table, to map; null while it cannot be read. */
export function draftTable({ text }: ImportDraft): DataTable | null {
  const table = readCsvTable(text);
  return text.trim() !== "" && table.ok ? table.value : null;
}

/**
 * Reads a draft the way a case file is read, so that what is added here is a good case.
 * @param fluid for a column of speeds
 */
export function readDraft(draft: ImportDraft, thing: MeasuredThing, fluid: FluidSpec): DraftReading {
  if (draft.text.trim() === "") return { ok: false, messages: ["Choose a CSV file or paste its rows."] };
  const table = readCsvTable(draft.text);
  if (!table.ok) return { ok: false, messages: [table.problem.message] };
  const needsFluid = draft.mapping.reynoldsNumber === undefined && draft.mapping.speedMetresPerSecond !== undefined;
  const set: MeasuredSetInputs = {
    name: draft.name.trim() === "" ? "Imported table" : draft.name.trim(),
    kind: draft.kind,
    source: draft.source.trim() === "" ? "source not stated" : draft.source.trim(),
    ...thing,
    ...(needsFluid ? { fluid } : {}),
    table: {
      data: {
        columns: [...table.value.columns],
        rows: table.value.rows.map((row) => [...row]),
        ...(table.value.headerRow === undefined ? {} : { headerRow: table.value.headerRow }),
        ...(table.value.separator === undefined ? {} : { separator: table.value.separator }),
      },
      columns: draft.mapping,
      ...(draft.decimalMark === null ? {} : { decimalMark: draft.decimalMark }),
    },
  };
  const resolved = resolveMeasurements({ sets: [set] }, { fluid: null, sections: [], hasTunnelRuns: false });
  if (!resolved.ok) {
    return {
      ok: false,
      messages: resolved.problems.map(({ message }) => message.replace(/^measurements\.sets\[0\]\.table: /, "")),
    };
  }
  const [{ set: read, skipped }] = resolved.value.measurements;
  return { ok: true, set, pointCount: read.points.length, skipped };
}
