import { describe, expect, it } from 'vitest'
import { currentCalculation } from '../../../src/advice/facts/renamed-ids.ts'
import { advise } from '../../../src/advise.ts'
import { demos } from '../../../src/brief/demos.ts'
import { parseBrief } from '../../../src/brief/index.ts'

describe('renamed calculations', () => {
  it.each([
    ['p0.coil-single.contaminant.3.expected', 'p0.coil-single.c3.expected'],
    ['p1.coil-multi.product.offCentre', 'p1.coil-multi.product.off-centre'],
    ['fit.widthNeededMm (point 0, xray-dual)', 'p0.xray-dual.fit.widthNeededMm'],
    ['flow.gapMm (point 11)', 'p11.flow.gapMm'],
    ['p0.xray-dual.c1.expected', 'p0.xray-dual.c1.expected'],
  ])('%s is found as %s', (was, now) => expect(currentCalculation(was)).toBe(now))

  it('every calculation of an advice is spelt one way, and by its present name', async () => {
    const parsed = parseBrief(demos[0]!.brief)
    if (!parsed.ok) throw new Error('the demo brief does not parse')
    const advice = await advise(parsed.brief, { withoutChanges: true, withoutMissing: true })
    const machines = new Set(
      advice.points.flatMap(({ options, removals }) => [...options, ...removals].map((o) => o.equipment)),
    )
    for (const { id } of advice.trace.calculations) {
      expect(currentCalculation(id)).toBe(id)
      expect(id).not.toMatch(/contaminant\.\d|point \d/)
      const [place, machine] = id.split('.')
      if (!/^p\d+$/.test(place!)) continue
      // What speaks of a contaminant names its machine first, or none: what arrives at a point is no machine's.
      if (/\.c\d+\./.test(id) && !/^c\d+$/.test(machine!)) expect(machines).toContain(machine)
    }
  })
})
