import * as z from "zod";
import { caseVersion } from "../../../shared/document/caseVersion";
import { parseDocument } from "../../../shared/document/parseDocument";
import { tunnelBlockDocument } from "../../../shared/jobs/tunnel/tunnelBlockDocument";
import type { Problem } from "../../../shared/result";
import { startTunnel, type TunnelInputs } from "./tunnelInputs";

export type TunnelReading =
  | { readonly ok: true; readonly value: TunnelInputs }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The keys of a case file that the view reads; what else the case has is other views' business. */
const tunnelCase = z.object({ title: z.string().max(200).optional(), tunnel: tunnelBlockDocument.optional() });

/** Reads the tunnel test of a case file. Wrong cells of its tables are no fault here: the view shows them. */
export function readTunnelCase(text: string): TunnelReading {
  const parsed = parseDocument(text, tunnelCase);
  if (!parsed.ok) return parsed;
  const { title = startTunnel.title, tunnel = startTunnel.block } = parsed.value;
  return { ok: true, value: { title, block: tunnel } };
}

/** The inputs as a case file of their own. */
export function tunnelCaseText({ title, block }: TunnelInputs): string {
  return JSON.stringify({ wakewrightCase: caseVersion, title, tunnel: block });
}
