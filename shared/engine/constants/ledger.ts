import { FITTED_NUMBERS } from "./fittedNumbers";
import { LAYER_NUMBERS } from "./layerNumbers";
import type { LedgerNumber } from "./ledgerEntry";
import { SHORT_BODY_NUMBERS } from "./shortBodyNumbers";
import { SOLVER_NUMBERS } from "./solverNumbers";
import { TRUST_NUMBERS } from "./trustNumbers";
import { WAKE_NUMBERS } from "./wakeNumbers";
import { WHOLE_NUMBERS } from "./wholeNumbers";

/**
 * Every number that was fitted, chosen or remembered, with what it rests on. Formulas read their numbers from the files
 * that are joined here, so that there is no second copy. Published constants that were read in their source stand beside
 * their formula instead, but for those whose weight on the answer is worth knowing. Forms are in ledgerForms.ts; what
 * 20 % of each number does to the results is printed by `npm run calibrate -- --sensitivity`.
 */
export const LEDGER = {
  ...FITTED_NUMBERS,
  ...LAYER_NUMBERS,
  ...WAKE_NUMBERS,
  ...SOLVER_NUMBERS,
  ...TRUST_NUMBERS,
  ...SHORT_BODY_NUMBERS,
  ...WHOLE_NUMBERS,
};

export type LedgerKey = keyof typeof LEDGER;

/** The numbers as a list, in the order of the method. */
export const ledgerNumbers = Object.entries(LEDGER) as readonly (readonly [LedgerKey, LedgerNumber])[];
