import * as z from "zod";
import { caseVersion } from "../../../shared/case/caseDocument";
import { documentProblems } from "../../../shared/case/documentProblems";
import { largestCaseBytes } from "../../../shared/case/limits";
import { parseJson } from "../../../shared/case/parseJson";
import type { Problem } from "../../../shared/result";
import { tunnelBlockDocument } from "../../../shared/tunnel/tunnelBlockDocument";
import { startTunnel, type TunnelInputs } from "./tunnelInputs";

export type TunnelReading =
  | { readonly ok: true; readonly value: TunnelInputs }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The keys of a case file that the view reads; what else the case has is other views' business. */
const tunnelCase = z.object({ title: z.string().max(200).optional(), tunnel: tunnelBlockDocument.optional() });

/** Reads the tunnel test of a case file. Wrong cells of its tables are no fault here: the view shows them. */
export function readTunnelCase(text: string): TunnelReading {
  if (text.length > largestCaseBytes) {
    const message = `the file has ${text.length} characters; a case file must have at most ${largestCaseBytes}`;
    return { ok: false, problems: [{ code: "size", message }] };
  }
  const json = parseJson(text);
  if (!json.ok) return { ok: false, problems: [json.problem] };
  const parsed = tunnelCase.safeParse(json.value);
  if (!parsed.success) return { ok: false, problems: documentProblems(json.value, parsed.error) };
  const { title = startTunnel.title, tunnel = startTunnel.block } = parsed.data;
  return { ok: true, value: { title, block: tunnel } };
}

/** The inputs as a case file of their own. */
export function tunnelCaseText({ title, block }: TunnelInputs): string {
  return JSON.stringify({ wakewrightCase: caseVersion, title, tunnel: block });
}
