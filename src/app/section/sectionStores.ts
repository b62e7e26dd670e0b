import { Notifier } from "../store/notifier";
import { type CaseRun, noCase } from "./caseRun";
import type { RuleWindow } from "./ruleWindow";
import { firstTools, type SectionTools } from "./sectionTools";
import { noSweep, type Sweep } from "./sweep";

// What the section view knows besides its bench.

export const sectionTools = new Notifier<SectionTools>(firstTools);

export const caseRun = new Notifier<CaseRun>(noCase);

export const sweep = new Notifier<Sweep>(noSweep);

/** null when handles move freely. */
export const ruleWindow = new Notifier<RuleWindow | null>(null);
