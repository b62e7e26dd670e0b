import Papa from "papaparse";
import type { TunnelPlan } from "./plannedTest";
import { runColumnKeys } from "./runColumns";

/**
 * The plan as a table to fill in (RFC 4180, lines ending in CR LF): its columns are those that a run table is read by, so
 * that it comes back without any mapping.
 */
export function runSheetCsv({ runs }: TunnelPlan): string {
  const rows = runs.map((run) => ({
    run: run.run,
    kind: run.kind,
    direction: run.direction ?? "",
    aimSpeedMetresPerSecond: run.aimSpeedMetresPerSecond ?? "",
    repeat: run.repeat ?? "",
    remark: run.remark,
  }));
  return `${Papa.unparse(rows, { columns: [...runColumnKeys], newline: "\r\n" })}\r\n`;
}
