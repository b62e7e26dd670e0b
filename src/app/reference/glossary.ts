export interface GlossaryEntry {
  readonly symbol: string;
  readonly name: string;
  readonly meaning: string;
  readonly unit: string;
}

/** Every symbol that the page prints. */
export const glossary: readonly GlossaryEntry[] = [
  {
    symbol: "D",
    name: "reference width",
    meaning: "Extent of the section across the stream; every coefficient and ratio is on it.",
    unit: "m",
  },
  {
    symbol: "U",
    name: "stream speed",
    meaning: "Speed of the undisturbed stream far ahead of the section.",
    unit: "m/s",
  },
  { symbol: "ρ", name: "density", meaning: "Mass of the fluid per volume.", unit: "kg/m³" },
  { symbol: "ν", name: "kinematic viscosity", meaning: "Viscosity of the fluid over its density.", unit: "m²/s" },
  {
    symbol: "Re",
    name: "Reynolds number",
    meaning: "U D / ν: inertia against viscosity. Sections in the same regime share their Re, not their speed.",
    unit: "–",
  },
  {
    symbol: "Tu",
    name: "turbulence intensity",
    meaning: "Root mean square of the stream's speed fluctuations over U.",
    unit: "%",
  },
  {
    symbol: "ks",
    name: "sand-grain roughness",
    meaning: "Height of sand grains, glued on densely, that would act on the layer as the real surface does.",
    unit: "m",
  },
  {
    symbol: "s",
    name: "arc length",
    meaning: "Distance along the surface from the front stagnation point.",
    unit: "m",
  },
  {
    symbol: "Cp",
    name: "pressure coefficient",
    meaning: "(p - p∞) / (ρ U² / 2): 1 at the stagnation point, below 0 where the flow is faster than the stream.",
    unit: "–",
  },
  {
    symbol: "Cpb",
    name: "base pressure coefficient",
    meaning: "Cp on the surface behind separation, taken as uniform.",
    unit: "–",
  },
  { symbol: "Ue", name: "edge speed", meaning: "Speed of the flow just outside the boundary layer.", unit: "m/s" },
  {
    symbol: "θ",
    name: "momentum thickness",
    meaning: "Thickness of a layer of outer flow that carries the momentum missing from the boundary layer.",
    unit: "m",
  },
  {
    symbol: "δ*",
    name: "displacement thickness",
    meaning: "How far the boundary layer pushes the outer flow away from the wall.",
    unit: "m",
  },
  {
    symbol: "H",
    name: "shape factor",
    meaning: "δ* / θ: fullness of the velocity profile; it rises towards separation.",
    unit: "–",
  },
  { symbol: "Cf", name: "skin-friction coefficient", meaning: "Wall shear stress over ρ Ue² / 2.", unit: "–" },
  {
    symbol: "k",
    name: "separation speed ratio",
    meaning: "Speed on the separation streamline over U; k² = 1 - Cpb.",
    unit: "–",
  },
  {
    symbol: "Cd",
    name: "drag coefficient",
    meaning: "Drag per span over ρ U² / 2 times D. A 2D value: a short body has less.",
    unit: "–",
  },
  {
    symbol: "Cl",
    name: "lift coefficient",
    meaning: "Force across the stream per span over ρ U² / 2 times D, upward positive.",
    unit: "–",
  },
  {
    symbol: "S",
    name: "Strouhal number",
    meaning: "f D / U: frequency f at which vortices leave one side.",
    unit: "–",
  },
  {
    symbol: "N",
    name: "amplification exponent",
    meaning: "Logarithm of how much a small disturbance grows before the layer turns turbulent.",
    unit: "–",
  },
];

/** The words of the field that name states of the flow. */
export const flowTerms: readonly { readonly term: string; readonly meaning: string }[] = [
  { term: "subcritical", meaning: "The layer is laminar when it separates, early; the wake is wide and drag high." },
  {
    term: "critical",
    meaning:
      "The drag crisis: the free shear layer turns turbulent so soon that the flow comes back to the wall, perhaps on one side only.",
  },
  {
    term: "supercritical",
    meaning: "A laminar separation bubble, then a turbulent layer that holds on far round the back; drag is lowest.",
  },
  {
    term: "transcritical",
    meaning: "The layer turns turbulent while attached; it separates sooner than after a bubble and drag climbs again.",
  },
  {
    term: "rising / falling speed",
    meaning: "Where several steady states exist, the one reached by slowly raising or slowly lowering the speed.",
  },
  { term: "trip", meaning: "A wire, step or ridge that makes the layer turbulent at its place." },
];
