import { screeningCaution } from "../../../shared/case/cautions";

/** What everybody who builds or throws a puck is told. */
export const cautions: readonly string[] = [
  screeningCaution,
  "Lead is poisonous. Cast, cut or sand it only where local rules allow it, with licensed practice, ventilation and protection; keep a lead core sealed in its coat.",
  "A puck of 1.3 kg can injure heads, hands and feet when it is thrown or dropped. Test it where nobody can be hit.",
  "Whether a puck may be used is for the rules of your sport and your pool to say, not for this page.",
];
