import { choleskyFactor, correlationMatrix, possibleCoefficients } from "../../statistics/correlationMatrix";
import { type StatedKey, statedName } from "./statedUncertainties";

/** Correlation coefficient, -1 to 1, of two stated parts of a test's uncertainty. */
export interface StatedCorrelation {
  readonly between: readonly [StatedKey, StatedKey];
  readonly coefficient: number;
}

/** Something to say about stated correlations. */
export interface CorrelationRemark {
  /** Place in the list, from 0; null for several together. */
  readonly index: number | null;
  readonly message: string;
}

/**
 * What is wrong with a list of correlations: a part with itself, a pair twice, or coefficients that no quantities can have
 * together, since their matrix is not positive semidefinite. Correlations are counted from 1 in the messages.
 * @param correlations each coefficient from -1 to 1
 */
export function correlationFaults(correlations: readonly StatedCorrelation[]): CorrelationRemark[] {
  const faults: CorrelationRemark[] = [];
  for (const [index, { between }] of correlations.entries()) {
    const [one, other] = between;
    if (one === other) {
      const message = `both parts are "${statedName(one)}"; a correlation is between two different parts`;
      faults.push({ index, message });
      continue;
    }
    const first = correlations.findIndex((each) => each.between.includes(one) && each.between.includes(other));
    if (first < index) {
      const message = `correlation ${first + 1} is between the same parts; a pair must have one coefficient`;
      faults.push({ index, message });
    }
  }
  return faults.length > 0 ? faults : linkedGroups(correlations).flatMap(contradiction);
}

interface Numbered {
  readonly correlation: StatedCorrelation;
  readonly number: number;
}

/** Correlations that hang together through shared parts. */
function linkedGroups(correlations: readonly StatedCorrelation[]): Numbered[][] {
  let groups: Numbered[][] = [];
  for (const [i, correlation] of correlations.entries()) {
    const touches = (group: readonly Numbered[]) =>
      group.some(({ correlation: { between } }) => between.some((key) => correlation.between.includes(key)));
    const joined = groups.filter(touches).flat();
    groups = [...groups.filter((group) => !touches(group)), [...joined, { correlation, number: i + 1 }]];
  }
  return groups.map((group) => group.sort((a, b) => a.number - b.number));
}

/** Ways out that are told; with many parts there are as many as pairs. */
const mostWays = 6;

/** The fault of coefficients that contradict each other, with what each pair's could be while the others stay. */
function contradiction(group: readonly Numbered[]): CorrelationRemark[] {
  const keys = [...new Set(group.flatMap(({ correlation }) => correlation.between))];
  const matrix = correlationMatrix(
    keys,
    group.map(({ correlation }) => correlation),
  );
  if (choleskyFactor(matrix) !== null) return [];
  const named = group.map(({ correlation: { between }, number }) => ({ between, name: `correlation ${number}` }));
  const unnamed = keys.flatMap((one, i) =>
    keys.slice(i + 1).flatMap((other) => {
      const isNamed = named.some(({ between }) => between.includes(one) && between.includes(other));
      const name = `that of "${statedName(one)}" with "${statedName(other)}"`;
      return isNamed ? [] : [{ between: [one, other] as const, name }];
    }),
  );
  const ways = [...named, ...unnamed].flatMap(({ between, name }) => {
    const range = possibleCoefficients(matrix, keys.indexOf(between[0]), keys.indexOf(between[1]));
    return range === null ? [] : [`${name} ${rangeText(range)}`];
  });
  const names = keys.map((key) => `"${statedName(key)}"`).join(", ");
  const independent = unnamed.length === 0 ? "" : ", where pairs that are not listed are independent";
  const advice = ways.length === 0 ? "" : `; with the others as they are, ${ways.slice(0, mostWays).join(", or ")}`;
  const message = `no quantities can have the coefficients of ${names} together${independent}${advice}`;
  return [{ index: null, message }];
}

/** "must be from 0.62 to 1", both ends rounded inwards to three decimals. */
function rangeText([low, high]: readonly [number, number]): string {
  const thousandths = (value: number) => Number((1000 * value).toPrecision(12));
  const [from, to] = [Math.ceil(thousandths(low)) / 1000, Math.floor(thousandths(high)) / 1000];
  return from < to ? `must be from ${from} to ${to}` : `must be ${Number(((low + high) / 2).toPrecision(6))}`;
}
