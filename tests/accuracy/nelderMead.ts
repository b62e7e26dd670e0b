/**
 * Least value of a function by the simplex of Nelder and Mead, with the coefficients of their paper.
 * Source: Nelder & Mead (1965), Computer J. 7, 308-313.
 * @param start shape [n]
 * @param step  first side of the simplex along every axis
 */
export function nelderMead(
  f: (x: readonly number[]) => number,
  start: readonly number[],
  step: number,
  evaluations: number,
): { readonly x: readonly number[]; readonly value: number } {
  const at = (x: readonly number[]) => ({ x, value: f(x) });
  let simplex = [at(start), ...start.map((_, i) => at(start.map((value, k) => (k === i ? value + step : value))))];
  for (let used = simplex.length; used < evaluations; ) {
    simplex.sort((a, b) => a.value - b.value);
    const worst = simplex[simplex.length - 1];
    const rest = simplex.slice(0, -1);
    const middle = start.map((_, i) => rest.reduce((sum, { x }) => sum + x[i], 0) / rest.length);
    const along = (t: number) => at(middle.map((m, i) => m + t * (worst.x[i] - m)));
    const reflected = along(-1);
    used++;
    let next = reflected;
    if (reflected.value < simplex[0].value) {
      const expanded = along(-2);
      used++;
      if (expanded.value < reflected.value) next = expanded;
    } else if (reflected.value >= rest[rest.length - 1].value) {
      const contracted = along(reflected.value < worst.value ? -0.5 : 0.5);
      used++;
      if (contracted.value >= Math.min(reflected.value, worst.value)) {
        const [best] = simplex;
        simplex = [best, ...simplex.slice(1).map(({ x }) => at(x.map((value, i) => (value + best.x[i]) / 2)))];
        used += simplex.length - 1;
        continue;
      }
      next = contracted;
    }
    simplex = [...rest, next];
  }
  return simplex.reduce((a, b) => (b.value < a.value ? b : a));
}
