import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'

const good = {
  product: { food: 'almond' },
  points: [{ heightMm: 40, widthMm: 150, lengthMm: 200, speedMPerMin: 30, packsPerMin: 80 }],
  contaminants: [{ material: 'quartz', mustFindMm: 3 }],
}

// biome-ignore lint/suspicious/noExplicitAny: a brief to spoil
type Loose = any

function spoiled(change: (brief: Loose) => void) {
  const brief = structuredClone(good) as Loose
  change(brief)
  return parseBrief(brief)
}

function problemsOf(change: (brief: Loose) => void) {
  const parsed = spoiled(change)
  if (parsed.ok) throw new Error('the brief was accepted')
  return parsed.problems
}

describe('a good brief', () => {
  it('is filled in, and what was filled in says so with its range', () => {
    const parsed = parseBrief(good)
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
    const { product } = parsed.brief.points[0]!
    expect(product).toMatchObject({ structure: 'granular', grainMm: 12, packing: 0.55, unevennessMm: 0.5 })
    const assumed = new Map(parsed.brief.assumed.map((a) => [a.path, a]))
    expect(assumed.get('product.grainMm')?.range).toEqual([9.6, 15])
    expect(assumed.has('points.0.heightMm')).toBe(false)
    expect(parsed.brief.contaminants[0]).toMatchObject({
      shape: 'sphere',
      placement: 'inside',
      basis: 'customer',
    })
  })

  it('a point changes only what it says of the product', () => {
    const parsed = spoiled((b) => {
      b.points.push({ ...b.points[0], product: { packing: 0.5 } })
    })
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
    expect(parsed.brief.points.map((p) => p.product.packing)).toEqual([0.55, 0.5])
    expect(parsed.brief.points.map((p) => p.product.grainMm)).toEqual([12, 12])
  })

  it('lists what points of one product assume of it: once where alike, point by point where not', () => {
    const parsed = spoiled((b) => {
      b.points.unshift({ ...b.points[0], stage: 'loose', packsPerMin: undefined })
      b.points[0].name = 'belt'
    })
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
    const of = (field: string) =>
      parsed.brief.assumed
        .filter(({ path }) => path.endsWith(`product.${field}`))
        .map(({ path, value }) => [path, value])
    expect(of('unevennessMm')).toEqual([
      ['points.0.product.unevennessMm', 1],
      ['points.1.product.unevennessMm', 0.5],
    ])
    expect(of('grainMm')).toEqual([['product.grainMm', 12]])
  })

  it('loose grains are taken as more uneven than bagged ones', () => {
    const parsed = spoiled((b) => {
      b.points[0].stage = 'loose'
      delete b.points[0].packsPerMin
    })
    expect(parsed.ok && parsed.brief.points[0]!.product.unevennessMm).toBe(1)
  })

  it('a food listed in pieces and stated to be a powder has the grain and packing of a powder', () => {
    const coffee = (product: object) => {
      const parsed = spoiled((b) => {
        b.product = { food: 'instant_coffee', ...product }
      })
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
      const { grainMm, packing } = parsed.brief.points[0]!.product
      return [grainMm, packing, parsed.brief.assumed.find(({ path }) => path.endsWith('grainMm'))?.range]
    }
    expect(coffee({})).toEqual([1.5, 0.16, [1.2, 1.88]])
    expect(coffee({ structure: 'powder' })).toEqual([0.4, 0.55, [0.1, 1]])
    expect(coffee({ structure: 'powder', grainMm: 0.8, packing: 0.5 })).toEqual([0.8, 0.5, undefined])
  })

  it('a food not listed is computed from its composition', () => {
    const parsed = spoiled((b) => {
      b.product = {
        food: 'custom',
        structure: 'solid',
        composition: { waterPct: 60, proteinPct: 20, fatPct: 15, carbohydratePct: 3, ashPct: 2 },
      }
    })
    expect(parsed.ok && parsed.brief.points[0]!.product.densityGPerCm3).toBeCloseTo(1.06, 1)
  })
})

describe('a bad brief is refused with the field, what was given and what is allowed', () => {
  const cases: [name: string, change: (brief: Loose) => void, path: string, words: RegExp][] = [
    [
      'unknown key',
      (b) => {
        b.points[0].hightMm = 3
      },
      'points.0.hightMm',
      /unknown key.*heightMm/,
    ],
    [
      'unknown key at the top',
      (b) => {
        b.contaminant = []
      },
      'contaminant',
      /contaminants/,
    ],
    [
      'text for a number',
      (b) => {
        b.points[0].heightMm = '45 mm'
      },
      'points.0.heightMm',
      /1 to 2000 mm.*"45 mm" was given/,
    ],
    [
      'packing of 1.4',
      (b) => {
        b.product.packing = 1.4
      },
      'product.packing',
      /0.05 to 1; 1.4 was given/,
    ],
    [
      'speed 0',
      (b) => {
        b.points[0].speedMPerMin = 0
      },
      'points.0.speedMPerMin',
      /0.1 to 600 m\/min; 0 was given/,
    ],
    [
      'no point',
      (b) => {
        b.points = []
      },
      'points',
      /at least one inspection point/,
    ],
    [
      'no contaminant',
      (b) => {
        b.contaminants = []
      },
      'contaminants',
      /at least one contaminant/,
    ],
    [
      'grain larger than the pack',
      (b) => {
        b.product.grainMm = 60
      },
      'product.grainMm',
      /60 mm.*40 mm/,
    ],
    [
      'packs that overlap',
      (b) => {
        b.points[0].packsPerMin = 300
      },
      'points.0.packsPerMin',
      /overlap.*at most 150 per minute/,
    ],
    [
      'more mass than fits',
      (b) => {
        b.points[0].massG = 5000
      },
      'points.0.massG',
      /5000 g.*at most/,
    ],
    [
      'unlisted food',
      (b) => {
        b.product.food = 'almnd'
      },
      'product.food',
      /did you mean almond\?/,
    ],
    [
      'unlisted contaminant',
      (b) => {
        b.contaminants[0].material = 'quarz'
      },
      'contaminants.0.material',
      /did you mean quartz\?/,
    ],
    [
      'wire without length',
      (b) => {
        b.contaminants[0].shape = 'wire'
      },
      'contaminants.0.lengthMm',
      /length in mm/,
    ],
    [
      'no size and a basis that needs one',
      (b) => {
        b.contaminants[0] = { material: 'quartz', basis: 'law' }
      },
      'contaminants.0.mustFindMm',
      /basis is law/,
    ],
    [
      'unknown archetype',
      (b) => {
        b.equipment = ['xray-singel']
      },
      'equipment.0',
      /did you mean xray-single\?/,
    ],
    [
      'custom food without composition',
      (b) => {
        b.product = { food: 'custom' }
      },
      'product.composition',
      /composition/,
    ],
    [
      'composition that is not 100 %',
      (b) => {
        b.product = {
          food: 'custom',
          composition: { waterPct: 60, proteinPct: 20, fatPct: 15, carbohydratePct: 30, ashPct: 2 },
        }
      },
      'product.composition',
      /127.0 %/,
    ],
    [
      'machine with a stray key',
      (b) => {
        b.equipment = [{ id: 'm', family: 'xray', kv: 60, mA: 5, pixelMm: 0.8 }]
      },
      'equipment.0.kv',
      /kV/,
    ],
    [
      'machine without a voltage',
      (b) => {
        b.equipment = [{ id: 'm', family: 'xray', mA: 5, pixelMm: 0.8, windowsKeV: [[20, 40]] }]
      },
      'equipment.0.kV',
      /20 to 150 kV/,
    ],
    [
      'unknown family',
      (b) => {
        b.equipment = [{ id: 'm', family: 'sonar' }]
      },
      'equipment.0.family',
      /xray, coil/,
    ],
    [
      'window the wrong way round',
      (b) => {
        b.equipment = [{ id: 'm', family: 'xray', kV: 80, mA: 5, pixelMm: 0.8, windowsKeV: [[60, 40]] }]
      },
      'equipment.0.windowsKeV.0',
      /low to high/,
    ],
    [
      'missing height',
      (b) => {
        delete b.points[0].heightMm
      },
      'points.0.heightMm',
      /height/,
    ],
  ]
  it.each(cases)('%s', (_name, change, path, words) => {
    const problems = problemsOf(change)
    const problem = problems.find((p) => p.path === path)
    expect(problem, JSON.stringify(problems)).toBeDefined()
    expect(problem!.message).toMatch(words)
  })

  it('says every problem at once', () => {
    const problems = problemsOf((b) => {
      b.points[0].speedMPerMin = -1
      b.product.packing = 2
    })
    expect(problems.map((p) => p.path).sort()).toEqual(['points.0.speedMPerMin', 'product.packing'])
  })

  it('never throws, whatever it is given', () => {
    fc.assert(
      fc.property(fc.anything(), (anything) => {
        expect(parseBrief(anything).ok).toBe(false)
      }),
    )
  })
})
