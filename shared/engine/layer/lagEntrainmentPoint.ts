import { roughFriction } from "../roughness/plateFriction";
import {
  entrainmentFriction,
  entrainmentShapeFactor,
  entrainmentShapeSlope,
  equilibriumGradient,
  maximumStress,
  plateShapeFactor,
} from "./lagEntrainment";

/**
 * A point of a turbulent layer and how the layer changes along the wall there, by the lag-entrainment method (Green,
 * Weeks & Brooman 1977, ARC R&M 3791). Every slope is a part without pressure gradient plus a part in proportion to
 * dUe/ds. This is the innermost loop of a drag curve: numbers pass through the fields in both directions, since those
 * handed to a function that is not compiled into its caller are put on the heap one by one.
 */
export class LagEntrainmentPoint {
  /** Edge speed / U. */
  Ue = Number.NaN;
  /** theta / D. */
  theta = Number.NaN;
  H = Number.NaN;
  /** Entrainment coefficient C_E. */
  CE = Number.NaN;
  /** d(ln b)/ds of the streamlines' spacing b, 1/D. */
  spread = Number.NaN;

  Cf = Number.NaN;
  /** d(theta)/ds. */
  thetaFree = Number.NaN;
  thetaPerGradient = Number.NaN;
  /** dH/ds, 1/D. */
  HFree = Number.NaN;
  HPerGradient = Number.NaN;
  /** dC_E/ds, 1/D. */
  CEFree = Number.NaN;
  CEPerGradient = Number.NaN;
  /** F of the lag equation: the layer remembers over about theta / F. */
  relaxation = Number.NaN;

  /**
   * @param reynolds U D / nu
   * @param roughnessReynolds U ks / nu
   * @param Cf0 plate friction near the first point; kept from point to point, since a rough wall's follows from the last one
   */
  constructor(
    private readonly reynolds: number,
    private readonly roughnessReynolds: number,
    private Cf0: number,
  ) {}

  /** Finds friction and slopes of the layer that `Ue`, `theta`, `H`, `CE` and `spread` tell of. */
  find(): void {
    const { Ue, theta, H, CE } = this;
    const Cf0 = roughFriction(Ue * theta * this.reynolds, Ue * this.roughnessReynolds, this.Cf0);
    const Cf = entrainmentFriction(H, plateShapeFactor(Cf0), Cf0);
    const wallFriction = Math.max(0, Cf);
    const perSpeed = theta / Ue;
    const H1 = entrainmentShapeFactor(H);
    const equilibriumP = equilibriumGradient(H, wallFriction);
    const stress = Math.max(1e-9, maximumStress(CE, Cf0));
    const equilibriumStress = Math.max(1e-9, maximumStress(H1 * (wallFriction / 2 - (H + 1) * equilibriumP), Cf0));
    const HScale = 1 / (entrainmentShapeSlope(H) * theta);
    const relaxation = (0.02 * CE + CE * CE + (0.8 * Cf0) / 3) / (0.01 + CE);
    this.Cf0 = Cf0;
    this.Cf = Cf;
    this.thetaFree = wallFriction / 2 - theta * this.spread;
    this.thetaPerGradient = -(H + 2) * perSpeed;
    this.HFree = (CE - (H1 * wallFriction) / 2) * HScale;
    this.HPerGradient = H1 * (H + 1) * perSpeed * HScale;
    this.CEFree =
      (relaxation * ((2.8 / (H + H1)) * (Math.sqrt(equilibriumStress) - Math.sqrt(stress)) + equilibriumP)) / theta;
    this.CEPerGradient = -relaxation / Ue;
    this.relaxation = relaxation;
  }
}
