import type { PuckAttitude } from "../puck/public";
import { largestBlockageRatio } from "./confinedDrag";
import { assumedTurbulence, type FlowSettings } from "./flowSettings";
import type { MeasuredConditions } from "./measurement";

export type CauseKey = "turbulence" | "roughness" | "ends" | "blockage";

/** A setting that could explain a disagreement, and where its values are looked for. */
export interface Cause {
  readonly key: CauseKey;
  /** For people: "turbulence". */
  readonly name: string;
  /** What the value is: "turbulence intensity, fraction". */
  readonly quantity: string;
  readonly from: number;
  readonly to: number;
  /** The set's own value of the setting, inside from and to. */
  readonly stated: number;
  /** True where values are laid out by equal ratios, else by equal steps. */
  readonly logarithmic: boolean;
  /** Values that are met in practice, and who says so. */
  readonly plausible: { readonly from: number; readonly to: number; readonly source: string };
  readonly settings: (base: FlowSettings, value: number) => FlowSettings;
}

/** A length / width from which the end relief tables say "endless". */
export const endlessRatio = 100;
const shortestRatio = 0.3;

/** Heights of sand that stand for walls from glass to planed wood, m: EN 1991-1-4 (2005), table 7.13 (from memory). */
const smoothestWall = 1.5e-6;
const roughestWall = 5e-4;

/**
 * The causes that can be tested on a section.
 * @param width across the stream, m
 */
export function sectionCauses(conditions: MeasuredConditions, base: FlowSettings, width: number): Cause[] {
  return [
    turbulence(base),
    roughness(base, width),
    ends(conditions, base),
    blockage(conditions, base, "model width / tunnel height", achenbachTunnel),
  ];
}

/**
 * The causes that can be tested on a puck, whose ends are its own. Along its axis the finish has no part in the
 * prediction.
 * @param diameter m
 */
export function puckCauses(
  conditions: MeasuredConditions,
  base: FlowSettings,
  diameter: number,
  attitude: PuckAttitude,
): Cause[] {
  const walls = blockage(conditions, base, "frontal area / area of the test section", maskellRange);
  return attitude === "faceOn" ? [turbulence(base), walls] : [turbulence(base), roughness(base, diameter), walls];
}

/** What blockage may be where none is stated. */
type UsualBlockage = Pick<Cause["plausible"], "to" | "source">;

const achenbachTunnel: UsualBlockage = {
  to: 1 / 6,
  source: "up to 1/6, the tunnel of Achenbach (1968, J. Fluid Mech. 34; from memory)",
};

const maskellRange: UsualBlockage = {
  to: 0.1,
  source: "up to 10 %, where Maskell (1963, ARC R&M 3400; from memory) was checked",
};

function turbulence(base: FlowSettings): Cause {
  // The engine takes a stream quieter than 0.1 % for one of 0.1 %.
  const from = assumedTurbulence;
  const to = 0.09;
  return {
    key: "turbulence",
    name: "turbulence",
    quantity: "turbulence intensity",
    from,
    to,
    stated: within(base.turbulenceIntensity, from, to),
    logarithmic: true,
    plausible: {
      from: 0,
      to: 0.03,
      source: "wind tunnels up to 1 %, water channels 0.5 to 3 %: common practice, no source",
    },
    settings: (settings, turbulenceIntensity) => ({ ...settings, turbulenceIntensity }),
  };
}

function roughness(base: FlowSettings, width: number): Cause {
  const from = 1e-6;
  const to = 2e-2;
  return {
    key: "roughness",
    name: "roughness",
    quantity: "equivalent sand-grain roughness ks/D",
    from,
    to,
    stated: within(base.sandGrainRoughnessRatio, from, to),
    logarithmic: true,
    plausible: {
      from: smoothestWall / width,
      to: roughestWall / width,
      source: "walls from glass to planed wood, 0.0015 to 0.5 mm: EN 1991-1-4 (2005), table 7.13 (from memory)",
    },
    settings: (settings, sandGrainRoughnessRatio) => ({ ...settings, sandGrainRoughnessRatio }),
  };
}

function ends({ lengthToWidth }: MeasuredConditions, base: FlowSettings): Cause {
  return {
    key: "ends",
    name: "end relief",
    quantity: "length/width of a body with two free ends that has this drag",
    from: shortestRatio,
    to: endlessRatio,
    stated: within(base.lengthToWidth ?? endlessRatio, shortestRatio, endlessRatio),
    logarithmic: true,
    plausible:
      lengthToWidth === null
        ? { from: 1, to: endlessRatio, source: "range of the published end reliefs" }
        : {
            from: 0.8 * lengthToWidth,
            to: endlessRatio,
            source: "from the model's own length/width with free ends (less 20 %) to perfect end plates",
          },
    settings: (settings, value) => ({ ...settings, lengthToWidth: value >= endlessRatio ? null : value }),
  };
}

function blockage(
  { blockageRatio }: MeasuredConditions,
  base: FlowSettings,
  ratio: string,
  usual: UsualBlockage,
): Cause {
  return {
    key: "blockage",
    name: "blockage",
    quantity: `${ratio}, not corrected for`,
    from: 0,
    to: largestBlockageRatio,
    stated: base.blockageRatio,
    logarithmic: false,
    plausible:
      blockageRatio === null
        ? { from: 0, ...usual }
        : { from: 0, to: 1.2 * blockageRatio, source: "up to the stated blockage (and 20 % more)" },
    settings: (settings, value) => ({ ...settings, blockageRatio: value }),
  };
}

function within(value: number, from: number, to: number): number {
  return Math.min(to, Math.max(from, value));
}
