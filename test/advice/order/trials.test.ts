import { describe, expect, it } from 'vitest'
import { combine } from '../../../src/advice/order/combine.ts'
import { contrastOf } from '../../../src/advice/order/contrast.ts'
import { orderAmong } from '../../../src/advice/order/order.ts'
import type { Standing } from '../../../src/advice/stages.ts'
import type { Finding } from '../../../src/contract/index.ts'
import { sampleBrief } from '../sample.ts'
import { finding, option } from './options-by-hand.ts'

const brief = sampleBrief()
const trial = (sizeMm: number): Finding['demonstrated'] => ({
  point: 'after packing',
  equipment: 'any',
  contaminant: 0,
  sizeMm,
  basis: 'exact',
  packs: 29,
})
const placed = (name: string, burden: number, over: Partial<Finding>): Standing => ({
  ...option(name, 1, [finding(0, over)], { burden }),
  excluded: false,
})
/** In their order, with the burden against the outcome of the trial. */
const order = (...options: readonly Standing[]) =>
  [...options]
    .sort(orderAmong(brief.contaminants, options).compare)
    .map((one, at): Standing => ({ ...one, rank: at + 1 }))
const namesOf = (options: readonly Standing[]) => options.map(({ equipment }) => equipment)

const shown = placed('shown', 5, { demonstrated: trial(3), measured: true })
const light = placed('computed', 1, {})
const inVain = placed('tried in vain', 1, { measured: true })

describe('trials on the product in the order', () => {
  it('shown beats computed, computed beats tried in vain, whatever they cost', () => {
    expect(namesOf(order(inVain, light, shown))).toEqual(['shown', 'computed', 'tried in vain'])
    expect(order(light, { ...inVain, burden: 0 })[0]!.equipment).toBe('computed')
  })

  it('a size shown above the one asked counts as tried in vain', () => {
    const above = placed('shown above', 1, { demonstrated: trial(3.2), measured: true, meets: 'yes' })
    expect(namesOf(order(above, placed('computed', 5, {})))).toEqual(['computed', 'shown above'])
  })

  it('what is promised stays before what is only expected, trial or none', () => {
    const expected = placed('expected', 1, { cautiousMm: 3.5 })
    expect(namesOf(order(expected, inVain))).toEqual(['tried in vain', 'expected'])
  })

  it('the machine that is put to use is the one shown', () => {
    const line = { name: '', points: [0] }
    const { uses } = combine(brief, line, [order(light, shown)])
    expect(uses.map(({ option: used }) => used.equipment)).toEqual(['shown'])
  })

  it('two machines part there by what a trial showed or did not', () => {
    const options = order(light, shown, inVain)
    const parting = contrastOf(brief.contaminants, [], options, options[0]!, options[1]!).parting
    expect(parting).toMatchObject({ step: 'trial', shown: [[0], []], tried: [[], []] })
    expect(contrastOf(brief.contaminants, [], options, options[1]!, options[2]!).parting).toMatchObject({
      step: 'trial',
      tried: [[], [0]],
    })
  })
})
