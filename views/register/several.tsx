import type { Register, Sentence } from '../../src/contract/register.ts'
import { ByRule, type Ink } from './ink.tsx'

/** Sentences of a register by their text, with the hazards they are said of. */
function bySentence({ hazards }: Register) {
  const said = new Map<string, { sentence: Sentence; of: string[] }>()
  for (const { label, line, says } of hazards)
    for (const sentence of says) {
      const one = said.get(sentence.text) ?? { sentence, of: [] }
      one.of.push(line === '' ? label : `${label}, ${line}`)
      said.set(sentence.text, one)
    }
  return said
}

/** The sentences said of one hazard alone: what holds for several stands once, ahead of them. */
export function ownSentences(register: Register, says: readonly Sentence[]): Sentence[] {
  const all = bySentence(register)
  return says.filter(({ text }) => (all.get(text)?.of.length ?? 0) < 2)
}

/** True where every hazard is held against the same acceptable level, which is then said once. */
export const oneLevel = ({ hazards }: Register): boolean =>
  hazards.length > 1 &&
  new Set(hazards.map(({ acceptableLevel: { text, basis } }) => `${text}|${basis}`)).size === 1

/** What is said of more than one hazard, once, with their names. */
export function OfSeveral({ register, ink }: { register: Register; ink: Ink }) {
  const several = [...bySentence(register).values()].filter(({ of }) => of.length > 1)
  const level = oneLevel(register) ? register.hazards[0]!.acceptableLevel : null
  if (several.length === 0 && level === null) return null
  return (
    <ul>
      {level === null ? null : (
        <li>
          <strong>Acceptable level of every hazard:</strong> {level.text}
          {level.basis ? ` (${level.basis})` : ''}
          <ByRule ink={ink} rule={level.rule} />
        </li>
      )}
      {several.map(({ sentence: { text, rule, sources }, of }) => (
        <li>
          <strong>{of.length === register.hazards.length ? 'Every hazard' : of.join('; ')}:</strong> {text}
          <ByRule ink={ink} rule={rule} sources={sources} />
        </li>
      ))}
    </ul>
  )
}
