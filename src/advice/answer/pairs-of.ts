/** Two at a time, in their order. */
export const pairsOf = <T>(all: readonly T[]): (readonly [T, T])[] =>
  all.flatMap((a, i) => all.slice(i + 1).map((b) => [a, b] as const))
