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
} as const;
