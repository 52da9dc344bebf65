/** A line as a hold sees it. */
export interface HoldLine {
  readonly packsPerMin: number
  readonly checkIntervalMin: number
  readonly reactMin: number
}

/** Packs to hold when a check fails: all since the last good one, packs × (interval + time to react). */
export const packsToHold = ({ packsPerMin, checkIntervalMin, reactMin }: HoldLine): number =>
  packsPerMin * (checkIntervalMin + reactMin)
