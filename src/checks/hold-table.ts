/** What a line has to hold when a check fails, at one interval. */
export interface HoldRow {
  readonly intervalMin: number
  readonly packsHeld: number
  /** null where the mass of a pack is not known. */
  readonly kgHeld: number | null
  readonly hoursToReinspect: number
  readonly checksPerDay: number
  readonly minutesPerDay: number
}

export interface HeldLine {
  readonly packsPerMin: number
  readonly massG: number | null
  readonly hoursPerDay: number
  readonly reactMin: number
  /** Packs a minute that re-inspection takes. */
  readonly reinspectPerMin: number
  readonly minutesPerCheck: number
}

/** Intervals to choose from, minutes. */
export const INTERVALS_MIN = [15, 30, 60, 120, 240, 480] as const

/** Checks a day at an interval, start and end of the run counted. */
export const checksPerDay = (hoursPerDay: number, intervalMin: number): number =>
  Math.floor((hoursPerDay * 60) / intervalMin) + 1

/**
 * Packs since the last good check and those until somebody reacts, with what they cost: packs = rate · (interval +
 * time to react). All lengths of time in minutes unless named otherwise.
 */
export function holdRow(line: HeldLine, intervalMin: number): HoldRow {
  const packsHeld = line.packsPerMin * (intervalMin + line.reactMin)
  const checks = checksPerDay(line.hoursPerDay, intervalMin)
  return {
    intervalMin,
    packsHeld,
    kgHeld: line.massG === null ? null : (packsHeld * line.massG) / 1000,
    hoursToReinspect: packsHeld / line.reinspectPerMin / 60,
    checksPerDay: checks,
    minutesPerDay: checks * line.minutesPerCheck,
  }
}
