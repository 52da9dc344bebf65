import { describe, expect, it, vi } from 'vitest'
import { remembered } from '../../../src/advice/assess/remembered.ts'
import { assessCoil } from '../../../src/coil/assess-coil.ts'
import type { Contaminant, Point, XrayMachine } from '../../../src/contract/index.ts'
import { archetypes, figuresOf } from '../../../src/reference/index.ts'
import { assessRemoval } from '../../../src/separation/assess-removal.ts'
import { assessXray } from '../../../src/xray/assess.ts'
import { demoBrief } from '../demo.ts'

describe('a function that keeps its answers', () => {
  it('computes once for equal input, and anew for another', () => {
    const compute = vi.fn(({ x }: { x: number }) => x * 2)
    const twice = remembered(compute, 4)
    expect([twice({ x: 1 }), twice({ x: 1 }), twice({ x: 2 })]).toEqual([2, 2, 4])
    expect(compute).toHaveBeenCalledTimes(2)
  })
  it('keeps the latest only', () => {
    const compute = vi.fn((x: number) => x)
    const same = remembered(compute, 2)
    for (const x of [1, 2, 1, 3, 1, 2]) same(x)
    expect(compute.mock.calls.map(([x]) => x)).toEqual([1, 2, 3, 2])
  })
})

describe('what the key of an assessment leaves out', () => {
  const brief = demoBrief('hazelnuts')
  const changed: Point = { ...brief.points[0]!, hoursPerDay: 3, checkIntervalMin: 7, reactMin: 99 }
  const others: Contaminant[] = brief.contaminants.map((one) => ({
    ...one,
    severity: 1,
    likelihood: 5,
    basis: 'law',
    foundPerMillionPacks: 12,
    entersAt: 'anywhere',
  }))
  const machine = (id: string) => {
    const figures = figuresOf(archetypes.get(id)!)
    return figures
  }
  it.each([
    ['x-ray', assessXray, 'xray-single', { prefix: 'p' }],
    ['coil', assessCoil, 'coil-multi', { idPrefix: 'p' }],
    ['removal', assessRemoval, 'sieve', { prefix: 'p' }],
  ])('is nothing the %s physics reads', (_, assess, id, more) => {
    const run = (point: Point, contaminants: readonly Contaminant[]) =>
      (assess as (input: unknown) => unknown)({
        machine: machine(id) as XrayMachine,
        point,
        contaminants,
        ...more,
      })
    expect(run(changed, others)).toEqual(run(brief.points[0]!, brief.contaminants))
  })
})
