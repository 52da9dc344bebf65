import { normalUpperQuantile } from '../../numerics/normal.ts'
import { randomStream } from '../../xray/image/food/random.ts'
import { type Curve, fitCurve, logLThrough, type SizeRow, xAt } from '../fit/size-bound.ts'
import { mixedSizes } from '../judge/curve-reading.ts'
import { chanceAt, type Truth } from './truth.ts'

const FIRTH: Curve = {
  link: 'logit',
  method: 'firth',
  floor: { kind: 'fixed', chance: 0 },
  smallestGain: 1e-9,
}

/** Sizes of a curve and how many pieces at each. */
export interface CurveDesign {
  readonly sizesMm: readonly number[]
  readonly perSize: number
}

/**
 * Whether these counts would show the size by the penalised bound, under all the conditions of a reading. That the
 * slope is shown follows: the loss still grows towards the level line.
 */
export function shows(rows: readonly SizeRow[], sizeMm: number, confidence: number): boolean {
  if (mixedSizes(rows.map(({ runs, found }) => ({ counted: runs, countedFound: found }))) < 2) return false
  const best = fitCurve(rows, FIRTH)
  const asked = Math.log(sizeMm)
  const largest = Math.max(...rows.map(({ x }) => x!))
  if (!(best.b[1]! > 0) || asked > largest + 1e-9) return false
  if (xAt(best, FIRTH, 0.9) > asked) return false
  const held = logLThrough(rows, FIRTH, 0.9, asked, best)
  return 2 * (best.logL - held.logL) >= normalUpperQuantile(1 - confidence) ** 2
}

/** Chance that the trial shows the size, by `sets` simulated trials (standard error 0.01 at 2,000). */
export function curvePower(
  truth: Truth,
  { sizesMm, perSize }: CurveDesign,
  sizeMm: number,
  confidence: number,
  { seed, sets }: { readonly seed: number; readonly sets: number },
): number {
  const random = randomStream(seed, 'trial plan')
  const chances = sizesMm.map((size) => chanceAt(truth, size))
  const known = new Map<string, boolean>()
  let shown = 0
  for (let set = 0; set < sets; set++) {
    const found = chances.map((chance) => {
      let count = 0
      for (let k = 0; k < perSize; k++) if (random.uniform() < chance) count++
      return count
    })
    const key = found.join()
    let yes = known.get(key)
    if (yes === undefined) {
      const rows = sizesMm.map((size, i) => ({ x: Math.log(size), runs: perSize, found: found[i]! }))
      yes = shows(rows, sizeMm, confidence)
      known.set(key, yes)
    }
    if (yes) shown++
  }
  return shown / sets
}
