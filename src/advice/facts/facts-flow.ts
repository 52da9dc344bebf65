import type { Point } from '../../contract/index.ts'
import type { FactWriter } from './fact-sheet.ts'

/** Spacing in a lane, the gap it leaves, what false rejects cost a day, and what a failed check puts on hold. */
export function writeFlow(write: FactWriter, point: Point): void {
  const { packsPerMin, checkIntervalMin } = point
  const pitchMm = packsPerMin === null ? null : (1000 * point.speedMPerMin * point.lanes) / packsPerMin
  write.derived('flow.pitchMm', pitchMm, 'p', 'belt speed × lanes ÷ packs per minute', [
    'point.speedMPerMin',
    'point.lanes',
    'point.packsPerMin',
  ])
  write.derived('flow.gapMm', pitchMm === null ? null : pitchMm - point.lengthMm, 'g', 'spacing − length', [
    'flow.pitchMm',
    'point.lengthMm',
  ])
  const perDay =
    packsPerMin === null ? null : point.falseRejectsPerPack * packsPerMin * 60 * point.hoursPerDay
  write.derived(
    'flow.falseRejectsPerDay',
    perDay,
    'R',
    'false rejects per pack × packs per minute × 60 × hours per day',
    ['point.packsPerMin', 'point.hoursPerDay'],
  )
  const held =
    packsPerMin === null || checkIntervalMin === null
      ? null
      : packsPerMin * (checkIntervalMin + (point.reactMin ?? 0))
  write.derived('flow.holdPacks', held, 'Q', 'packs per minute × (time between checks + time to react)', [
    'point.packsPerMin',
    'point.checkIntervalMin',
  ])
}

/** Food that a failed check puts on hold where there are no packs to count. */
export function writeHold(write: FactWriter, { kgPerHour, checkIntervalMin, reactMin }: Point): void {
  const heldKg =
    kgPerHour === null || checkIntervalMin === null
      ? null
      : (kgPerHour / 60) * (checkIntervalMin + (reactMin ?? 0))
  write.derived('flow.holdKg', heldKg, 'Q', 'throughput ÷ 60 × (time between checks + time to react)', [
    'point.kgPerHour',
    'point.checkIntervalMin',
  ])
}
