/** A p value as a person reads it: "0.012", "0.0004", "below 0.0001". */
export function pText(p: number): string {
  if (p < 1e-4) return "below 0.0001";
  return p < 0.001 ? p.toFixed(4) : p.toFixed(3);
}

/** "1 player", "3 players". */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

/** "A", "A and B", "A, B and C". */
export function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names[names.length - 1]}`;
}

export function percentText(share: number): string {
  return `${(100 * share).toFixed(0)} %`;
}
