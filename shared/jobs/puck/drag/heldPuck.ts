import type { Regime } from "../../../engine/solution";
import type { PuckDrag } from "../../../engine/trust/dragInterval";
import { type Result, success } from "../../../result";
import type { PuckApplicability } from "../puckResult";
import { prepareFaceOn } from "./faceOnFlow";
import { dragBySections, dragFaceOn, dragUpright, type FiguredPuck } from "./orientationDrag";
import { edgeOnApplicability, faceOnApplicability } from "./puckApplicability";
import { type PreparedSections, preparePlan, prepareProfiles, solveSections } from "./puckFlow";
import { surfaceNotes } from "./puckSurface";
import { rememberedWholePuck } from "./wholePuck";

/** How a puck is held: with its edge or with a face to the stream. */
export const puckAttitudes = ["edgeOn", "faceOn"] as const;
export type PuckAttitude = (typeof puckAttitudes)[number];

/** A puck as it is held in a stream. */
export interface HeldPuck extends Omit<FiguredPuck, "sandGrainRoughness"> {
  readonly attitude: PuckAttitude;
}

/** What the drag of a held puck depends on besides its Reynolds number. */
export interface HeldStream {
  /** A fraction. */
  readonly turbulenceIntensity: number;
  /** Equivalent sand-grain roughness, m. */
  readonly sandGrainRoughness: number;
  /** False leaves out the engine's errors against published values, which take longer than the drag. */
  readonly withBands: boolean;
}

export interface HeldDrag {
  /** On the frontal area of the attitude. */
  readonly drag: PuckDrag;
  /** Of the plan section; null face-on, where the rim decides. */
  readonly regime: Regime | null;
}

/** A held puck, solved as far as it does not depend on the stream. */
export interface PreparedHeldPuck {
  /** Plan and profile where they stand in for the flow edge-on; null where the whole puck's flow is solved. */
  readonly sections: PreparedSections | null;
  readonly applicability: PuckApplicability;
  /** Drag in open water as a slowly rising speed meets it, at rising Reynolds numbers on the diameter. */
  readonly solve: (stream: HeldStream, reynoldsNumbers: readonly number[]) => Result<HeldDrag[]>;
}

/** m^2/s: any value serves, since only the Reynolds number matters. */
const anyViscosity = 1e-6;
const sectioning = { panelCount: 120, chordRatios: [0.7, 1] };

/** Prepares a puck that is held edge-on or face-on; only what that attitude needs is solved. */
export function prepareHeldPuck(puck: HeldPuck): Result<PreparedHeldPuck> {
  return puck.attitude === "edgeOn" ? heldEdgeOn(puck) : success(heldFaceOn(puck));
}

function heldEdgeOn(puck: HeldPuck): Result<PreparedHeldPuck> {
  const whole = rememberedWholePuck(puck.spec, null);
  if (!whole.ok) return heldBySections(puck);
  const notes = surfaceNotes(puck.spec);
  return success({
    sections: null,
    applicability: edgeOnApplicability(puck, null, { whole: whole.value }),
    solve: ({ turbulenceIntensity, sandGrainRoughness }, reynoldsNumbers) => {
      const flow = { whole: whole.value, open: null, notes, turbulenceIntensity };
      const held = { ...puck, sandGrainRoughness };
      const found: HeldDrag[] = [];
      for (const reynolds of reynoldsNumbers) {
        const drag = dragUpright(held, flow, speedAt(reynolds, puck), anyViscosity);
        if (!drag.ok) return drag;
        const [likeliest] = drag.value.states;
        found.push({ drag: drag.value, regime: likeliest.rimState === "laminar" ? "subcritical" : "supercritical" });
      }
      return success(found);
    },
  });
}

/** Plan and profile sections stand in for a puck whose flow as a whole could not be solved. */
function heldBySections(puck: HeldPuck): Result<PreparedHeldPuck> {
  const { spec } = puck;
  const plan = preparePlan(sectioning.panelCount);
  if (!plan.ok) return plan;
  const profiles = prepareProfiles(spec, sectioning, { kind: "open" });
  if (!profiles.ok) return profiles;
  const sections = { plan: plan.value, profiles: profiles.value };
  const notes = surfaceNotes(spec);
  return success({
    sections,
    applicability: edgeOnApplicability({ spec }, null, { whole: null }),
    solve: ({ turbulenceIntensity, sandGrainRoughness, withBands }, reynoldsNumbers) => {
      const speeds = reynoldsNumbers.map((reynolds) => speedAt(reynolds, puck));
      const open = solveSections({ spec, sandGrainRoughness }, sections, {
        speeds,
        kinematicViscosity: anyViscosity,
        turbulenceIntensity,
        relativeError: withBands ? null : 0,
      });
      if (!open.ok) return open;
      const found: HeldDrag[] = [];
      for (const [i, speed] of speeds.entries()) {
        const drag = dragBySections({ ...puck, sandGrainRoughness }, { open: open.value, notes }, speed, anyViscosity);
        if (!drag.ok) return drag;
        found.push({ drag: drag.value, regime: open.value.plan(reynoldsNumbers[i]).regime });
      }
      return success(found);
    },
  });
}

function heldFaceOn(puck: HeldPuck): PreparedHeldPuck {
  const solved = rememberedWholePuck(puck.spec, null);
  const whole = solved.ok ? solved.value : null;
  const prepared = whole === null ? prepareFaceOn(puck.spec) : null;
  const faceOn = prepared?.ok === true ? prepared.value : null;
  return {
    sections: null,
    applicability: faceOnApplicability({ whole, faceOn }),
    solve: ({ turbulenceIntensity, sandGrainRoughness }, reynoldsNumbers) => {
      const flow = { whole, faceOn, turbulenceIntensity };
      const found: HeldDrag[] = [];
      for (const reynolds of reynoldsNumbers) {
        const drag = dragFaceOn({ ...puck, sandGrainRoughness }, flow, speedAt(reynolds, puck), anyViscosity);
        if (!drag.ok) return drag;
        found.push({ drag: drag.value, regime: null });
      }
      return success(found);
    },
  };
}

function speedAt(reynolds: number, { spec }: HeldPuck): number {
  return (reynolds * anyViscosity) / spec.diameterMetres;
}
