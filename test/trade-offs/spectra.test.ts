import { describe, expect, it } from 'vitest'
import { lineUp } from '../../src/advice/assess/line-up.ts'
import { parseBrief } from '../../src/brief/index.ts'
import type { Brief, XrayMachine } from '../../src/contract/index.ts'
import { spectraOf } from '../../src/trade-offs/trade-offs.ts'
import { materialAttenuation } from '../../src/xray/places/pack-in-beam.ts'

function briefWith(heightMm: number, wallMm: number): Brief {
  const parsed = parseBrief({
    product: { food: 'custom', composition: WATER, densityGPerCm3: 1, structure: 'liquid' },
    points: [
      {
        stage: 'packed',
        heightMm,
        widthMm: 80,
        lengthMm: 80,
        speedMPerMin: 20,
        parts: [{ material: 'glass_container', mm: wallMm, place: 'base' }],
      },
    ],
    contaminants: [{ material: 'aluminium', mustFindMm: 3 }],
  })
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return parsed.brief
}
const WATER = { waterPct: 100, proteinPct: 0, fatPct: 0, carbohydratePct: 0, ashPct: 0 }

const machine = lineUp(briefWith(40, 3), briefWith(40, 3).points[0]!).find(
  (one) => one.machine.id === 'xray-single',
)?.machine as XrayMachine
const drawn = (heightMm: number, wallMm: number, kV: number) =>
  spectraOf(briefWith(heightMm, wallMm), 0, 0, [{ machine, kV }])!

describe('attenuation and spectra', () => {
  it('gives water the linear attenuation of the NIST tables, and the piece that of the model, per cm', () => {
    // NIST Standard Reference Database 126 (Hubbell, Seltzer): μ/ρ of water 0.2059 cm²/g at 60 keV, 0.3756 at 30 keV.
    // Read between two bins of 1 keV: within 1 %.
    const { curves, energiesKeV } = drawn(40, 3, 80)
    const [food, piece] = curves
    for (const [keV, tabled] of [
      [60, 0.2059],
      [30, 0.3756],
    ] as const) {
      const at = energiesKeV.indexOf(keV - 0.5)
      const between = Math.sqrt(food!.muPerCm[at]! * food!.muPerCm[at + 1]!)
      expect(Math.abs(between / tabled - 1)).toBeLessThan(0.01)
      expect(piece!.muPerCm[at]).toBeCloseTo(materialAttenuation('aluminium')[at]! * 10, 10)
    }
  })

  it('draws the part of the pack that stops most, and none that stops next to nothing', () => {
    expect(
      drawn(40, 3, 80)
        .curves.map(({ kind, label }) => [kind, label])
        .at(-1)?.[0],
    ).toBe('pack')
    expect(drawn(40, 0.01, 80).curves.map(({ kind }) => kind)).toEqual(['food', 'piece'])
  })

  it('lets less and harder light through more food', () => {
    const [thin, thick] = [drawn(20, 1, 80).tubes[0]!, drawn(60, 1, 80).tubes[0]!]
    expect(thick.passing).toBeLessThan(thin.passing)
    expect(thick.meanThroughKeV).toBeGreaterThan(thin.meanThroughKeV)
    expect(thick.meanSentKeV).toBe(thin.meanSentKeV)
    expect(thin.meanThroughKeV).toBeGreaterThan(thin.meanSentKeV)
  })

  it('reaches up to the tube voltage and no further, and what comes through is drawn on the scale of what is sent', () => {
    const { tubes, energiesKeV } = drawn(40, 3, 60)
    expect(energiesKeV.at(-1)).toBeLessThan(60)
    const { sent, through, passing } = tubes[0]!
    for (const shares of [sent, through]) expect(shares).toHaveLength(energiesKeV.length)
    expect(Math.max(...sent)).toBe(1)
    expect(Math.max(...through)).toBeLessThan(1)
    const sum = (shares: readonly number[]) => shares.reduce((total, one) => total + one, 0)
    expect(sum(through) / sum(sent)).toBeCloseTo(passing, 2)
    expect(spectraOf(briefWith(40, 3), 0, 0, [])).toBeNull()
  })
})
