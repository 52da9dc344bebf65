import type { Advice, Finding } from '../../src/contract/advice.ts'

/** Addresses of the pages about one brief; `packed` is the brief as it stands in the link. */
export interface Links {
  readonly packed: string
  /** Ids of all calculations of the advice, so that no link leads nowhere. */
  readonly calculations: ReadonlySet<string>
}

export const linksTo = (packed: string, { trace }: Advice): Links => ({
  packed,
  calculations: new Set(trace.calculations.map(({ id }) => id)),
})

export const trailLink = ({ packed }: Pick<Links, 'packed'>, calculation: string) =>
  `/advice/trail?b=${packed}&id=${encodeURIComponent(calculation)}`

export const rulesLink = ({ packed }: Pick<Links, 'packed'>, point: number, equipment: string) =>
  `/advice/rules?b=${packed}&point=${point}&equipment=${encodeURIComponent(equipment)}`

export const rulesPartLink = (links: Links, point: number, equipment: string) =>
  rulesLink(links, point, equipment).replace('/advice/rules', '/advice/rules/part')

/** A rule in the rule book, with what it did for the brief in hand; the address of a rule never changes. */
export const ruleLink = (rule: string, packed: string | null) =>
  `/rules/${rule}${packed ? `?b=${packed}` : ''}`

/** The anchor of a rule's conditions where all rules tried are listed. */
export const ruleAnchor = (key: string) => `rule-${key.replace(/[^\w-]+/g, '-')}`

/** Two machines of a point side by side. */
export const ratherLink = ({ packed }: Pick<Links, 'packed'>, point: number, first: string, second: string) =>
  `/advice/rather?b=${packed}&point=${point}&first=${encodeURIComponent(first)}&second=${encodeURIComponent(second)}`

/** The anchor of one option's reasons on the advice page. */
export const reasonsAnchor = (point: number, equipment: string) => `why-${point}-${equipment}`

export type SizeName = 'best' | 'half' | 'expected' | 'sure' | 'cautious'

/** The calculation of one size of a finding; that of its expected size where the other has none of its own. */
export function sizeLink(links: Links, finding: Finding, size: SizeName): string {
  const own = finding.calculation.replace(/[^.]+$/, size)
  return trailLink(links, links.calculations.has(own) ? own : finding.calculation)
}

/** What can be opened on the advice: by htmx in its place, without script as a page of its own. */
export const PARTS = [
  'ladder',
  'why',
  'device',
  'points',
  'rivals',
  'prevent',
  'enters',
  'missing',
  'quotes',
  'cautions',
  'law',
  'assumed',
  'dose',
  'sources',
] as const
export type PartName = (typeof PARTS)[number]

export const partLink = (
  { packed }: Pick<Links, 'packed'>,
  part: PartName,
  point?: number,
  equipment?: string,
) =>
  `/advice/part?b=${packed}&part=${part}${point === undefined ? '' : `&point=${point}`}${equipment === undefined ? '' : `&equipment=${encodeURIComponent(equipment)}`}`

/** The ladder of one contaminant. */
export const ladderLink = (links: Pick<Links, 'packed'>, contaminant: number) =>
  `${partLink(links, 'ladder')}&contaminant=${contaminant}`
