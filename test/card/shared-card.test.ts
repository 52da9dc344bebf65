import { describe, expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'
import { beforeCard, CardError, type CardOptions, cardMachines, cardOf } from '../../src/card/card.ts'
import { practiceCard } from '../../src/card/practice-card.ts'
import { type OtherHand, sharedCard } from '../../src/card/shared-card.ts'
import type { Brief } from '../../src/contract/index.ts'
import { sampleBrief } from '../xray/image/sample.ts'

/** A hand that writes down what it was asked for, and takes it over as a thread does: copied. */
function hand() {
  const asked: string[] = []
  const other: OtherHand = {
    before: async (brief, options) => {
      asked.push(`before ${options.equipment}`)
      return structuredClone(beforeCard(brief, options))
    },
    card: async (brief, options) => {
      asked.push(`card ${options.equipment}`)
      return structuredClone(cardOf(brief, options))
    },
  }
  return { asked, other }
}

describe('a card worked out by two hands', () => {
  const nuts = sampleBrief('hazelnut')
  const cases: [string, Brief, CardOptions][] = [
    ['usual sizes', nuts, { seed: 3 }],
    [
      'sizes and voltage asked for',
      sampleBrief('cheddar'),
      { kV: { 'xray-dual': 60 }, sizesMm: [[2, 1], null] },
    ],
    ['machines in another order', nuts, { seed: 2, equipment: ['xray-dual', 'xray-single'] }],
  ]
  it.each(cases)('is the card that one hand makes: %s', async (_name, brief, options) => {
    const { asked, other } = hand()
    expect(await sharedCard(brief, options, other)).toEqual(cardOf(brief, options))
    const ids = cardMachines(brief, options)
    expect(ids.map((id) => `card ${id}`)).toContain(asked.at(-1))
    expect(asked.filter((what) => what.startsWith('card'))).toHaveLength(1)
  })

  it('is made by one hand where there is one machine', async () => {
    const { asked, other } = hand()
    const options = { equipment: ['xray-dual'] }
    expect(await sharedCard(nuts, options, other)).toEqual(cardOf(nuts, options))
    expect(asked).toEqual([])
  })

  it('leaves out what cannot be seen, and is refused before anything is drawn where it would be too large', async () => {
    const { other } = hand()
    const high = sampleBrief('cheddar', { heightMm: 480 })
    const { machines } = await sharedCard(high, {}, other)
    expect(machines.map(({ leftOut }) => leftOut === '')).toEqual(
      cardOf(high).machines.map((m) => m.leftOut === ''),
    )
    const parsed = parseBrief({
      product: { food: 'cheddar' },
      points: [{ stage: 'packed', heightMm: 40, widthMm: 390, lengthMm: 3000, speedMPerMin: 10 }],
      contaminants: [{ material: 'ss316', shape: 'sphere' }],
    })
    const { asked, other: second } = hand()
    if (!parsed.ok) throw new Error('a brief that cannot be')
    await expect(sharedCard(parsed.brief, {}, second)).rejects.toThrow(CardError)
    expect(asked.filter((what) => what.startsWith('card'))).toEqual([])
  })

  it('fails by itself, not with the program, where both hands fail', async () => {
    const gone = new CardError('the other hand has gone')
    const other: OtherHand = { before: () => Promise.reject(gone), card: () => Promise.reject(gone) }
    const broken = { ...nuts, contaminants: [{ ...nuts.contaminants[0]!, material: 'of no table' }] }
    await expect(sharedCard(broken, {}, other)).rejects.not.toBe(gone)
    // What nobody listens to is told when the turn is over; vitest fails for it.
    await new Promise((resolve) => setImmediate(resolve))
  })
})

describe('the card drawn for practice', () => {
  it('goes through what takes the time of a card: grain, two energies, balls and a wire on three machines', () => {
    const { brief, options } = practiceCard()
    const card = cardOf(brief, options)
    expect(card.machines.map(({ leftOut, pieces }) => [leftOut, pieces > 0])).toEqual(
      card.machines.map(() => ['', true]),
    )
    expect(card.machines).toHaveLength(3)
  })
})
