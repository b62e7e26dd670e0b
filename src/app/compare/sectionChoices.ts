import type { SectionDocument } from "../../../shared/case/sectionDocument";
import { sectionSpecs } from "../../../shared/case/sectionSpecs";
import type { Design } from "../../../shared/design/design";
import { floorKeys } from "../../../shared/design/designToCase";
import { sectionToDocument } from "../../../shared/design/sectionToDocument";
import { buildContour } from "../../../shared/geometry/sectionFamilies";
import type { CompareInputs } from "./compareInputs";

/** A section that a measurement may be of. */
export interface SectionChoice {
  readonly key: string;
  readonly label: string;
  readonly section: SectionDocument;
}

/** The section view's design, and every section of the sets, each once. */
export function sectionChoices({ sets }: Pick<CompareInputs, "sets">, design: Design): SectionChoice[] {
  const own = { ...sectionToDocument(design.section, design.sectionName), ...floorKeys(design) };
  const choices: SectionChoice[] = [
    { key: "design", label: `the section view's design (${sectionText(own)})`, section: own },
  ];
  for (const { section } of sets) {
    const key = JSON.stringify(section);
    if (!choices.some((choice) => choice.key === key)) choices.push({ key, label: sectionText(section), section });
  }
  return choices;
}

/** A section by its own name and its dimensions. */
export function sectionText(section: SectionDocument): string {
  const contour = buildContour(sectionSpecs(section)[0].spec);
  const dimensions = contour.ok ? contour.value.name : section.family;
  return section.name === undefined || section.name === dimensions ? dimensions : `${section.name}: ${dimensions}`;
}
