import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { parseBrief } from '../../src/brief/index.ts'
import { machineSchema, type XrayMachine } from '../../src/contract/index.ts'
import { archetypes, figuresOf } from '../../src/reference/archetypes.ts'
import { assessXray } from '../../src/xray/assess.ts'
import { quickSizes } from '../../src/xray/quick-sizes.ts'

function machineOf(id: string): XrayMachine {
  const figures = figuresOf(archetypes.get(id)!)
  return machineSchema.parse(figures) as XrayMachine
}

const near = (quick: number | null, whole: number | null) => {
  expect(quick === null).toBe(whole === null)
  if (quick !== null && whole !== null) expect(Math.abs(quick / whole - 1)).toBeLessThan(1e-3)
}

describe('sizes without the whole assessment', () => {
  const cases = ['hazelnuts', 'sauce-jar', 'chicken'].flatMap((demo) =>
    ['xray-single', 'xray-dual'].map((machine) => ({ demo, machine })),
  )

  it.each(cases)('$demo, $machine: the same setting and the same three sizes', ({ demo, machine }) => {
    const parsed = parseBrief(demos.find(({ id }) => id === demo)!.brief)
    if (!parsed.ok) throw new Error(demo)
    const { contaminants, points } = parsed.brief
    const point = points.at(-1)!
    const whole = assessXray({ machine: machineOf(machine), point, contaminants, prefix: 'x' })
    contaminants.forEach((_, c) => {
      const quick = quickSizes(machineOf(machine), point, contaminants, c, true)
      expect(quick.setting).toEqual(whole.setting)
      near(quick.bestMm, whole.findings[c]!.bestMm)
      near(quick.expectedMm, whole.findings[c]!.expectedMm)
      near(quick.cautiousMm, whole.findings[c]!.cautiousMm)
    })
  })

  it('leaves the cautious size out where it is not asked for', () => {
    const parsed = parseBrief(demos.find(({ id }) => id === 'cheddar')!.brief)
    if (!parsed.ok) throw new Error('cheddar')
    const { contaminants, points } = parsed.brief
    const quick = quickSizes(machineOf('xray-single'), points[0]!, contaminants, 0, false)
    expect(quick.expectedMm).not.toBeNull()
    expect(quick.cautiousMm).toBeNull()
  })
})
