/** Values of a few recent keys: scenes of one machine and food follow one another. */
export function recent<T>(most: number): (key: string, make: () => T) => T {
  const kept = new Map<string, T>()
  return (key, make) => {
    let value = kept.get(key)
    if (value === undefined) {
      value = make()
      if (kept.size >= most) kept.delete(kept.keys().next().value!)
      kept.set(key, value)
    }
    return value
  }
}
