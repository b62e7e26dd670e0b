/** Printed on every sheet and with every result of a trial. */
export const trialCautions: readonly string[] = [
  "A puck of about 1.3 kg that is thrown, flicked or dropped can injure head, hands and feet, above and below the water: one player at a time, nobody in its way, low speed first, and stop when anyone asks to.",
  "Use only pucks with a whole coat: lead is toxic. Take a puck with a cut or loose coat out of the trial, wash hands afterwards, and keep bare lead from children.",
  "Rules of the pool, supervision and rescue come first, as local rules say; nobody scores alone, unwell or out of breath. Everyone takes part freely and may stop at any time.",
  "What players like is not what is safe or within the rules of a league.",
];
