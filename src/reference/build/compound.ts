/** Element symbol to mass fraction (sums to 1). */
export type MassFractions = Record<string, number>

const TERM = /([A-Z][a-z]?)(\d+(?:\.\d+)?)?/g

/**
 * Mass fractions of a compound from its formula, w_i = n_i A_i / sum(n A).
 * `formula` without brackets ("C6H10O5", "Mn0.6Zn0.3Fe2.1O4"); `weights` in g/mol by symbol.
 */
export function compoundFractions(formula: string, weights: Readonly<Record<string, number>>): MassFractions {
  if (formula.replaceAll(TERM, '') !== '')
    throw new Error(`formula "${formula}" holds something other than elements and counts`)
  const masses: MassFractions = {}
  for (const [, symbol, count] of formula.matchAll(TERM)) {
    const weight = weights[symbol!]
    if (weight === undefined) throw new Error(`formula "${formula}": no atomic weight for ${symbol}`)
    masses[symbol!] = (masses[symbol!] ?? 0) + weight * Number(count ?? 1)
  }
  return normalised(masses)
}

/** Mixture by mass: `shares[i]` of `parts[i]`; the result sums to 1 whatever the shares sum to. */
export function mixed(parts: readonly { share: number; fractions: MassFractions }[]): MassFractions {
  const sum: MassFractions = {}
  for (const { share, fractions } of parts)
    for (const [symbol, w] of Object.entries(fractions)) sum[symbol] = (sum[symbol] ?? 0) + share * w
  return normalised(sum)
}

/** Rounded to five decimals; shares that round to nothing are left out. */
export function rounded(fractions: MassFractions): MassFractions {
  const entries = Object.entries(fractions).map(([s, w]) => [s, Math.round(w * 1e5) / 1e5] as const)
  return Object.fromEntries(entries.filter(([, w]) => w > 0))
}

function normalised(masses: MassFractions): MassFractions {
  const total = Object.values(masses).reduce((a, b) => a + b, 0)
  return Object.fromEntries(Object.entries(masses).map(([s, m]) => [s, m / total]))
}
