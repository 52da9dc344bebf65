import { describe, expect, it } from 'vitest'
import { isNewSetting, settingJumps, settingRuns } from '../../src/trade-offs/setting-changes.ts'
import type { SizeStep } from '../../src/trade-offs/size-against.ts'

const step = (value: number, kV: number | null, frequenciesKHz: number[] = []) =>
  ({ value, kV, frequenciesKHz }) as unknown as SizeStep
const xray = [step(10, 45), step(15, 45), step(20, 50), step(30, 80)]
const coil = [step(1, null, [300]), step(2, null, [300]), step(3, null, [50])]

describe('settings along a curve', () => {
  it('are told in runs of the same one', () => {
    expect(settingRuns(xray).map(({ from, to, kV }) => [from.value, to.value, kV])).toEqual([
      [10, 15, 45],
      [20, 20, 50],
      [30, 30, 80],
    ])
    expect(xray.map((_, at) => isNewSetting(xray, at))).toEqual([false, false, true, true])
  })

  it('jump where the next one is no neighbour', () => {
    expect(settingJumps(xray).map(({ before, after }) => [before.kV, after.kV])).toEqual([[50, 80]])
    expect(settingJumps(coil).map(({ after }) => after.frequenciesKHz)).toEqual([[50]])
  })
})
