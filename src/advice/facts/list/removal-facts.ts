import { type FactDefinition, type FactRow, factsOf } from './fact-definition.ts'

/** Families that take pieces out: shares, no sizes. */
export const REMOVAL_FAMILIES = ['sieve', 'magnet', 'optical', 'density'] as const

const SIEVE: readonly FactRow[] = [
  ['sieve.meshMm', 'opening of the sieve', 'mm', 'number'],
  ['sieve.largestGrainMm', 'largest product particle', 'mm', 'number'],
]
const FINDING: readonly FactRow[] = [
  ['removal.applicable', 'the machine has a use for this contaminant here', '', 'boolean'],
  ['removal.leastPct', 'share removed, unfavourable end', '%', 'number'],
  ['removal.mostPct', 'share removed, favourable end', '%', 'number'],
  ['removal.ceilingPct', 'share that no larger piece lifts', '%', 'number'],
]

/** Facts of sieves, magnets, optical sorters and density separators. */
export const REMOVAL_FACTS: readonly FactDefinition[] = [
  ...factsOf('option', SIEVE, ['sieve']),
  ...factsOf('finding', FINDING, REMOVAL_FAMILIES),
]
