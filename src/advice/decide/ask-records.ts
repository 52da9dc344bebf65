import type { Ask, AskedAt, Fact, FactValues } from '../../contract/index.ts'
import type { Rulebook } from '../book/rule-schema.ts'
import { FACTS } from '../facts/list/fact-list.ts'
import { placeId } from '../facts/place-id.ts'
import type { Asker, AskFound, FoundAt, LineOutcome } from '../stages.ts'
import { decide } from './decide.ts'

/**
 * Asks the book's rules of what was searched for, of the register and of the check plan, over the facts known of
 * the brief, the point and the contaminant.
 */
export function askerOf(book: Rulebook, known: readonly Fact[]): Asker {
  const outcomes: LineOutcome[] = []
  const facts = new Map<string, Fact>()
  const ofPlace = (place: string) => known.filter((fact) => fact.scope === place)
  const asked = async (at: AskedAt | FoundAt, values: FactValues, above: readonly Fact[]) => {
    const own = factsFrom(values, at)
    for (const fact of own) facts.set(`${fact.scope} ${fact.id}`, fact)
    const decided = await decide(book, at.ground, [...ofPlace('brief'), ...above, ...own])
    const { ground: _ground, ...place } = at
    const placed = decided.map((outcome): LineOutcome => ({ ...outcome, ...place, line: null }))
    outcomes.push(...placed)
    return placed.filter(({ outcome }) => outcome === 'fired')
  }
  const ask: Ask = async (at, values) => {
    const above = [
      ...(at.pointIndex === null || at.ground === 'hazard' ? [] : ofPlace(placeId({ point: at.pointIndex }))),
      ...(at.contaminant === null ? [] : ofPlace(placeId({ contaminant: at.contaminant }))),
    ]
    const fired = await asked(at, values, above)
    return fired.flatMap(({ slot, ...said }) => (slot === null ? [] : [{ ...said, slot }]))
  }
  const askFound: AskFound = (at, values) => asked(at, values, [])
  return { book, ask, askFound, outcomes, facts }
}

function factsFrom(values: FactValues, at: AskedAt | FoundAt): Fact[] {
  const place = placeId({ point: at.pointIndex, equipment: at.equipment, contaminant: at.contaminant })
  const scope = 'beside' in at ? `${place}.with.${at.beside}` : place
  return Object.entries(values).map(([id, value]) => {
    const definition = FACTS.get(id)
    if (!definition) throw new Error(`no fact ${JSON.stringify(id)} in the fact list; add it there first`)
    return Object.freeze({
      id,
      scope,
      label: definition.label,
      value,
      unit: definition.unit,
      origin: 'computed',
    })
  })
}
