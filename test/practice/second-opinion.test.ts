import { describe, expect, it } from 'vitest'
import { sweep } from '../sweep.ts'
import { answerOf, type Opinion } from './second-opinion-trials.ts'

/**
 * The chance of finding worked out a second way: packs drawn, x-rayed and read by calculation, pieces counted.
 * Both use the same beam, detector, food and ideal constants; the computed one integrates over frequency, the
 * simulated one goes through grains or surfaces, pixels, counts, logarithm and a filter on the picture.
 */
/** Packs drawn for each size. */
const PACKS = sweep(1, 2)
const TIME = { timeout: 240_000 }
const glass = { material: 'glass_container', shape: 'sphere' } as const
const steel = { material: 'ss304', shape: 'sphere' } as const
const wire = { material: 'ss304', shape: 'wire', lengthMm: 10 } as const

const sixty = { food: 'cheddar', heightMm: 60, packs: PACKS } as const

describe('solid food: the simulated chance of finding agrees with the computed one', () => {
  const solid: readonly Opinion[] = [
    { name: 'glass, one energy', ...sixty, machine: 'xray-single', kV: 65, piece: glass },
    {
      name: 'steel, two energies',
      ...sixty,
      machine: 'xray-dual',
      kV: 90,
      piece: steel,
      withoutReading: true,
    },
    { name: 'wire, one energy', ...sixty, machine: 'xray-single', kV: 65, piece: wire, withoutReading: true },
    {
      name: 'glass in an uneven fillet, two energies',
      food: 'chicken_breast',
      heightMm: 25,
      packs: PACKS,
      machine: 'xray-dual',
      kV: 70,
      piece: glass,
      withoutReading: true,
    },
  ]

  // Required within 20 %; 65 pieces per size (130 in full) put the standard error near 1.5 % (1 %), so 8 % is held to.
  it.each(solid)('$name', TIME, (opinion) => {
    const { computedMm, knownMm, readMm, curves } = answerOf(opinion, 1)
    expect(Math.abs(knownMm / computedMm - 1), `${knownMm} mm against ${computedMm} mm`).toBeLessThan(0.08)
    expect(curves.known[0]).toBeLessThan(0.05)
    expect(curves.known.at(-1)).toBeGreaterThan(0.95)
    // Measuring the noise on the picture itself, and looking everywhere at once, costs little in even food.
    if (!opinion.withoutReading) {
      expect(readMm / computedMm).toBeGreaterThan(0.9)
      expect(readMm / computedMm).toBeLessThan(1.2)
    }
  })
})

/**
 * Granular food. Drawn beds of round grains carry the noise power of the hard-sphere table within some tens of
 * percent, those of rice within 5 % (test/xray/image/grain-bed.test.ts), yet sizes found every second time come
 * out smaller than computed: 0.87 to 0.89 of it for two energies and for steel, 0.74 with fine pixels, 0.65 for glass
 * in hazelnuts and 0.57 in almonds at one energy. Two reasons. A filter that knows the noise of real (drawn) grains
 * uses the gaps of their spectrum, which the table, read linearly between few points, has filled. And at one energy
 * the chance climbs along a shelf, so that a little more strength moves the size by much. A reading of the whole
 * picture as a card does it, noise measured on it, gives back part of that: 0.85 to 0.94 of the computed size at two
 * energies and for steel, 0.75 to 0.78 for glass at one energy (test/practice/second-opinion-report.ts prints all).
 */
describe('granular food', () => {
  const almonds = {
    food: 'almond',
    heightMm: 60,
    packs: PACKS,
    piece: glass,
    factors: [0.5, 0.65, 0.8, 1, 1.25, 1.6],
    withoutReading: true,
  } as const

  it('is read better at two energies than at one, by computation and by simulation', TIME, () => {
    const single = answerOf({ name: 'one energy', ...almonds, machine: 'xray-single', kV: 60 }, 1)
    const dual = answerOf({ name: 'two energies', ...almonds, machine: 'xray-dual', kV: 90 }, 1)
    expect(dual.computedMm).toBeLessThan(single.computedMm)
    expect(dual.knownMm).toBeLessThan(single.knownMm)
    // Two energies cancel the grain: what is left is close to a solid and must agree like one.
    expect(Math.abs(dual.knownMm / dual.computedMm - 1)).toBeLessThan(0.2)
  })
})
