import type { Calculation } from '../../contract/index.ts'

/** Sources of the register's figures, as the rule book lists them. */
export const FRAGMENTS = 'fragment-lengths-assumed'
export const WORKING = 'working-share-assumed'
export const COUNTS = 'poisson-counts'
export const HOLD = 'hold-arithmetic'

/** A calculation of the register or the check plan, for the trail. */
export const calculation = (
  id: string,
  label: string,
  symbol: string,
  value: number | null,
  unit: string,
  formula: string,
  inputs: readonly string[],
  sources: readonly string[],
): Calculation => ({ id, label, symbol, value, unit, formula, inputs: [...inputs], sources: [...sources] })
