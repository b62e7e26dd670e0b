import type * as z from "zod";
import { strictRecord } from "../../document/quantity";
import { tableKeys } from "../../tables/tableDocument";
import { measuredColumnKeys, measuredColumnWords } from "./measuredColumns";

/** A table of measured points: the rows themselves, or the path of a CSV file beside the case file. */
export const measuredTableDocument = strictRecord(
  "a table of measured points",
  tableKeys(measuredColumnKeys, measuredColumnWords),
).describe("Measured points as a table");

export type MeasuredTableDocument = z.infer<typeof measuredTableDocument>;
