import type { FactDefinition } from './fact-definition.ts'

type Row = readonly [id: string, label: string, unit: FactDefinition['unit'], type: FactDefinition['type']]

/** Families that take pieces out: shares, no sizes. */
export const REMOVAL_FAMILIES = ['sieve', 'magnet', 'optical', 'density'] as const

const SIEVE: readonly Row[] = [
  ['sieve.meshMm', 'opening of the sieve', 'mm', 'number'],
  ['sieve.largestGrainMm', 'largest product particle', 'mm', 'number'],
]
const FINDING: readonly Row[] = [
  ['removal.applicable', 'the machine has a use for this contaminant here', '', 'boolean'],
  ['removal.leastPct', 'share removed, unfavourable end', '%', 'number'],
  ['removal.mostPct', 'share removed, favourable end', '%', 'number'],
  ['removal.ceilingPct', 'share that no larger piece lifts', '%', 'number'],
]

const rows = (
  scope: 'option' | 'finding',
  families: NonNullable<FactDefinition['families']>,
  list: readonly Row[],
): FactDefinition[] => list.map(([id, label, unit, type]) => ({ id, label, unit, type, scope, families }))

/** Facts of sieves, magnets, optical sorters and density separators. */
export const REMOVAL_FACTS: readonly FactDefinition[] = [
  ...rows('option', ['sieve'], SIEVE),
  ...rows('finding', REMOVAL_FAMILIES, FINDING),
]
