import { elements } from './attenuation-table.ts'
import type { Material, MaterialKind } from './material.ts'

/** Kinds a person's own material may be of; a metal needs electrical constants besides, so it is not among them. */
const OWN_KINDS = ['glass', 'stone', 'bone', 'polymer', 'organic'] as const satisfies readonly MaterialKind[]

/** A material as a person describes it. */
export interface OwnMaterial {
  readonly name: string
  readonly kind: (typeof OWN_KINDS)[number]
  readonly densityGPerCm3: number
  /** Element symbol to mass fraction; together 1. */
  readonly massFractions: Readonly<Record<string, number>>
}

const BEGINS = 'own:'
/** Decimals of a percentage in an id; a trace below the last counts as none. */
const SHARE_DIGITS = 4
/** Descriptions kept at a time. */
const MOST_KEPT = 500
/** Characters of a wrong entry that its refusal repeats. */
const LONGEST_QUOTE = 60
/** How far the given percentages may be from 100 in all. */
const SLACK_PCT = 2

/**
 * Mass fractions from words such as "O 49, Si 33, Al 18" (per cent by mass, together 100 ± 2, taken as 100).
 * Throws RangeError with what was given and what is allowed.
 */
export function readElements(words: string): Readonly<Record<string, number>> {
  const shares = new Map<string, number>()
  for (const part of words.split(/[,;+\n]/).map((one) => one.trim())) {
    if (part === '') continue
    const [, symbol = '', share = ''] =
      /^([A-Za-z]{1,2})\s*(?:[:=]\s*)?(\d+(?:\.\d+)?)\s*%?$/.exec(part) ?? []
    if (symbol === '')
      throw new RangeError(
        `write elements as symbol and per cent by mass, such as "O 49, Si 33"; ${part.slice(0, LONGEST_QUOTE)} was given`,
      )
    if (!elements.has(symbol))
      throw new RangeError(`${symbol} is not the symbol of an element from hydrogen to bismuth`)
    shares.set(symbol, (shares.get(symbol) ?? 0) + Number(share))
  }
  const total = [...shares.values()].reduce((sum, share) => sum + share, 0)
  if (Math.abs(total - 100) > SLACK_PCT)
    throw new RangeError(
      `the elements must add up to 100 % by mass (± ${SLACK_PCT}); ${Number(total.toFixed(2))} % was given`,
    )
  return Object.fromEntries([...shares].map(([symbol, share]) => [symbol, share / total]))
}

/** An id that carries the whole description, so that the same description has the same id anywhere. */
export function ownMaterialId({ name, kind, densityGPerCm3, massFractions }: OwnMaterial): string {
  const shares = Object.entries(massFractions).map(
    ([symbol, share]) => `${symbol}${(share * 100).toFixed(SHARE_DIGITS)}`,
  )
  return `${BEGINS}${kind}:${densityGPerCm3}:${shares.join('+')}:${name.replace(/[^\p{L}\p{N} .()-]/gu, ' ').trim()}`
}

const kept = new Map<string, Material | undefined>()

/** The material an id of ownMaterialId describes; undefined for any other id, and for one that describes none. */
export function ownMaterial(id: string): Material | undefined {
  if (!id.startsWith(BEGINS)) return undefined
  if (!kept.has(id)) {
    if (kept.size >= MOST_KEPT) kept.clear()
    kept.set(id, fromId(id))
  }
  return kept.get(id)
}

function fromId(id: string): Material | undefined {
  const [kind = '', density = '', shares = '', name = ''] = id.slice(BEGINS.length).split(':')
  const known = OWN_KINDS.find((one) => one === kind)
  const densityGPerCm3 = Number(density)
  const massFractions = readOrNull(shares)
  if (!known || !(densityGPerCm3 > 0 && densityGPerCm3 <= 25) || !massFractions) return undefined
  return {
    id,
    label: name || 'own material',
    kind: known,
    densityGPerCm3,
    densityRange: null,
    massFractions,
    source: 'entered-with-the-brief',
    mark: 'A',
    note: 'Described by the person who wrote the brief; not checked.',
    food: null,
    family: [id],
  }
}

function readOrNull(shares: string): Readonly<Record<string, number>> | null {
  try {
    return readElements(shares)
  } catch {
    return null
  }
}
