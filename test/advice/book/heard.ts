import type { SaidOfExample } from '../../../src/commands/try-example.ts'

/** Rules a reader meets: all that is named anywhere in the advice but in its trace, which holds every rule tried. */
export function heard(advice: SaidOfExample): string[] {
  const { trace: _tried, ...said } = advice
  const cautions = 'cautions' in advice ? advice.cautions : []
  return [...cautions.map(({ id }) => id), ...rulesNamed({ ...said, brief: null })]
}

function rulesNamed(part: unknown): string[] {
  if (typeof part !== 'object' || part === null) return []
  return Object.entries(part).flatMap(([key, value]) => {
    if (/^(?:rule|questionRule)$/.test(key) && typeof value === 'string') return [value]
    if (key === 'rules' && Array.isArray(value)) return value as string[]
    return rulesNamed(value)
  })
}
