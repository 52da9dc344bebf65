import { describe, expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'
import { figures } from '../../src/reference/separation.ts'
import { surroundingsOf } from '../../src/separation/magnet/magnet-surroundings.ts'
import { Trail } from '../../src/separation/trail.ts'

function around(food: string, stage: 'loose' | 'free-fall' | 'pumped') {
  const acrossMm = stage === 'loose' ? 90 : 80
  const parsed = parseBrief({
    product: { food },
    points: [
      { stage, heightMm: acrossMm, widthMm: acrossMm, lengthMm: 90, speedMPerMin: 60, pipeDiameterMm: 80 },
    ],
    contaminants: [{ material: 'steel', mustFindMm: 2 }],
  })
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return surroundingsOf(parsed.brief.points[0]!, new Trail('t'))
}

describe('what stands between a piece and the magnet', () => {
  it('in a pumped paste: its yield stress and viscosity, with no room for a grate', () => {
    const { worst, best, grate } = around('beef_mince', 'pumped')
    const factor = figures['yield-factor'].value
    const [least, most] = figures['yield-stress-solid'].range
    expect([best.resistancePa, worst.resistancePa]).toEqual([factor * least, factor * most])
    expect([best.liquid!.viscosityPaS, worst.liquid!.viscosityPaS]).toEqual(figures['viscosity-solid'].range)
    expect(grate).toBe(false)
    expect([best.layerM, worst.layerM]).toEqual([0.04, 0.04])
  })

  it('in a falling stream: only the time, over half the bore or half a gap', () => {
    const { worst, best, grate } = around('flour', 'free-fall')
    expect([worst.resistancePa, worst.liquid, worst.lifts]).toEqual([0, null, false])
    expect([best.layerM, worst.layerM]).toEqual([0.0125, 0.04])
    // Bars of 25 mm, one to three rows, at 1 m/s.
    expect([worst.timeS, best.timeS]).toEqual([0.025, 0.075])
    expect(grate).toBe(true)
  })

  it('on a belt: the whole layer and its bed, lifted at worst', () => {
    const { worst, best } = around('hazelnut', 'loose')
    expect([worst.layerM, best.layerM]).toEqual([0.09, 0.09])
    expect([worst.lifts, best.lifts]).toEqual([true, false])
    expect(worst.resistancePa / best.resistancePa).toBeCloseTo(10, 9)
  })
})
