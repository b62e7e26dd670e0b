/** The part of a result row that the curves over Reynolds number and roughness need. */
export interface CurveRow {
  readonly section: string;
  readonly reynolds: number;
  /** ks / reference width. */
  readonly sandGrainRoughnessRatio: number;
  readonly turbulencePercent: number;
  readonly branch: "rising" | "falling";
  readonly regime: string | null;
  readonly converged: boolean;
  readonly attached?: boolean | null;
  readonly settled?: boolean | null;
  readonly separationAngleUpperDegrees: number | null;
  readonly separationAngleLowerDegrees: number | null;
  readonly strouhal: number | null;
  readonly dragCoefficient: number | null;
  readonly dragCoefficientLow?: number | null;
  readonly dragCoefficientHigh?: number | null;
}

/** Rows of one curve: everything equal but the Reynolds number (or the roughness). */
export interface CurveGroup {
  readonly name: string;
  readonly rows: readonly CurveRow[];
}

/** ks / D as people write it: "smooth", "1e-3", "4.5e-3". */
export function roughnessLabel(ratio: number): string {
  if (ratio === 0) return "ks/D 0";
  const exponent = Math.floor(Math.log10(ratio) + 1e-9);
  const mantissa = Number((ratio / 10 ** exponent).toPrecision(3));
  return `ks/D ${mantissa}e${exponent}`;
}

/**
 * Splits rows into curves over Reynolds number. Only what differs between the curves is in their names.
 */
export function curvesOverReynolds(rows: readonly CurveRow[]): CurveGroup[] {
  return group(rows, (row) => [
    row.section,
    roughnessLabel(row.sandGrainRoughnessRatio),
    `turbulence ${row.turbulencePercent} %`,
    `${row.branch} speed`,
  ]).map(({ name, rows }) => ({ name, rows: [...rows].sort((a, b) => a.reynolds - b.reynolds) }));
}

/** Splits rows into curves over roughness: one per section, Reynolds number, turbulence and branch. */
export function curvesOverRoughness(rows: readonly CurveRow[]): CurveGroup[] {
  return group(rows, (row) => [
    row.section,
    `Re ${shortNumber(row.reynolds)}`,
    `turbulence ${row.turbulencePercent} %`,
    `${row.branch} speed`,
  ]).map(({ name, rows }) => ({
    name,
    rows: [...rows].sort((a, b) => a.sandGrainRoughnessRatio - b.sandGrainRoughnessRatio),
  }));
}

/** Three digits, with an exponent where that is shorter: 1e5, 2.5e5, 0.034. */
export function shortNumber(value: number): string {
  if (value === 0) return "0";
  const size = Math.abs(value);
  if (size >= 0.01 && size < 1e4) return String(Number(value.toPrecision(3)));
  const [mantissa, exponent] = value.toExponential(2).split("e");
  return `${Number(mantissa)}e${Number(exponent)}`;
}

function group(rows: readonly CurveRow[], parts: (row: CurveRow) => string[]): CurveGroup[] {
  const groups = new Map<string, { parts: string[]; rows: CurveRow[] }>();
  for (const row of rows) {
    const own = parts(row);
    const key = own.join("\n");
    const existing = groups.get(key);
    if (existing) existing.rows.push(row);
    else groups.set(key, { parts: own, rows: [row] });
  }
  const all = [...groups.values()];
  const differs = (at: number) => new Set(all.map((one) => one.parts[at])).size > 1;
  return all.map((one) => ({
    name: one.parts.filter((_, at) => differs(at)).join(", ") || one.parts[0],
    rows: one.rows,
  }));
}
