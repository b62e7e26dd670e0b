/** A probability as people count: "7 of 10", "19 of 20", "99 of 100". */
export function shareWords(share: number): string {
  if (share >= 0.995) return "199 of 200";
  if (share >= 0.975) return `${Math.round(100 * share)} of 100`;
  if (share >= 0.925) return "19 of 20";
  if (share <= 0.005) return "1 of 200";
  if (share <= 0.025) return `${Math.max(1, Math.round(100 * share))} of 100`;
  if (share <= 0.075) return "1 of 20";
  return `${Math.round(10 * share)} of 10`;
}
