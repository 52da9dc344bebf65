import type { Came } from './doors.ts'
import { MACHINE_WORDS, readable } from './machine-words.ts'

/** Where a text is taken, each door's own way of saying so. */
const TAKEN: Readonly<Record<Came['door'], number>> = {
  api: 200,
  address: 200,
  import: 303,
  command: 200,
  report: 200,
}
const REFUSED = [400, 413, 422]
const MOST_SAID = 30_000
const MOST_PROBLEMS = 50

/** What is wrong with how the doors answered one text; empty where nothing is. */
export function faultsIn(came: readonly Came[]): string[] {
  const faults: string[] = []
  const taken = came.map(({ door, status }) => status === TAKEN[door])
  if (new Set(taken).size > 1)
    faults.push(`doors disagree: ${came.map(({ door, status }) => `${door} ${status}`).join(', ')}`)
  for (const one of came) {
    if (one.status === TAKEN[one.door]) continue
    const say = (what: string) => faults.push(`${one.door} ${one.status}: ${what}`)
    if (!REFUSED.includes(one.status)) say('neither taken nor refused')
    const said = one.problems ? one.problems.map(({ message }) => message).join('\n') : one.said
    // Most pages hold no such word at all, not even in their marks: those need not be read as a person reads.
    const words = one.problems || !MACHINE_WORDS.test(said) ? said : readable(said)
    const machine = MACHINE_WORDS.test(said) ? MACHINE_WORDS.exec(words) : null
    if (machine) say(`says "${words.slice(Math.max(0, machine.index - 60), machine.index + 40)}"`)
    if (['api', 'command', 'report'].includes(one.door) && words.length > MOST_SAID)
      say(`says ${words.length} characters`)
    if (one.problems?.length === 0) say('refuses without a problem')
    if ((one.problems?.length ?? 0) > MOST_PROBLEMS) say(`tells ${one.problems?.length} problems`)
  }
  return faults
}
