import type { TunnelPlan } from "../../../shared/jobs/tunnel/plannedTest";
import type { TunnelBlockDocument } from "../../../shared/jobs/tunnel/tunnelBlockDocument";
import type { TableKey, TablePart } from "./tableKinds";

declare global {
  /** What the components of the tunnel view ask of it. */
  interface PageEvents {
    /** The block as a person has changed it, checked. */
    "tunnel-block": TunnelBlockDocument;
    /** Keys of the block to be replaced; undefined takes a key away. */
    "tunnel-keys": Partial<TunnelBlockDocument>;
    "tunnel-title": string;
    /** File name of a demo case. */
    "tunnel-demo": string;
    /** The model is to be the candidate of the puck view, or the design of the section view. */
    "tunnel-model": "candidate" | "design";
    /** A table's text, right or wrong; empty takes the table away. */
    "tunnel-table-text": { readonly of: TableKey; readonly text: string };
    /** What a table has besides its rows. */
    "tunnel-table-change": { readonly of: TableKey; readonly change: Partial<TablePart> };
    /** The plan's run sheet is to be the data. */
    "tunnel-fill-in": TunnelPlan;
  }
}
