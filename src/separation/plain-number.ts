/** A number with at most `digits` significant digits and no needless zeros, for sentences. */
export const plain = (value: number, digits = 2): string => {
  if (!Number.isFinite(value)) return 'unlimited'
  return Math.abs(value) >= 100 ? value.toFixed(0) : String(Number(value.toPrecision(digits)))
}

/** A length in mm, for sentences. */
export const mm = (value: number, digits = 2): string => `${plain(value, digits)} mm`

/** A share kept to a tenth of a per cent: anything smaller is nothing that could be promised. */
export const share = (value: number): number => Math.min(1, Math.max(0, Math.round(value * 1000) / 1000))
