import type { ChoiceBlockDocument } from "../../../shared/jobs/choice/choiceBlockDocument";
import type { CriterionKey } from "../../../shared/jobs/choice/criteria";
import type { CostBlockDocument } from "../../../shared/jobs/cost/costBlockDocument";
import type { DurabilityBlockDocument } from "../../../shared/jobs/durability/durabilityBlockDocument";
import type { TrialBlockDocument } from "../../../shared/jobs/trial/trialBlockDocument";

/** What a choice between pucks rests on besides the pucks: blocks of the case as its file has them; null without. */
export interface ChooseInputs {
  readonly trial: TrialBlockDocument | null;
  readonly durability: DurabilityBlockDocument | null;
  readonly cost: CostBlockDocument | null;
  readonly choice: ChoiceBlockDocument | null;
}

export const nothingToChoose: ChooseInputs = { trial: null, durability: null, cost: null, choice: null };

export type ChooseCriterion = ChoiceBlockDocument["criteria"][number];

/** Swing of a criterion that is added: half as much as the greatest, give or take. */
const newSwing = { from: 25, to: 75 };

/** Blocks of a case, without those that are not there. */
export function chooseKeys({ durability, cost, choice }: Omit<ChooseInputs, "trial">) {
  return {
    ...(durability === null ? {} : { durability }),
    ...(cost === null ? {} : { cost }),
    ...(choice === null ? {} : { choice }),
  };
}

/** Criteria that can be had from what the case holds; figures that need a sense get the usual one of the game. */
export function offeredCriteria({ trial, durability, cost }: ChooseInputs): CriterionKey[] {
  return [
    "dragInPlay",
    "dragUpright",
    "dragFlat",
    "dragFaceOn",
    "mass",
    "momentOfInertia",
    "frontalArea",
    ...(trial?.scores === undefined ? [] : (["liking"] as const)),
    ...(cost === null ? [] : (["cost"] as const)),
    ...(durability?.wear === undefined ? [] : (["durability"] as const)),
    ...((durability?.impacts ?? []).length === 0 ? [] : (["coatStrain", "floorCare"] as const)),
  ];
}

/** The criterion taken in or left out. */
export function withCriterion(inputs: ChooseInputs, key: CriterionKey, isWanted: boolean): ChooseInputs {
  const criteria = inputs.choice?.criteria ?? [];
  const others = criteria.filter(({ criterion }) => criterion !== key);
  const hasSwings = criteria.some(({ swing }) => swing !== undefined);
  const own: ChooseCriterion = {
    criterion: key,
    ...(key === "mass" || key === "momentOfInertia" ? { sense: "most" as const } : {}),
    ...(hasSwings ? { swing: newSwing } : {}),
  };
  const next = isWanted ? [...others, own] : others;
  return { ...inputs, choice: next.length === 0 ? null : { ...inputs.choice, criteria: next } };
}

/** The swing of one criterion set, for instance to "from 40 to 60". */
export function withSwing(inputs: ChooseInputs, index: number, end: "from" | "to", value: number): ChooseInputs {
  const { choice } = inputs;
  if (choice === null) return inputs;
  const before = swingOf(choice.criteria[index]);
  const moved = { ...before, [end]: value };
  // The other end gives way: a range never falls.
  const swing = moved.from <= moved.to ? moved : { from: value, to: value };
  return replaced(inputs, choice, index, { ...choice.criteria[index], swing });
}

export function swingOf({ swing }: ChooseCriterion): { readonly from: number; readonly to: number } {
  if (swing === undefined) return { from: 0, to: 100 };
  return typeof swing === "number" ? { from: swing, to: swing } : { from: swing.from, to: swing.to };
}

/** Swings for every criterion, or for none: then every set of weights is as likely. */
export function withSwings(inputs: ChooseInputs, areWanted: boolean): ChooseInputs {
  const { choice } = inputs;
  if (choice === null) return inputs;
  const criteria = choice.criteria.map((criterion) => {
    const { swing: _, ...rest } = criterion;
    return areWanted ? { ...rest, swing: swingOf(criterion) } : rest;
  });
  return { ...inputs, choice: { ...choice, criteria } };
}

function replaced(inputs: ChooseInputs, choice: ChoiceBlockDocument, index: number, criterion: ChooseCriterion) {
  return {
    ...inputs,
    choice: { ...choice, criteria: choice.criteria.map((own, i) => (i === index ? criterion : own)) },
  };
}
