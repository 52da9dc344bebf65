import type { Answers } from './form/form.ts'

/** Rows of the records that speak of contaminants and points. */
const ROWS = /^(?:finds|answers|measured|demonstrated)\.\d+/

/** Fields of finds, answers and trials that speak of contaminants and points by number. */
const NUMBERED = { contaminants: 'c', points: 'p' } as const

/**
 * The same answers after a contaminant or point was taken out: finds and answers about it go, and those about later
 * ones move up by one. Fields of other lists stay.
 */
export function renumber(answers: Answers, list: string, gone: number): Answers {
  const letter = (NUMBERED as Readonly<Record<string, string>>)[list]
  if (!letter) return answers
  const dead = new Set<string>()
  const kept: Record<string, string> = {}
  for (const [path, value] of Object.entries(answers)) {
    const row = ROWS.exec(path)?.[0] ?? ''
    const next = renumbered(path, value, letter, gone)
    if (next === null) dead.add(row)
    else kept[path] = next
  }
  return Object.fromEntries(Object.entries(kept).filter(([path]) => !dead.has(ROWS.exec(path)?.[0] ?? ' ')))
}

function renumbered(path: string, value: string, letter: string, gone: number): string | null {
  if (/^(?:finds|measured|demonstrated)\.\d+\.contaminant$/.test(path) && letter === 'c') {
    const number = Number(value)
    return number === gone ? null : number > gone ? String(number - 1) : value
  }
  if (!/^answers\.\d+\.question$/.test(path)) return value
  const named = new RegExp(`(^|\\.)${letter}(\\d+)(?=\\.)`).exec(value)
  if (!named) return value
  const number = Number(named[2])
  if (number === gone) return null
  return number > gone ? value.replace(named[0], `${named[1]}${letter}${number - 1}`) : value
}
