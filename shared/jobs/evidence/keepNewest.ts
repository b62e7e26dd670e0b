/**
 * A function that remembers its newest few answers: a search asks for the same ones again.
 * @param keyOf tells questions with one answer from others
 * @param most  how many answers are kept
 */
export function keepNewest<Question, Answer>(
  answer: (question: Question) => Answer,
  keyOf: (question: Question) => string,
  most = 8,
): (question: Question) => Answer {
  const kept = new Map<string, Answer>();
  return (question) => {
    const key = keyOf(question);
    const known = kept.has(key) ? (kept.get(key) as Answer) : answer(question);
    kept.delete(key);
    kept.set(key, known);
    if (kept.size > most) kept.delete(kept.keys().next().value!);
    return known;
  };
}
