import { html } from "lit";
import { fluidDocument } from "../../../../shared/document/fluidDocument";
import type { FluidSpec } from "../../../../shared/engine/fluid/fluidSpec";

type Kind = FluidSpec["kind"];

const kinds: Readonly<Record<Kind, string>> = {
  freshWater: "fresh water",
  seaWater: "sea water",
  dryAir: "air",
  userFluid: "another fluid",
};

/** Common practice: a pool, the sea, a room. */
const starts: Readonly<Record<Kind, FluidSpec>> = {
  freshWater: { kind: "freshWater", temperatureCelsius: 27 },
  seaWater: { kind: "seaWater", temperatureCelsius: 15, salinityGramsPerKilogram: 35 },
  dryAir: { kind: "dryAir", temperatureCelsius: 20, pressurePascals: 101325 },
  userFluid: {
    kind: "userFluid",
    densityKilogramsPerCubicMetre: 1000,
    kinematicViscositySquareMetresPerSecond: 1e-6,
  },
};

const words: Readonly<Record<string, readonly [string, string]>> = {
  temperatureCelsius: ["Temperature", "°C"],
  pressurePascals: ["Air pressure", "Pa"],
  salinityGramsPerKilogram: ["Salt", "g/kg"],
  densityKilogramsPerCubicMetre: ["Density", "kg/m³"],
  kinematicViscositySquareMetresPerSecond: ["Kinematic viscosity", "m²/s"],
};

/** Rows for a fluid and its temperature; a value that is not allowed is refused by the field itself. */
export function fluidRows(fluid: FluidSpec, id: string, label: string, change: (fluid: FluidSpec) => void) {
  const numbers = Object.entries(fluid).filter((entry): entry is [string, number] => typeof entry[1] === "number");
  return html`<div class="row"><label for="tunnel-fluid-${id}">${label}</label>
      <select id="tunnel-fluid-${id}" @change=${(event: Event) => change(starts[(event.target as HTMLSelectElement).value as Kind])}>
        ${Object.entries(kinds).map(([kind, name]) => html`<option value=${kind} ?selected=${kind === fluid.kind}>${name}</option>`)}
      </select></div>
    ${numbers.map(
      ([key, value]) => html`<div class="row"><label for="tunnel-${id}-${key}">${words[key]?.[0]}</label>
        <span class="pair"><input id="tunnel-${id}-${key}" type="text" inputmode="decimal" autocomplete="off" .value=${String(value)} @change=${(
          event: Event,
        ) => {
          const input = event.target as HTMLInputElement;
          const parsed = fluidDocument.safeParse({ ...fluid, [key]: Number(input.value.trim().replace(",", ".")) });
          const rule = parsed.success ? "" : (parsed.error.issues[0]?.message ?? "it is not allowed");
          input.setCustomValidity(rule === "" ? "" : `${words[key]?.[0]} is "${input.value}"; ${rule}.`);
          input.setAttribute("aria-invalid", String(rule !== ""));
          if (parsed.success) change(parsed.data);
          else input.reportValidity();
        }} /><span>${words[key]?.[1]}</span></span></div>`,
    )}`;
}
