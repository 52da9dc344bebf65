/** Groups of up to `size` values, in order. */
export async function* grouped<Value>(values: AsyncIterable<Value>, size: number): AsyncGenerator<Value[]> {
  let group: Value[] = []
  for await (const value of values) {
    group.push(value)
    if (group.length < size) continue
    yield group
    group = []
  }
  if (group.length > 0) yield group
}

/**
 * Works values out side by side, at most `atOnce` begun and not yet handed on, and hands the answers on in the order
 * of the values: what is held does not grow with how many there are.
 */
export async function* inOrder<Value, Answer>(
  values: AsyncIterable<Value>,
  atOnce: number,
  work: (value: Value) => Promise<Answer>,
): AsyncGenerator<Answer> {
  const begun: Promise<Answer>[] = []
  const begin = (value: Value) => {
    const answer = work(value)
    // A failure is met when its turn comes; until then it is nobody's.
    answer.catch(() => {})
    begun.push(answer)
  }
  for await (const value of values) {
    begin(value)
    if (begun.length >= atOnce) yield await begun.shift()!
  }
  while (begun.length > 0) yield await begun.shift()!
}
