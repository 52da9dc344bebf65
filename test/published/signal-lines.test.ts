import { describe, expect, it } from 'vitest'
import { studentQuantile } from '../../src/numerics/student.ts'
import { fitSignal } from '../../src/runs/fit/signal-line.ts'
import rComputed from './fixtures/signal-lines.json' with { type: 'json' }

/**
 * The line through signals of which some are only known to lie below the threshold: survreg of the R package
 * survival, left-censored and normal, made the file (fixtures/make-signal-fixture.R); R is not needed to run this.
 */
describe('signal against size, censored below', () => {
  it.each(rComputed.sets.map((set, i) => [i + 1, set] as const))('set %i', (_, set) => {
    const line = fitSignal(
      set.x.map((x, i) => ({ x, y: set.y[i]!, seen: set.below[i] === 1 ? 'below' : 'number' })),
    )!
    expect(line.b0).toBeCloseTo(set.b0, 6)
    expect(line.b1).toBeCloseTo(set.b1, 6)
    expect(line.spread).toBeCloseTo(set.spread, 6)
  })
})

/** Tables of Student's t, one-sided 95 % (any table; Abramowitz & Stegun 1964, 26.10). */
it.each([
  [5, 2.015],
  [10, 1.812],
  [18, 1.734],
  [38, 1.686],
])('Student’s t of %i degrees of freedom', (degrees, t) => {
  expect(studentQuantile(1.6448536269514722, degrees)).toBeCloseTo(t, 2)
})
