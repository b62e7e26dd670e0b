import type { Evaluation, Goal } from "./designSpace";

/**
 * Whether a is better than b: inside what is allowed while b is not, or less far outside, or, both inside, in no goal
 * worse and in one better. Source: Deb, Pratap, Agarwal & Meyarivan (2002), IEEE Trans. Evol. Comput. 6, 182-197, VI.
 */
export function dominates(a: Evaluation, b: Evaluation, goals: readonly Goal[]): boolean {
  if (a.violation > 0 || b.violation > 0) return a.violation < b.violation;
  let isBetter = false;
  for (let i = 0; i < goals.length; i++) {
    const gain = goals[i].sense === "least" ? b.goals[i] - a.goals[i] : a.goals[i] - b.goals[i];
    if (gain < 0) return false;
    if (gain > 0) isBetter = true;
  }
  return isBetter;
}

/** Indices in layers: layer 0 is beaten by none, layer 1 only by layer 0, and so on (Deb et al. 2002, III A). */
export function nondominatedLayers(evaluations: readonly Evaluation[], goals: readonly Goal[]): number[][] {
  const beatenBy = evaluations.map(() => 0);
  const beats: number[][] = evaluations.map(() => []);
  for (let i = 0; i < evaluations.length; i++) {
    for (let j = 0; j < i; j++) {
      if (dominates(evaluations[i], evaluations[j], goals)) {
        beats[i].push(j);
        beatenBy[j]++;
      } else if (dominates(evaluations[j], evaluations[i], goals)) {
        beats[j].push(i);
        beatenBy[i]++;
      }
    }
  }
  const layers: number[][] = [];
  let layer = evaluations.map((_, i) => i).filter((i) => beatenBy[i] === 0);
  while (layer.length > 0) {
    layers.push(layer);
    const next: number[] = [];
    for (const i of layer) {
      for (const j of beats[i]) {
        beatenBy[j]--;
        if (beatenBy[j] === 0) next.push(j);
      }
    }
    layer = next.sort((a, b) => a - b);
  }
  return layers;
}

/** The allowed evaluations that none beats, without repeats of equal goals, in order of the first goal. */
export function paretoFront(evaluations: readonly Evaluation[], goals: readonly Goal[]): Evaluation[] {
  const allowed = evaluations.filter((evaluation) => evaluation.violation === 0);
  const [first] = nondominatedLayers(allowed, goals);
  if (first === undefined) return [];
  const sorted = first.map((i) => allowed[i]).sort((a, b) => a.goals[0] - b.goals[0]);
  const isSame = (a: Evaluation, b: Evaluation) => a.goals.every((goal, i) => goal === b.goals[i]);
  return sorted.filter((evaluation, i) => !sorted.slice(0, i).some((earlier) => isSame(earlier, evaluation)));
}

/**
 * How much room each member of a layer has: the sum over goals of the gap between its neighbours over the layer's
 * range, infinite at the ends (Deb et al. 2002, III B).
 * @returns shape [layer]
 */
export function crowdingDistances(layer: readonly Evaluation[], goalCount: number): Float64Array {
  const distance = new Float64Array(layer.length);
  for (let goal = 0; goal < goalCount; goal++) {
    const order = layer.map((_, i) => i).sort((a, b) => layer[a].goals[goal] - layer[b].goals[goal]);
    const range = layer[order[order.length - 1]].goals[goal] - layer[order[0]].goals[goal];
    distance[order[0]] = Number.POSITIVE_INFINITY;
    distance[order[order.length - 1]] = Number.POSITIVE_INFINITY;
    if (!(range > 0)) continue;
    for (let k = 1; k < order.length - 1; k++) {
      distance[order[k]] += (layer[order[k + 1]].goals[goal] - layer[order[k - 1]].goals[goal]) / range;
    }
  }
  return distance;
}
