import type { Calculation } from '../../contract/index.ts'

/** Shown digits: values of the trail are rounded, the computation is not. */
export const round = (value: number, digits = 5) =>
  Number.isFinite(value) ? Number(value.toPrecision(digits)) : value

/** One step of the trail. */
export function entry(
  id: string,
  label: string,
  symbol: string,
  value: number | string | null,
  unit: string,
  formula: string,
  inputs: readonly string[] = [],
  sources: readonly string[] = [],
): Calculation {
  return {
    id,
    label,
    symbol,
    value: typeof value === 'number' ? round(value) : value,
    unit,
    formula,
    inputs: [...inputs],
    sources: [...sources],
  }
}
