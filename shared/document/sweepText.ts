/** "edge radius" for edgeRadiusMetres. */
export function sweepWords(key: string): string {
  return key.replace(/Metres$/, "").replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);
}

/** "mm" for a key in metres, else nothing. */
export function sweepUnit(key: string): string {
  return key.endsWith("Metres") ? "mm" : "";
}

/** The swept value in the unit of sweepUnit. */
export function sweepNumber(key: string, value: number): number {
  return Number((key.endsWith("Metres") ? value * 1000 : value).toPrecision(6));
}

/** "edge radius 3 mm" for edgeRadiusMetres 0.003. */
export function sweepText(key: string, value: number): string {
  return `${sweepWords(key)} ${sweepNumber(key, value)} ${sweepUnit(key)}`.trimEnd();
}
