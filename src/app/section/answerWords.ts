import { quantityText, type UnitPreferences, unitFor } from "../units/units";
import type { CrisisZone, CrisisZones } from "./crisisZone";
import { shareWords } from "./sharesInWords";
import type { WorkingPoint } from "./workingPoint";

/** A piece of a sentence; what a reader takes away is set strong. */
export interface Words {
  readonly text: string;
  readonly isStrong?: boolean;
}

export interface AnswerWords {
  readonly sentence: readonly Words[];
  /** What to do next, or what else to know. */
  readonly next: readonly Words[];
}

/** Bands wider than this factor from end to end are called what they are. */
const wideBand = 4;

/** What the drag is, how sure that is and how far the crisis is. @param isCurveKnown false while the curve is traced */
export function answerWords(
  point: WorkingPoint,
  zones: CrisisZones,
  isCurveKnown: boolean,
  units: UnitPreferences,
): AnswerWords {
  const { expected, low, high, pastCrisisShare, speed } = point;
  const factor = high / Math.max(low, 1e-9);
  const sentence: Words[] = [
    { text: "Expected " },
    { text: `Cd ${expected.toFixed(2)}`, isStrong: true },
    { text: `, in 9 of 10 cases ${low.toFixed(2)} to ${high.toFixed(2)}` },
    { text: factor > wideBand ? `: known within a factor of ${Math.round(Math.sqrt(factor) * 10) / 10} only. ` : ". " },
  ];
  const zone = zones.rising;
  const own = quantityText(speed, "speed", units, 3);
  if (zone === null) sentence.push(...withoutCrisis(pastCrisisShare, isCurveKnown, own));
  else {
    sentence.push(...shareSentence(pastCrisisShare), { text: "; the crisis lies at " }, ...zoneWords(zone, units), {
      text: `, you are at ${plain(speed, units)}.`,
    });
  }
  return { sentence, next: zone === null ? [] : nextWords(pastCrisisShare, zone, units) };
}

function shareSentence(share: number): Words[] {
  return share >= 0.5
    ? [{ text: "In " }, { text: shareWords(share), isStrong: true }, { text: " cases past its drag crisis" }]
    : [
        { text: "In " },
        { text: shareWords(1 - share), isStrong: true },
        { text: " cases still before its drag crisis" },
      ];
}

function withoutCrisis(share: number, isCurveKnown: boolean, own: string): Words[] {
  if (!isCurveKnown) return [{ text: `At ${own}.` }];
  return share > 0.5
    ? [{ text: "Past its drag crisis", isStrong: true }, { text: ` at ${own}, and so from the lowest speed computed.` }]
    : [{ text: "No drag crisis", isStrong: true }, { text: ` up to Re 1e7; you are at ${own}.` }];
}

function nextWords(share: number, { low, high }: CrisisZone, units: UnitPreferences): Words[] {
  if (share < 0.95) {
    return [{ text: "Past it in 19 of 20 from " }, { text: quantityText(high, "speed", units, 2), isStrong: true }];
  }
  return [
    { text: "Stays past it down to " },
    { text: quantityText(high, "speed", units, 2), isStrong: true },
    { text: `, before it below ${quantityText(low, "speed", units, 2)}` },
  ];
}

function zoneWords({ low, high }: CrisisZone, units: UnitPreferences): Words[] {
  return [{ text: `${plain(low, units, 2)} to ${quantityText(high, "speed", units, 2)}`, isStrong: true }];
}

function plain(speed: number, units: UnitPreferences, digits = 3): string {
  return String(Number(unitFor("speed", units).fromSi(speed).toPrecision(digits)));
}
