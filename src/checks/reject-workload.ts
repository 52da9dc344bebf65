/** What the rejects of a day cost and hold. */
export interface Workload {
  readonly falsePerDay: number
  /** Packs with a piece that are taken out a day; null where no incidence is known. */
  readonly truePerDay: number | null
  /** Chance that a rejected pack holds a piece. */
  readonly chanceOfPiece: number | null
  readonly hoursToOpenAll: number
}

/** Packs, rates per pack and per million packs, minutes a pack. */
export function rejectWorkload(
  packsPerDay: number,
  falsePerPack: number,
  foundPerMillion: number | null,
  minutesAPack: number,
): Workload {
  const falsePerDay = packsPerDay * falsePerPack
  const truePerDay = foundPerMillion === null ? null : (packsPerDay * foundPerMillion) / 1e6
  const all = falsePerDay + (truePerDay ?? 0)
  return {
    falsePerDay,
    truePerDay,
    chanceOfPiece: truePerDay === null || all === 0 ? null : truePerDay / all,
    hoursToOpenAll: (all * minutesAPack) / 60,
  }
}
