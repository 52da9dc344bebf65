import type { Ask, AskedAt, Fact, FactValues } from '../../contract/index.ts'
import type { Rulebook } from '../book/rule-schema.ts'
import { FACTS } from '../facts/list/fact-list.ts'
import { placeId } from '../facts/place-id.ts'
import type { Asker, PlacedOutcome } from '../stages.ts'
import { decide } from './decide.ts'

/** Asks the book's rules of the register over the facts known of the brief, the point and the contaminant. */
export function askerOf(book: Rulebook, known: readonly Fact[]): Asker {
  const outcomes: PlacedOutcome[] = []
  const facts = new Map<string, Fact>()
  const ofPlace = (place: string) => known.filter((fact) => fact.scope === place)
  const ask: Ask = async (at, values) => {
    const own = factsFrom(values, at)
    for (const fact of own) facts.set(`${fact.scope} ${fact.id}`, fact)
    const decided = await decide(book, at.ground, [
      ...ofPlace('brief'),
      ...(at.pointIndex === null || at.ground === 'hazard' ? [] : ofPlace(placeId({ point: at.pointIndex }))),
      ...(at.contaminant === null ? [] : ofPlace(placeId({ contaminant: at.contaminant }))),
      ...own,
    ])
    const { pointIndex, equipment, contaminant } = at
    outcomes.push(...decided.map((outcome) => ({ ...outcome, pointIndex, equipment, contaminant })))
    return decided.flatMap(({ outcome, slot, ...said }) =>
      outcome === 'fired' && slot !== null ? [{ ...said, slot }] : [],
    )
  }
  return { book, ask, outcomes, facts }
}

function factsFrom(values: FactValues, { pointIndex, equipment, contaminant }: AskedAt): Fact[] {
  const scope = placeId({ point: pointIndex, equipment, contaminant })
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
