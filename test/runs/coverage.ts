/**
 * How often the bounds hold (npm run coverage [-- SETS]): trials simulated from a known machine, read as any trial is
 * read; a bound holds where it does not lie below the true 90 % size. Sets with fewer than two mixed sizes show
 * nothing by a curve and are counted apart. Seeded: the same figures every time.
 */
import { agreementOf } from '../../src/runs/against/agreement.ts'
import { fitSignal, signalBound } from '../../src/runs/fit/signal-line.ts'
import { type Curve, profileEnd } from '../../src/runs/fit/size-bound.ts'
import { readTrial } from '../../src/runs/index.ts'
import { COUNTED_ONCE, likenessOf } from '../../src/runs/judge/clusters.ts'
import { mixedSizes, readCurve, sizeRows } from '../../src/runs/judge/curve-reading.ts'
import { talliesOf, type Unit } from '../../src/runs/judge/units.ts'
import { curvePower } from '../../src/runs/plan/curve-power.ts'
import { chanceAt, truthOf } from '../../src/runs/plan/truth.ts'
import { type Random, randomStream } from '../../src/xray/image/food/random.ts'

export interface Design {
  readonly words: string
  readonly sizesMm: readonly number[]
  readonly perSize: readonly number[]
  /** Runs of each piece; more than one makes clusters, which differ by `pieceSpread` in ln size. */
  readonly runsEach: number
  readonly pieceSpread: number
  readonly cleanPacks: number
  readonly falseRejects: number
}

const SIX = [1.9, 2.1, 2.3, 2.5, 2.7, 3.0]
const TRUTH = truthOf(2.31, 2.625)
const plain = { runsEach: 1, pieceSpread: 0, cleanPacks: 3000, falseRejects: 0.001 }
const even = (count: number) => SIX.map(() => count)

export const DESIGNS: readonly Design[] = [
  { words: 'six sizes, 10 each', sizesMm: SIX, perSize: even(10), ...plain },
  { words: 'six sizes, 15 each', sizesMm: SIX, perSize: even(15), ...plain },
  { words: 'six sizes, 5 5 10 15 15 10', sizesMm: SIX, perSize: [5, 5, 10, 15, 15, 10], ...plain },
  { words: '1.5 2.0 2.5 3.0, 15 each', sizesMm: [1.5, 2, 2.5, 3], perSize: even(15).slice(2), ...plain },
  { words: '46 at 3.0 and 5 at each below', sizesMm: SIX, perSize: [5, 5, 5, 5, 5, 46], ...plain },
  {
    words: 'six sizes, 10 each, 1 in 50 rejected anyway, 500 clean',
    sizesMm: SIX,
    perSize: even(10),
    ...plain,
    cleanPacks: 500,
    falseRejects: 0.02,
  },
  {
    words: 'clusters: 10 pieces a size, 3 runs each',
    sizesMm: SIX,
    perSize: even(10),
    ...plain,
    runsEach: 3,
    pieceSpread: 0.05,
  },
  {
    words: 'clusters: 10 pieces a size, 2 runs each, alike by 0.17 at the middle',
    sizesMm: SIX,
    perSize: even(10),
    ...plain,
    runsEach: 2,
    pieceSpread: 0.05,
  },
  {
    words: 'clusters: 4 pieces a size, 5 runs each',
    sizesMm: SIX,
    perSize: even(4),
    ...plain,
    runsEach: 5,
    pieceSpread: 0.1,
  },
  {
    words: 'clusters: 2 pieces a size, 5 runs each (too few to say how alike)',
    sizesMm: SIX,
    perSize: even(2),
    ...plain,
    runsEach: 5,
    pieceSpread: 0.05,
  },
  {
    words: 'clusters: 5 pieces a size, 10 runs each',
    sizesMm: SIX,
    perSize: even(5),
    ...plain,
    runsEach: 10,
    pieceSpread: 0.1,
  },
  {
    words: 'clusters: 10 pieces a size that differ by 0.2 in ln size, 5 runs each, sizes 1.6 to 3.5',
    sizesMm: [1.6, 1.9, 2.2, 2.6, 3, 3.5],
    perSize: even(10),
    ...plain,
    runsEach: 5,
    pieceSpread: 0.2,
  },
  {
    words: 'pieces that differ by 0.2 in ln size, 10 each, once each, sizes 1.6 to 3.5',
    sizesMm: [1.6, 1.9, 2.2, 2.6, 3, 3.5],
    perSize: even(10),
    ...plain,
    pieceSpread: 0.2,
  },
  // The true size lies above the largest tried, so that a bound is hardly ever printed, and wrong where it is.
  {
    words: 'clusters: 4 pieces a size that differ by 0.2 in ln size, 5 runs each',
    sizesMm: SIX,
    perSize: even(4),
    ...plain,
    runsEach: 5,
    pieceSpread: 0.2,
  },
]

export interface Coverage {
  readonly sets: number
  readonly separated: number
  /** Of the sets that are not separated: share whose penalised bound, whether printed or not, holds. */
  readonly headline: number
  readonly plain: number
  /** Of all sets: share with a printed bound, and share with a printed bound that does not hold. */
  readonly printed: number
  readonly wrong: number
}

/** True 90 % size of a piece taken at random: pieces that differ flatten the curve. */
function trueA90(design: Design): number {
  let [low, high] = [2, 5]
  const steps = Array.from({ length: 81 }, (_, i) => -4 + i / 10)
  const total = steps.reduce((sum, z) => sum + Math.exp((-z * z) / 2), 0)
  const mean = (mm: number) =>
    steps.reduce(
      (sum, z) => sum + Math.exp((-z * z) / 2) * chanceAt(TRUTH, mm * Math.exp(design.pieceSpread * z)),
      0,
    ) / total
  for (let k = 0; k < 50; k++) {
    const middle = (low + high) / 2
    if (mean(middle) < 0.9) low = middle
    else high = middle
  }
  return (low + high) / 2
}

function simulated(design: Design, random: Random): Unit[] {
  const { falseRejects: c } = design
  return design.sizesMm.flatMap((sizeMm, i) =>
    Array.from({ length: design.perSize[i]! }, () => {
      const own = chanceAt(TRUTH, sizeMm * Math.exp(design.pieceSpread * random.normal()))
      let found = 0
      for (let k = 0; k < design.runsEach; k++) if (random.uniform() < c + (1 - c) * own) found++
      return { sizeMm, runs: design.runsEach, found, alike: 1 }
    }),
  )
}

const FIRTH: Curve = { link: 'logit', method: 'firth', floor: { kind: 'estimated' } }
const ML: Curve = { ...FIRTH, method: 'ml' }

export function coverageOf(design: Design, sets: number, seed: number): Coverage {
  const random = randomStream(seed, design.words)
  const a90 = trueA90(design)
  let separated = 0
  let holds = 0
  let plainHolds = 0
  let printed = 0
  let wrong = 0
  for (let set = 0; set < sets; set++) {
    const units = simulated(design, random)
    const tallies = talliesOf(units, likenessOf(units) ?? COUNTED_ONCE)
    let rejects = 0
    for (let k = 0; k < design.cleanPacks; k++) if (random.uniform() < design.falseRejects) rejects++
    const clean = { packs: design.cleanPacks, rejects, rate: rejects / design.cleanPacks, low: 0, high: 1 }
    if (mixedSizes(tallies) < 2) {
      separated++
      continue
    }
    const rows = sizeRows(tallies, clean)
    if (Math.exp(profileEnd(rows, FIRTH, 0.9)) >= a90) holds++
    if (Math.exp(profileEnd(rows, ML, 0.9)) >= a90) plainHolds++
    const bound = readCurve(tallies, clean)?.a9095 ?? null
    if (bound === null) continue
    printed++
    if (bound < a90) wrong++
  }
  const mixed = Math.max(1, sets - separated)
  return {
    sets,
    separated: separated / sets,
    headline: holds / mixed,
    plain: plainHolds / mixed,
    printed: printed / sets,
    wrong: wrong / sets,
  }
}

/** Share of signal trials whose bound holds: n pieces, a signal as size^2.5 with spread 0.35, censored below. */
export function signalCoverage(pieces: number, sets: number, seed: number): number {
  const random = randomStream(seed, `signal ${pieces}`)
  const at = Math.log(12)
  const truth = (at - 1 + 1.2815515655 * 0.35) / 2.5
  let holds = 0
  for (let set = 0; set < sets; set++) {
    const readings = Array.from({ length: pieces }, (_, i) => {
      const x = Math.log(1.5 + (1.5 * i) / (pieces - 1))
      const y = 1 + 2.5 * x + 0.35 * random.normal()
      return y < at ? { x, y: at, seen: 'below' as const } : { x, y, seen: 'number' as const }
    })
    if (fitSignal(readings) === null || signalBound(readings, at, 0.9) >= truth) holds++
  }
  return holds / sets
}

/** Share of trials called unlikely although the prediction is right; 0.05 asked. */
export function falseDisagreement(trials: number, seed: number): number {
  const random = randomStream(seed, 'agreement')
  let below = 0
  for (let t = 0; t < trials; t++) {
    const factor = Math.exp(0.05 * random.normal())
    const sizes = SIX.map((size) => {
      const p = chanceAt(TRUTH, size / factor)
      const found = Array.from({ length: 10 }, () => random.uniform()).filter((u) => u < p).length
      return { runs: 10, found, chance: (f: number) => chanceAt(TRUTH, size / f) }
    })
    if (agreementOf(sizes, 0.05) < 0.05) below++
  }
  return below / trials
}

/**
 * Power that a plan promises for a curve, and the share of trials that show the size when they are simulated with
 * another seed and read whole: rows, clean run, floor fitted with it.
 */
export function promisedAndGiven(perSize: number, worseBy: number, sets: number, seed: number) {
  const truth = truthOf(2.31, 2.625, worseBy)
  const promised = curvePower(truth, { sizesMm: SIX, perSize }, 3, 0.95, { seed: 1, sets: 2000 })
  const random = randomStream(seed, `plan ${perSize} ${worseBy}`)
  let shown = 0
  for (let set = 0; set < sets; set++) {
    const base = { equipment: 'X', setting: '1' }
    const rows = SIX.flatMap((sizeMm) =>
      Array.from({ length: perSize }, (_, i) => ({
        ...base,
        material: 'quartz',
        pack: `${sizeMm} ${i}`,
        sizeMm,
        runs: 1,
        found: random.uniform() < chanceAt(truth, sizeMm) ? 1 : 0,
      })),
    )
    const { groups } = readTrial([...rows, { ...base, material: '', runs: 9151, found: 0 }])
    const bound = groups[0]!.a9095
    if (bound !== null && bound <= 3) shown++
  }
  return { promised, given: shown / sets }
}
