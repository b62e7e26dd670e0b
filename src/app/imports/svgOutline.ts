import { svgPathProperties } from "svg-path-properties";
import { problem, type Result } from "../../../shared/result";
import { curvePoints, largestImportBytes, makeOutline, type Outline } from "./outline";

/**
 * Reads the first closed path of an SVG file, or a bare path text ("M 0 0 L ..."). SVG counts y downward, so the
 * outline is turned over. Transforms in the file are not applied: a remark says so when there are any.
 */
export function svgOutline(text: string): Result<Outline> {
  if (text.length > largestImportBytes) {
    return problem("import", `The file has ${text.length} characters; at most ${largestImportBytes} are read.`);
  }
  const found = pathText(text);
  if (found === null)
    return problem("import", "The file has no <path> with a d attribute, and is no path text itself.");
  const [first, ...others] = found.match(/[Mm][^Mm]*/g) ?? [];
  if (first === undefined)
    return problem("import", `The path starts with "${found.slice(0, 12)}"; it must start with M.`);
  try {
    const path = new svgPathProperties(first);
    const total = path.getTotalLength();
    if (!(total > 0)) return problem("import", "The path has no length.");
    const parts = path.getParts().filter((part) => part.length > 0);
    if (parts.length > 2000) return problem("import", `The path has ${parts.length} pieces; at most 2000 are read.`);
    const points: [number, number][] = [];
    for (const part of parts) {
      // Straight pieces keep their ends only; curved ones are sampled by their share of the whole.
      const chord = Math.hypot(part.end.x - part.start.x, part.end.y - part.start.y);
      const straight = Math.abs(part.length - chord) < 1e-6 * part.length;
      const steps = straight ? 1 : Math.max(4, Math.round((curvePoints * part.length) / total));
      for (let k = 0; k < steps; k++) {
        const { x, y } = part.getPointAtLength((part.length * k) / steps);
        points.push([x, -y]);
      }
    }
    const last = parts[parts.length - 1].end;
    points.push([last.x, -last.y]);
    return makeOutline(points, null, remarks(text, others.length));
  } catch {
    return problem("import", "The path could not be read; check its commands and numbers.");
  }
}

function pathText(text: string): string | null {
  const attribute = /<path\b[^>]*?\sd\s*=\s*(?:"([^"]*)"|'([^']*)')/i.exec(text);
  if (attribute) return (attribute[1] ?? attribute[2]).trim();
  const bare = text.trim();
  return /^[Mm][\s\d.,+-]/.test(bare) ? bare : null;
}

function remarks(text: string, otherParts: number): string[] {
  const said: string[] = [];
  if (otherParts > 0) said.push(`The path has ${otherParts + 1} parts; the first one was read.`);
  if (/\btransform\s*=/.test(text))
    said.push("The file has transforms, which were not applied: check the size and direction.");
  return said;
}
