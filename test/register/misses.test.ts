import { describe, expect, it } from 'vitest'
import { gaussLegendre } from '../../src/numerics/gauss-legendre.ts'
import { normalChance, normalUpperTail } from '../../src/numerics/normal.ts'
import { factorOfTwo } from '../../src/register/rate/factor-of-two.ts'
import { hazardRates } from '../../src/register/rate/hazard-rates.ts'
import { rangesOf, streamsFrom, upperWithoutFinds } from '../../src/register/rate/incidence.ts'
import { foundAfter, meanChance, missed } from '../../src/register/rate/misses.ts'
import { chanceAt, meanOverPlaces } from '../../src/register/sizes/control-chance.ts'
import { shareFrom } from '../../src/register/sizes/fragment-sizes.ts'
import { coilSteel, MILLION_BAGS, steel, stones, xraySteel, xrayStone } from './hazelnut-line.ts'

/** Within half a unit of the last of n digits, as the outside figures are printed. */
const digits = (value: number, wanted: number, n = 4) => {
  const unit = 10 ** (Math.floor(Math.log10(wanted)) - n + 1)
  expect(Math.abs(value - wanted)).toBeLessThanOrEqual(0.51 * unit)
}

describe('stone, one control (figures of scipy quadrature on the invented line)', () => {
  const mean = meanChance(stones, xrayStone)
  const log = [{ events: 31, millionPacks: MILLION_BAGS, reach: [mean] }]
  const [arrive = 0] = streamsFrom(log)

  it('averages the chance over what arrives, as the closed form says', () => {
    const spread = Math.log(2)
    const at = (a50: number, a90: number) =>
      normalChance(Math.log(2.4 / a50) / Math.hypot(spread, Math.log(a90 / a50) / 1.281551565544601))
    expect(mean).toBeCloseTo(0.999 * (0.9 * at(2.2, 2.5) + 0.1 * at(2.31, 2.625)), 10)
    expect(mean).toBeCloseTo(0.546127, 6)
  })

  it.each([0.03, 0.05, 0.2])('is as good for a curve of spread %s', (s) => {
    const steep = {
      places: [{ share: 1, a50Mm: 2.2, a90Mm: 2.2 * Math.exp(1.281551565544601 * s) }],
      workingShare: 1,
    }
    const closed = normalChance(Math.log(2.4 / 2.2) / Math.hypot(Math.log(2), s))
    expect(Math.abs(meanChance(stones, steep) - closed)).toBeLessThan(1e-6)
  })

  it('cut at a length, it agrees with a bivariate normal integrated the other way round', () => {
    const from = 5
    const spread = Math.log(2)
    const { nodes, weights } = gaussLegendre(64)
    const cut = (a50: number, a90: number) => {
      const s = Math.log(a90 / a50) / 1.281551565544601
      const total = Math.hypot(spread, s)
      const threshold = Math.log(a50 / 0.6)
      let sum = 0
      for (let panel = 0; panel < 40; panel++) {
        for (let i = 0; i < 64; i++) {
          const w = threshold + ((10 * total) / 80) * (2 * panel + 1 + nodes[i]!)
          const z = (w - Math.log(4)) / total
          const density = Math.exp((-z * z) / 2) / (total * Math.sqrt(2 * Math.PI))
          const mean = Math.log(4) + (spread / total) ** 2 * (w - Math.log(4))
          const deviation = (spread * s) / total
          sum +=
            ((weights[i]! * 10 * total) / 80) * density * normalUpperTail((Math.log(from) - mean) / deviation)
        }
      }
      return sum
    }
    const found = 0.999 * (0.9 * cut(2.2, 2.5) + 0.1 * cut(2.31, 2.625))
    expect(shareFrom(stones, from) - missed(stones, [xrayStone], from).independent).toBeCloseTo(found, 9)
  })

  it('turns 31 finds into pieces arriving and missed, by smallest length counted', () => {
    digits(arrive, 2.956)
    const rows = [
      [0, 1, 0.453873, 2.956, 1.342, 0.99, 1.786, 4],
      [5, 0.373754, 0.00039361, 1.105, 0.001164, 0.00086, 0.00155, 3],
      [7, 0.209731, 0.00020973, 0.62, 0.00062, 0.00046, 0.00083, 2],
    ] as const
    for (const [from, share, missedShare, before, after, low, high, printed] of rows) {
      const { independent } = missed(stones, [xrayStone], from)
      digits(shareFrom(stones, from), share)
      digits(independent, missedShare)
      digits(arrive * shareFrom(stones, from), before, 3)
      digits(arrive * independent, after, 3)
      const [range] = rangesOf(log, [[independent]])!
      digits(range!.low, low, 2)
      digits(range!.high, high, printed)
    }
    digits(arrive * 19.2 * missed(stones, [xrayStone], 0).independent, 25.8, 3)
  })

  it('gives the interval of the incidence itself', () => {
    const [range] = rangesOf(log, [[1]])!
    digits(range!.low, 2.181)
    digits(range!.high, 3.935)
  })

  it('is not what finds per pack, or the chance at the size to find, would say', () => {
    const atThree = meanOverPlaces(xrayStone, 3)
    const wrong = {
      findsPerPack: 31 / MILLION_BAGS,
      byChanceAtSize: 31 / (MILLION_BAGS * atThree),
      missedByChanceAtSize: (31 / MILLION_BAGS) * (1 - atThree),
    }
    digits(wrong.findsPerPack, 1.615)
    digits(wrong.byChanceAtSize, 1.618)
    for (const value of [wrong.findsPerPack, wrong.byChanceAtSize])
      expect(Math.abs(value / arrive - 1)).toBeGreaterThan(0.4)
    expect(wrong.missedByChanceAtSize).toBeLessThan(
      0.01 * arrive * missed(stones, [xrayStone], 0).independent,
    )
  })

  it('bounds what arrives where nothing was found, above three over the packs', () => {
    digits(upperWithoutFinds(MILLION_BAGS, mean), 0.2857)
    expect(upperWithoutFinds(MILLION_BAGS, mean)).toBeGreaterThan(3 / MILLION_BAGS)
    expect(rangesOf([{ events: 0, millionPacks: MILLION_BAGS, reach: [mean] }], [[1]])![0]!.high).toBeCloseTo(
      0.183,
      3,
    )
  })

  it('shows how far median, spread and shape move it, the finds held fixed', () => {
    const rows = [
      [0.5461, 2.956, 1.342, 0.001164, 0.00062],
      [0.1913, 8.439, 6.824, 0.000857, 0.000298],
      [0.865, 1.867, 0.252, 0.001434, 0.001076],
      [0.5673, 2.846, 1.232, 0.000981, 0.000333],
      [0.535, 3.018, 1.404, 0.001265, 0.000817],
      [0.3219, 5.016, 3.402, 0.2839, 0.001721],
    ]
    const moved = factorOfTwo({
      sizes: stones,
      controls: [xrayStone],
      streams: [{ before: 0, steps: [], share: null }],
      logs: [{ control: 0, millionPacks: MILLION_BAGS, found: 31, events: 31 }],
    })
    expect(moved).toHaveLength(rows.length)
    for (const [i, [mean = 0, arrive = 0, ...missedRow]] of rows.entries()) {
      const { meanChances, total, rows: counted } = moved[i]!.rates
      digits(meanChances[0]!, mean)
      digits(total!, arrive)
      for (const [k, value] of missedRow.entries()) digits(counted[k]!.after!, value, 3)
    }
  })

  it('rests on the working share alone for long pieces', () => {
    const perfect = missed(stones, [{ ...xrayStone, workingShare: 1 }], 7).independent
    const slack = missed(stones, [{ ...xrayStone, workingShare: 0.99 }], 7).independent
    expect(arrive * perfect).toBeLessThan(5e-7)
    digits(arrive * slack, 0.0062, 2)
  })
})

describe('stainless steel, a coil and an x-ray in series, two streams', () => {
  const coilMean = meanChance(steel, coilSteel)
  const xrayMean = meanChance(steel, xraySteel)
  const through = foundAfter(steel, [coilSteel], xraySteel)
  const logs = [
    { events: 9, millionPacks: MILLION_BAGS, reach: [coilMean, 0] },
    { events: 6, millionPacks: MILLION_BAGS, reach: [through, xrayMean] },
  ]
  const [a = 0, b = 0] = streamsFrom(logs)

  it('parts the streams: what the first control explains is no new stream', () => {
    digits(coilMean, 0.524769)
    digits(xrayMean, 0.72443)
    digits(through, 0.200384)
    digits(a, 0.8933)
    digits(b, 0.1843)
    digits(a + b, 1.078)
    expect(Math.abs(15 / MILLION_BAGS / (a + b) - 1)).toBeGreaterThan(0.2)
  })

  it.each([
    [0, 0.475231, 0.27557, 0.274847, 0.27557, 0.2963, 0.2969, 0.198, 0.456],
    [7, 0.037832, 0.00185232, 0.00163355, 0.00185232, 0.001801, 0.001996, 0.0012, 0.00277],
  ])(
    'from %s mm: series, dependence and range',
    (from, coil, xray, series, dependent, after, high, p5, p95) => {
      const both = missed(steel, [coilSteel, xraySteel], from)
      const alone = missed(steel, [xraySteel], from).independent
      digits(missed(steel, [coilSteel], from).independent, coil)
      digits(alone, xray)
      digits(both.independent, series)
      digits(both.dependent, dependent)
      digits(a * both.independent + b * alone, after)
      digits(a * both.dependent + b * alone, high)
      const [range] = rangesOf(logs, [[both.independent, alone]])!
      expect(Math.abs(range!.low / p5 - 1)).toBeLessThan(0.01)
      expect(Math.abs(range!.high / p95 - 1)).toBeLessThan(0.01)
      const product = (coil * xray) / shareFrom(steel, from)
      expect(both.independent / product).toBeGreaterThan(2)
    },
  )

  it('adds shapes with their weights: slivers are nearly all that is missed', () => {
    const only = (k: number) => ({ ...steel, shapes: [steel.shapes[k]!] })
    digits(missed(only(1), [xraySteel], 7).independent, 0.001706)
    digits(missed(only(0), [xraySteel], 7).independent, 0.000147, 3)
  })

  it('the register’s own route gives the same, from a log at each control', () => {
    const rates = hazardRates({
      sizes: steel,
      controls: [coilSteel, xraySteel],
      streams: [
        { before: 0, steps: ['screen'], share: null },
        { before: 1, steps: ['weigher'], share: null },
      ],
      logs: [
        { control: 0, millionPacks: MILLION_BAGS, found: 9, events: 9 },
        { control: 1, millionPacks: MILLION_BAGS, found: 6, events: 6 },
      ],
    })
    digits(rates.arriving[0]!, 0.8933)
    digits(rates.arriving[1]!, 0.1843)
    digits(rates.rows[2]!.before!, 0.226, 3)
    digits(rates.rows[2]!.after!, 0.001801)
    digits(rates.rows[2]!.afterDependent!, 0.001996)
    expect(Math.abs(rates.rows[2]!.range!.low / 0.0012 - 1)).toBeLessThan(0.01)
    expect(Math.abs(rates.rows[2]!.range!.high / 0.00277 - 1)).toBeLessThan(0.01)
  })

  it('one broken screen is one event: more pieces widen nothing and raise the estimate', () => {
    const rates = (events: number) =>
      hazardRates({
        sizes: steel,
        controls: [xraySteel],
        streams: [{ before: 0, steps: [], share: null }],
        logs: [{ control: 0, millionPacks: MILLION_BAGS, found: 20, events }],
      })
    expect(rates(2).total).toBeCloseTo(rates(20).total!, 9)
    const spread = (events: number) => rates(events).totalRange!.high / rates(events).totalRange!.low
    expect(spread(2)).toBeGreaterThan(3 * spread(20))
  })

  it('never gives a negative stream', () => {
    const [, later] = streamsFrom([
      { ...logs[0]!, events: 60 },
      { ...logs[1]!, events: 1 },
    ])
    expect(later).toBe(0)
  })
})

describe('a sieve and an x-ray in series, by hand', () => {
  /**
   * Invented so that paper and pencil do. Length is lognormal, median 4 mm, factor 2, so ln 2 is one deviation:
   *   shorter than 2 mm   Φ(−1)        = 0.158655   nothing sees it
   *   2 to 4 mm           Φ(0) − Φ(−1) = 0.341345   the x-ray takes out 0.99, the sieve nothing
   *   4 mm and longer     1 − Φ(0)     = 0.500000   the sieve takes out 0.90, the x-ray 0.99
   * What the sieve misses it misses whatever the x-ray does (independent given the size):
   *   passes both = 0.158655 + 0.341345·0.01 + 0.5·0.10·0.01 = 0.162569
   * Where every piece that the better one misses is missed by both (fully dependent), min(0.10, 0.01) = 0.01:
   *   passes both = 0.158655 + 0.341345·0.01 + 0.5·0.01      = 0.167069
   * Taken out by the sieve 0.5·0.90 = 0.45, then by the x-ray 0.341345·0.99 + 0.5·0.10·0.99 = 0.387431; with what
   * passes they make 1. Ten finds at the x-ray in a million packs: 10 ÷ 0.387431 = 25.8110 arrive, ·0.162569 = 4.1961 pass.
   * The product of the averages, (0.5 + 0.05)·0.167069 = 0.0918878, is not what passes.
   */
  const grains = { ...stones, shapes: [{ name: 'chunk', share: 1, perLength: 0.6 }] }
  const takes = (fromLengthMm: number, workingShare: number) => ({
    places: [],
    workingShare,
    removes: (sizeMm: number) => (sizeMm >= 0.6 * fromLengthMm ? 1 : 0),
  })
  const [sieve, xray] = [takes(4, 0.9), takes(2, 0.99)]

  it('counts under one integral what both let through, and the worse case beside it', () => {
    const both = missed(grains, [sieve, xray], 0)
    digits(both.independent, 0.162569, 6)
    digits(both.dependent, 0.167069, 6)
    digits(meanChance(grains, sieve), 0.45, 6)
    digits(foundAfter(grains, [sieve], xray), 0.387431, 6)
    expect(0.45 + foundAfter(grains, [sieve], xray) + both.independent).toBeCloseTo(1, 6)
  })

  it('turns finds behind the sieve into pieces arriving and passing', () => {
    const rates = hazardRates({
      sizes: grains,
      controls: [sieve, xray],
      streams: [{ before: 0, steps: ['delivery'], share: null }],
      logs: [{ control: 1, millionPacks: 1, found: 10, events: 10 }],
    })
    digits(rates.arriving[0]!, 25.811, 5)
    digits(rates.rows[0]!.after!, 4.1961, 5)
    digits(rates.rows[0]!.afterDependent!, 4.3122, 5)
  })

  it('counts from a length what is that long or longer', () => {
    digits(missed(grains, [sieve, xray], 4).independent, 0.0005, 6)
    digits(missed(grains, [sieve, xray], 4).dependent, 0.005, 6)
  })
})

it('the link matters in the tail: a probit promises more at 3 mm than a logit through the same sizes', () => {
  const logit = 1 / (1 + Math.exp((-Math.log(9) * Math.log(3 / 2.31)) / Math.log(2.625 / 2.31)))
  digits(logit, 0.98893)
  digits(chanceAt(3, 2.31, 2.625), 0.99561)
})
