/** Rankings of a trial: one per activity, and the overall one where there are several. */
export function rankingCount(activities: number): number {
  return activities > 1 ? activities + 1 : 1;
}

/**
 * The claims of a trial as one family: that an activity's scores differ between the pucks, and that one puck of a pair is
 * liked more, at every activity and overall. The level is shared out evenly over the rankings; a ranking makes claims of
 * pairs only when it shows a difference at its share, and those by Holm's correction at the same share. The chance that
 * any claim of the family is false then stays at the level, whichever of them are true: where all pucks of a ranking are
 * alike, every false claim needs its test to err; where they are not, only its pairs can. Sources: Bonferroni's
 * inequality; Holm (1979), Scand. J. Stat. 6, 65-70; tests in a fixed order: Maurer, Hothorn & Lehmacher (1995).
 * @param p        of one claim within its ranking, 0 to 1
 * @param rankings of the trial, 1 or more
 * @param gate     p of the test that must be passed before, allowing for the family already; 0 for the test itself
 * @returns p allowing for the whole family: it is held against the level as it is
 */
export function familyP(p: number, rankings: number, gate = 0): number {
  return Math.max(gate, Math.min(1, rankings * p));
}
