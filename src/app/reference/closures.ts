export interface Closure {
  readonly name: string;
  readonly meaning: string;
  readonly source: string;
}

const closure = (name: string, meaning: string, source: string): Closure => ({ name, meaning, source });

/** The steps of the method as the page explains them: what each does, and where it was published. */
export const closures = {
  potentialFlow: closure(
    "Surface-vorticity panels",
    "The flow outside the layer and the wake is without friction. Vortices on the contour are chosen such that nothing flows along its inside.",
    "E. Martensen (1959); R. I. Lewis, Vortex Element Methods (1991), chapters 1-2; trapezoidal rule on periodic kernels: R. Kress, Linear Integral Equations.",
  ),
  wake: closure(
    "Wake as an outflow from the base",
    "Behind the separation points the surface blows, so that the free streamlines leave tangentially and the base has one uniform pressure.",
    "G. V. Parkinson & T. Jandali (1970), J. Fluid Mech. 40; on panels: P. W. Bearman & J. E. Fackrell (1975), J. Fluid Mech. 72.",
  ),
  basePressure: closure(
    "Base pressure from the vortex street",
    "Drag of the vortex street, its stability condition and two universal Strouhal numbers fix the base pressure, the drag and the shedding frequency together. No constant is tuned.",
    "Th. von Karman (1911-12); R. E. Kronauer (1964) as used by P. W. Bearman (1967), J. Fluid Mech. 28; A. Roshko (1954), NACA TN 3169.",
  ),
  laminarLayer: closure(
    "Laminar boundary layer",
    "One integral gives the momentum thickness; the pressure gradient gives friction, shape factor and laminar separation.",
    "B. Thwaites (1949), Aeronautical Quarterly 1, 245-280.",
  ),
  transition: closure(
    "Transition",
    "The layer turns turbulent by growing disturbances, by roughness, at a trip, or in the free shear layer after laminar separation, whichever comes first. Turbulence in the stream hastens it.",
    "R. Michel (1951); B. J. Abu-Ghannam & R. Shaw (1980); L. M. Mack (1977); bubble lengths: H. P. Horton (1968), W. B. Roberts (1980); trips: A. L. Braslow & E. C. Knox (1958), NACA TN 4363.",
  ),
  turbulentLayer: closure(
    "Turbulent boundary layer",
    "Momentum and entrainment equations with a lag of the shear stress, so that the layer remembers where it came from.",
    "J. E. Green, D. J. Weeks & J. W. F. Brooman (1977), ARC R&M 3791; plain entrainment: M. R. Head (1958), ARC R&M 3152; friction: H. Ludwieg & W. Tillmann (1949).",
  ),
  roughness: closure(
    "Rough walls",
    "Sand-grain roughness ks brings transition forward, raises friction and thickens the layer, so that it separates sooner.",
    "F. A. Dvorak (1969); P. Stripf, A. Schulz & H.-J. Bauer (2009); C. F. Colebrook (1939).",
  ),
  separationAngle: closure(
    "Separation angle",
    "Angle at the section's centre, measured from the direction the stream comes from, on each side.",
    "A convention of the measurements on round cylinders, used here for every section.",
  ),
  referenceArea: closure(
    "Reference area",
    "All coefficients are per unit span on the reference width D, the section's extent across the stream: area = D x span. They hold for an infinitely long body; a short body such as a puck has less drag.",
    "Common practice.",
  ),
  endRelief: closure(
    "Short bodies edge-on",
    "Drag of endless plan and profile sections, lowered by the relief of free ends. The tables begin at length/diameter 1; a puck is shorter, so they are carried on: an extrapolation. Best value between the two estimates, band from the lowest to the highest.",
    "Tables of short cylinders as named in each note, among them DNV-RP-C205 (2025); the weighing of plan and profile is our own.",
  ),
  faceOn: closure(
    "Face-on and tilted",
    "Face-on from the table of cylinders along their axis, lowered by edge rounding as on long cylinders; between edge-on and face-on by plate theory and the cross-flow principle.",
    "Kritzinger (2004); S. F. Hoerner, Fluid-Dynamic Drag (1965), chapter 3 (from memory); Lord Rayleigh (1876), Phil. Mag. 2, 430-441.",
  ),
  addedMass: closure(
    "Motion and added mass",
    "Drag from the solved curve at each speed, weight less buoyancy, floor friction, and the water that moves along, as that of the spheroid with the puck's diameter and volume.",
    "H. Lamb, Hydrodynamics, 6th ed. (1932), art. 108, 114 and 373.",
  ),
  tolerances: closure(
    "Making tolerances",
    "Each figure at all corners of the tolerances, exact where it rises or falls steadily with each dimension; shares of made pucks by random making with a 95 % interval.",
    "Corners: common practice, no source; interval: E. B. Wilson (1927), J. Am. Stat. Assoc. 22, 209-212.",
  ),
  paretoSearch: closure(
    "Search for the front",
    "Keeps the pucks that no other beats in every goal, breeds new ones from them, and puts pucks outside the rules behind all others. Equal seeds give equal results.",
    "K. Deb, A. Pratap, S. Agarwal & T. Meyarivan (2002), IEEE Trans. Evol. Comput. 6, 182-197; M. D. McKay, R. J. Beckman & W. J. Conover (1979), Technometrics 21, 239-245.",
  ),
} as const;
