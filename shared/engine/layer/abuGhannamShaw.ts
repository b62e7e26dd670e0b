/**
 * Momentum-thickness Reynolds number at which transition starts under a pressure gradient and free-stream turbulence:
 * Re_theta = 163 + exp(F - F Tu / 6.91), F = 6.91 + 12.75 l + 63.64 l^2 (l <= 0) or 6.91 + 2.48 l - 12.27 l^2 (l > 0).
 * Source: Abu-Ghannam & Shaw (1980), J. Mech. Eng. Sci. 22, 213-228.
 * @param lambda l = theta^2 (dUe/ds) / nu; held at the ends of [-0.1, 0.1], the range of the measurements
 * @param turbulenceIntensity fraction of the local edge speed, at least 0
 */
export function abuGhannamShawTransition(lambda: number, turbulenceIntensity: number): number {
  const l = Math.max(-0.1, Math.min(0.1, lambda));
  const f = l <= 0 ? 6.91 + 12.75 * l + 63.64 * l * l : 6.91 + 2.48 * l - 12.27 * l * l;
  return 163 + Math.exp(f - (f * 100 * turbulenceIntensity) / 6.91);
}
