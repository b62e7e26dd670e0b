import type { Design } from "../../../shared/case/design";
import { floorKeys } from "../../../shared/case/designToCase";
import { sectionToDocument } from "../../../shared/case/sectionToDocument";
import type { SectionDocument } from "../../../shared/document/sectionDocument";
import type { PuckSpec } from "../../../shared/jobs/puck/body/puckSpec";
import { type PuckAttitude, puckAttitudes } from "../../../shared/jobs/puck/drag/heldPuck";
import type { CompareInputs, MeasuredSetInputs } from "./compareInputs";
import { sectionText } from "./sectionText";

/** What a set is of. */
export type MeasuredThing =
  | { readonly section: SectionDocument }
  | { readonly puck: PuckSpec; readonly attitude: PuckAttitude };

/** Something that a measurement may be of. */
export interface DesignChoice {
  readonly key: string;
  readonly label: string;
  readonly thing: MeasuredThing;
}

const attitudeWords: Readonly<Record<PuckAttitude, string>> = { edgeOn: "edge-on", faceOn: "face-on" };

/**
 * The section view's design, the puck view's candidate in both attitudes, and everything that the sets are of, each once.
 */
export function designChoices(
  { sets }: Pick<CompareInputs, "sets">,
  design: Design,
  candidate: PuckSpec,
): DesignChoice[] {
  const own = { ...sectionToDocument(design.section, design.sectionName), ...floorKeys(design) };
  const choices: DesignChoice[] = [
    { key: "design", label: `the section view's design (${sectionText(own)})`, thing: { section: own } },
    ...puckAttitudes.map((attitude) => ({
      key: `candidate ${attitude}`,
      label: `the puck view's candidate (${candidate.name}), ${attitudeWords[attitude]}`,
      thing: { puck: candidate, attitude },
    })),
  ];
  for (const thing of sets.flatMap(thingsOf)) {
    const key = keyOf(thing);
    if (!choices.some((choice) => choice.key === key)) choices.push({ key, label: thingText(thing), thing });
  }
  return choices;
}

/** The choice that a set has made, as its key. */
export function chosenKey(set: MeasuredSetInputs): string {
  return thingsOf(set).map(keyOf).join("");
}

/** The set as one of something else; what holds for sections alone goes with a section. */
export function ofThing(set: MeasuredSetInputs, thing: MeasuredThing): MeasuredSetInputs {
  const { section: _section, puck: _puck, attitude: _attitude, ...rest } = set;
  if ("section" in thing) return { ...rest, section: thing.section };
  const { incidenceDegrees: _angle, panelCount: _panels, lengthToWidth: _length, ends: _ends, ...free } = rest;
  const { referenceArea, ...others } = free;
  const isFrontal = thing.attitude === "faceOn" || referenceArea === undefined;
  return { ...(isFrontal ? others : free), puck: thing.puck, attitude: thing.attitude };
}

function thingsOf({ section, puck, attitude = "edgeOn" }: MeasuredSetInputs): MeasuredThing[] {
  if (puck !== undefined) return [{ puck, attitude }];
  return section === undefined ? [] : [{ section }];
}

function keyOf(thing: MeasuredThing): string {
  return JSON.stringify("section" in thing ? thing.section : [thing.puck, thing.attitude]);
}

function thingText(thing: MeasuredThing): string {
  return "section" in thing ? sectionText(thing.section) : `${thing.puck.name}, ${attitudeWords[thing.attitude]}`;
}
