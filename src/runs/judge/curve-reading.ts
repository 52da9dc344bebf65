import type { CleanRun } from '../../contract/index.ts'
import { fitModel } from '../fit/fit.ts'
import {
  type Curve,
  deltaAt,
  fitCurve,
  ONE_SIDED_95,
  profileEnd,
  type SizeRow,
  xAt,
  Z_95,
} from '../fit/size-bound.ts'
import type { SizeTally } from './units.ts'

/** Why a curve shows no size: the words of the page hang on these. */
export type NoBound = 'too-few-mixed' | 'no-slope' | 'beyond-largest'

/** What a curve through the sizes says. Bounds are one-sided 95 % on the size found with chance 0.90. */
export interface CurveReading {
  readonly b0: number
  readonly b1: number
  readonly floor: number
  readonly method: 'firth'
  readonly separated: boolean
  readonly a50: number | null
  readonly a90: number | null
  readonly a9095: number | null
  readonly a9095Plain: number | null
  readonly a9095Delta: number | null
  readonly because: NoBound | null
}

/** Rows in ln size, one a size, with the clean run as its own row. */
export function sizeRows(tallies: readonly SizeTally[], clean: CleanRun | null): SizeRow[] {
  const rows: SizeRow[] = tallies.map(({ sizeMm, counted, countedFound }) => ({
    x: Math.log(sizeMm),
    runs: counted,
    found: countedFound,
  }))
  return clean ? [...rows, { x: null, runs: clean.packs, found: clean.rejects }] : rows
}

/** Sizes of which some runs found and some missed. */
export const mixedSizes = (tallies: readonly Pick<SizeTally, 'counted' | 'countedFound'>[]): number =>
  tallies.filter(({ counted, countedFound }) => countedFound > 1e-9 && countedFound < counted - 1e-9).length

/**
 * Curve by the likelihood with Jeffreys' term; null with fewer than two sizes. Without a clean run the floor is
 * taken as 0.
 */
export function readCurve(
  tallies: readonly SizeTally[],
  clean: CleanRun | null,
  link: Curve['link'] = 'logit',
): CurveReading | null {
  if (tallies.length < 2) return null
  const rows = sizeRows(tallies, clean)
  const floor: Curve['floor'] = clean ? { kind: 'estimated' } : { kind: 'fixed', chance: 0 }
  const firth: Curve = { link, method: 'firth', floor }
  const fitted = fitCurve(rows, firth)
  const [b0, b1] = fitted.b as [number, number]
  const mixed = mixedSizes(tallies)
  const rising = b1 > 0
  const base = {
    b0,
    b1,
    floor: fitted.floor,
    method: 'firth' as const,
    separated: mixed < 2,
    a50: rising ? Math.exp(xAt(fitted, firth, 0.5)) : null,
    a90: rising ? Math.exp(xAt(fitted, firth, 0.9)) : null,
  }
  const none = { a9095: null, a9095Plain: null, a9095Delta: null }
  if (mixed < 2) return { ...base, ...none, because: 'too-few-mixed' }
  if (!rising || !slopeShown(rows, firth, fitted.logL)) return { ...base, ...none, because: 'no-slope' }
  const a9095 = Math.exp(profileEnd(rows, firth, 0.9))
  const largest = tallies.at(-1)!.sizeMm
  if (!(a9095 <= largest)) return { ...base, ...none, because: 'beyond-largest' }
  const plain: Curve = { ...firth, method: 'ml' }
  const delta = deltaAt(fitCurve(rows, plain), plain, 0.9)
  return {
    ...base,
    a9095,
    a9095Plain: finite(Math.exp(profileEnd(rows, plain, 0.9))),
    a9095Delta: delta ? finite(Math.exp(delta.x + Z_95 * delta.standardError)) : null,
    because: null,
  }
}

const finite = (value: number): number | null => (Number.isFinite(value) ? value : null)

/** Whether the chance rises with size at one-sided 95 %, by the same likelihood as the bound. */
function slopeShown(rows: readonly SizeRow[], curve: Curve, best: number): boolean {
  const level = fitModel(
    rows.map(({ x, ...row }) => ({ ...row, columns: x === null ? null : [1, x] })),
    { ...curve, held: new Map([[1, 0]]) },
  )
  return 2 * (best - level.logL) >= ONE_SIDED_95
}
