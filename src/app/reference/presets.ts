/** A ready value with where it comes from. */
export interface Preset {
  readonly key: string;
  readonly label: string;
  /** SI: a fraction, or metres. */
  readonly value: number;
  readonly source: string;
}

/** Turbulence intensities of streams that people meet. */
export const turbulencePresets: readonly Preset[] = [
  {
    key: "research",
    label: "Low-turbulence research tunnel, 0.1 %",
    value: 0.001,
    source: "Common practice, no source.",
  },
  {
    key: "tunnel",
    label: "Good wind tunnel, 0.2 %",
    value: 0.002,
    source: "P. W. Bearman (1969), J. Fluid Mech. 37, states 0.2 % for his tunnel (from memory).",
  },
  {
    key: "older",
    label: "Older or teaching tunnel, 0.7 %",
    value: 0.007,
    source: "E. Achenbach (1968), J. Fluid Mech. 34, states about 0.7 % (from memory).",
  },
  {
    key: "stillPool",
    label: "Calm pool, 1 %",
    value: 0.01,
    source: "An estimate: water moving at 0.02 m/s against a body at 2 m/s. No published value was found.",
  },
  { key: "channel", label: "Water channel, 2 %", value: 0.02, source: "Common practice (0.5 to 3 %), no source." },
  {
    key: "play",
    label: "Pool in play, 5 %",
    value: 0.05,
    source: "An estimate: swimmers' wakes of 0.1 m/s and more against 2 m/s. No published value was found.",
  },
];

/** Equivalent sand-grain roughness of finishes. */
export const finishPresets: readonly Preset[] = [
  { key: "smooth", label: "Ideally smooth, 0", value: 0, source: "The limit; no real surface." },
  { key: "glass", label: "Glass, 0.0015 mm", value: 1.5e-6, source: "EN 1991-1-4:2005, Table 7.13 (from memory)." },
  {
    key: "polished",
    label: "Polished metal, 0.002 mm",
    value: 2e-6,
    source: "EN 1991-1-4:2005, Table 7.13 (from memory).",
  },
  {
    key: "finePaint",
    label: "Fine paint, 0.006 mm",
    value: 6e-6,
    source: "EN 1991-1-4:2005, Table 7.13 (from memory).",
  },
  {
    key: "sprayPaint",
    label: "Spray paint, moulded coat, 0.02 mm",
    value: 20e-6,
    source: "EN 1991-1-4:2005, Table 7.13, for spray paint (from memory); taken over for a moulded coat, an estimate.",
  },
  {
    key: "brightSteel",
    label: "Bright steel, 0.05 mm",
    value: 50e-6,
    source: "EN 1991-1-4:2005, Table 7.13 (from memory).",
  },
  {
    key: "galvanised",
    label: "Cast iron, galvanised steel, 0.2 mm",
    value: 0.2e-3,
    source: "EN 1991-1-4:2005, Table 7.13 (from memory).",
  },
  {
    key: "planedWood",
    label: "Planed wood, 0.5 mm",
    value: 0.5e-3,
    source: "EN 1991-1-4:2005, Table 7.13 (from memory).",
  },
  { key: "rust", label: "Rust, 2 mm", value: 2e-3, source: "EN 1991-1-4:2005, Table 7.13 (from memory)." },
];

/** The preset that has exactly this value; undefined when a person entered their own. */
export function presetOf(presets: readonly Preset[], value: number): Preset | undefined {
  return presets.find((preset) => Math.abs(preset.value - value) <= 1e-9 * Math.max(preset.value, 1e-3));
}
