/**
 * A function of plain values that keeps its latest answers; input with the same key (as JSON; the whole input
 * unless said otherwise) gives the same answer.
 */
export function remembered<Input, Answer>(
  compute: (input: Input) => Answer,
  most: number,
  keyOf: (input: Input) => unknown = (input) => input,
): (input: Input) => Answer {
  const kept = new Map<string, Answer>()
  return (input) => {
    const key = JSON.stringify(keyOf(input))
    const answer = kept.has(key) ? kept.get(key)! : compute(input)
    kept.delete(key)
    kept.set(key, answer)
    if (kept.size > most) kept.delete(kept.keys().next().value!)
    return answer
  }
}
