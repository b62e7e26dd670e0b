/**
 * The function with its last result remembered: called again with the very same arguments it gives the very same result,
 * so that a plot whose inputs stand still is not drawn anew while others move.
 */
export function remembered<Arguments extends readonly unknown[], Result>(
  compute: (...given: Arguments) => Result,
): (...given: Arguments) => Result {
  let last: { readonly given: Arguments; readonly result: Result } | null = null;
  return (...given) => {
    const known = last;
    if (known?.given.length === given.length && given.every((value, i) => Object.is(value, known.given[i]))) {
      return known.result;
    }
    const result = compute(...given);
    last = { given, result };
    return result;
  };
}
