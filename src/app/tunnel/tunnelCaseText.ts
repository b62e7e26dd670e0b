import * as z from "zod";
import { parseDocument } from "../../../shared/document/parseDocument";
import { tunnelBlockDocument } from "../../../shared/jobs/tunnel/tunnelBlockDocument";
import { type CaseReading, caseTextOf } from "../view/caseText";
import { startTunnel, type TunnelInputs } from "./tunnelInputs";

/** The keys of a case file that the view reads; what else the case has is other views' business. */
const tunnelCase = z.object({ title: z.string().max(200).optional(), tunnel: tunnelBlockDocument.optional() });

/** Reads the tunnel test of a case file. Wrong cells of its tables are no fault here: the view shows them. */
export function readTunnelCase(text: string): CaseReading<TunnelInputs> {
  const parsed = parseDocument(text, tunnelCase);
  if (!parsed.ok) return parsed;
  const { title = startTunnel.title, tunnel = startTunnel.block } = parsed.value;
  return { ok: true, value: { title, block: tunnel } };
}

/** The inputs as a case file of their own. */
export function tunnelCaseText({ title, block }: TunnelInputs): string {
  return caseTextOf(title, { tunnel: block });
}
