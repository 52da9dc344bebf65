import type { Finding } from '../../contract/index.ts'

interface Finds {
  readonly findings: readonly Finding[]
}

/** Contaminants that more than one of the machines can find at some size. */
export function seenTwice(machines: readonly Finds[]): number[] {
  const times = new Map<number, number>()
  for (const { findings } of machines) {
    const found = new Set(findings.filter((f) => f.expectedMm !== null).map((f) => f.contaminant))
    for (const c of found) times.set(c, (times.get(c) ?? 0) + 1)
  }
  return [...times].flatMap(([c, n]) => (n > 1 ? [c] : [])).sort((a, b) => a - b)
}
