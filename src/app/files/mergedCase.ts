import { caseVersion } from "../../../shared/document/caseVersion";
import { type ViewName, viewNames } from "../store/viewNames";

/** A case file's content as plain data. */
export type CaseObject = Readonly<Record<string, unknown>>;

/** What one view puts into a saved case; null leaves the opened file's own keys as they are. */
export interface CasePart {
  readonly view: ViewName;
  readonly keys: CaseObject | null;
}

const streamKeys = [
  "fluid",
  "speedsMetresPerSecond",
  "reynoldsNumbers",
  "sandGrainRoughnessMetres",
  "sandGrainRoughnessRatios",
  "surfacePattern",
  "turbulencePercents",
] as const;

const sectionKeys = [
  "sections",
  "panelCount",
  "incidenceDegrees",
  "trips",
  "layerMethod",
  "branches",
  "workingPoint",
] as const;

/** What the puck view writes only where there is something to choose. */
const judgedKeys = ["durability", "cost", "choice"] as const;

/** A case of several views. */
export interface MergeRequest {
  /** The file that was opened; null when the case is a new one. */
  readonly opened: CaseObject | null;
  readonly title: string;
  /** The views whose keys the file is to have. */
  readonly parts: readonly CasePart[];
  /** The section view's keys as they are now. */
  readonly section: CaseObject;
  /** The view that is saved from: its fluid counts. */
  readonly shown: ViewName;
}

/**
 * The views' keys as one case file. Keys that no view reads, such as the note, stay. Sections and pucks share one
 * stream: it is the pucks', since their figures are averaged over it, and the section view's own condition is written as
 * the working point.
 */
export function mergedCase({ opened, title, parts, section, shown }: MergeRequest): CaseObject {
  const { wakewrightCase: _version, title: _title, note, ...rest } = opened ?? {};
  const document = new Map(Object.entries(rest));
  const remove = (keys: readonly string[]) => {
    for (const key of keys) document.delete(key);
  };
  const add = (keys: CaseObject) => {
    for (const [key, value] of Object.entries(keys)) document.set(key, value);
  };
  const partOf = (view: ViewName) => parts.find((part) => part.view === view);
  const [sections, pucks] = [partOf("section"), partOf("puck")];
  if (sections === undefined) remove(sectionKeys);
  if (sections === undefined && pucks === undefined) remove(streamKeys);
  if (sections?.keys) {
    remove([...sectionKeys, ...streamKeys]);
    add(sections.keys);
  }
  if (pucks !== undefined && (pucks.keys !== null || sections?.keys)) {
    const stream = pucks.keys ?? Object.fromEntries(Object.entries(opened ?? {}).filter(([key]) => isStream(key)));
    remove(streamKeys);
    if (pucks.keys !== null) remove(judgedKeys);
    add(stream);
    if (sections !== undefined) {
      document.set("workingPoint", workingPoint(section));
      if (shown === "section") document.set("fluid", section.fluid);
    }
  }
  for (const view of viewNames) {
    if (view === "section" || view === "puck") continue;
    const part = partOf(view);
    if (part?.keys) add(part.keys);
  }
  return {
    wakewrightCase: caseVersion,
    title,
    ...(note === undefined ? {} : { note }),
    ...Object.fromEntries(document),
  };
}

function isStream(key: string): boolean {
  return streamKeys.some((one) => one === key);
}

function workingPoint(section: CaseObject): CaseObject {
  const first = (key: string) => (section[key] as readonly number[])[0];
  return {
    speedMetresPerSecond: first("speedsMetresPerSecond"),
    sandGrainRoughnessMetres: first("sandGrainRoughnessMetres"),
    turbulencePercent: first("turbulencePercents"),
  };
}
