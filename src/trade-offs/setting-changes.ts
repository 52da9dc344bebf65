import type { SizeStep } from './size-against.ts'

/** Neighbouring values at which a machine is set alike. */
export interface SettingRun {
  readonly from: SizeStep
  readonly to: SizeStep
  readonly kV: number | null
  readonly frequenciesKHz: readonly number[]
}

/** From this change on between two neighbouring values a tube voltage jumps, kV: more than two of its steps. */
const JUMP_KV = 15

const alike = (a: SizeStep, b: SizeStep) =>
  a.kV === b.kV && a.frequenciesKHz.join() === b.frequenciesKHz.join()

/** The runs of one setting along a curve. */
export function settingRuns(steps: readonly SizeStep[]): SettingRun[] {
  const runs: { from: SizeStep; to: SizeStep; kV: number | null; frequenciesKHz: readonly number[] }[] = []
  for (const step of steps) {
    const last = runs.at(-1)
    if (last && alike(last.to, step)) last.to = step
    else runs.push({ from: step, to: step, kV: step.kV, frequenciesKHz: step.frequenciesKHz })
  }
  return runs
}

/** Where a machine turns to a setting that is no neighbour of the one before: another voltage far off, other frequencies. */
export function settingJumps(steps: readonly SizeStep[]): { before: SettingRun; after: SettingRun }[] {
  const runs = settingRuns(steps)
  return runs.flatMap((after, at) => {
    const before = runs[at - 1]
    if (!before) return []
    const far =
      before.kV !== null && after.kV !== null
        ? Math.abs(after.kV - before.kV) >= JUMP_KV
        : before.frequenciesKHz.join() !== after.frequenciesKHz.join()
    return far ? [{ before, after }] : []
  })
}

/** True where a step is set otherwise than the one before it. */
export const isNewSetting = (steps: readonly SizeStep[], at: number): boolean =>
  at > 0 && !alike(steps[at - 1]!, steps[at]!)
