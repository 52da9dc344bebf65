/** In full, or in plain words without statistics. */
export type Level = 'full' | 'plain'

/** How an exercise speaks. */
export interface Voice {
  readonly level: Level
  /** The one of two wordings that fits the level. */
  readonly say: (full: string, plain: string) => string
  /** A share from 0 to 1: "37 %" or "37 of 100". */
  readonly share: (share: number) => string
}

/** Shares near 0 and 1 keep the digits that matter, and claim no certainty. */
function percent(share: number): string {
  const value = share * 100
  if (value > 99.9) return 'over 99.9 %'
  if (value < 0.1) return 'under 0.1 %'
  return `${value > 99 || value < 10 ? Number(value.toPrecision(value > 99 ? 3 : 2)) : Math.round(value)} %`
}

function counted(share: number): string {
  if (share > 0.999) return 'nearly all'
  if (share < 0.001) return 'hardly any'
  if (share > 0.99 || share < 0.01) return `${Math.round(share * 1000)} of 1,000`
  return `${Math.round(share * 100)} of 100`
}

export const VOICES: Readonly<Record<Level, Voice>> = {
  full: { level: 'full', say: (full) => full, share: percent },
  plain: { level: 'plain', say: (_, plain) => plain, share: counted },
}
