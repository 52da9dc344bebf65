import type { Advice, Brief, BriefInput, Finding, Option } from '../../contract/index.ts'
import { sizeRatio, standing } from '../order/order.ts'

/** The part of a brief on which a value is tried out: one point, its leading machines, its closest sizes. */
export interface Stand {
  readonly point: number
  readonly equipment: readonly string[]
  /** Numbers of the contaminants in the whole brief. */
  readonly contaminants: readonly number[]
  /** How near the closest of its sizes is to the size to find, as the logarithm of a factor. */
  readonly closest: number
}

/** Sizes looked at per point. */
const MOST_SIZES = 2

/** The machine that comes first at a point, and the first of another family. */
function leaders(options: readonly Option[]): Option[] {
  const able = options.filter((o) => o.rank !== null && !standing(o).excluded && o.family !== 'static-field')
  const first = able[0]
  const other = able.find((o) => o.family !== first?.family)
  return [first, other].filter((o) => o !== undefined)
}

/** How near a size is to the size to find, as the logarithm of a factor; what cannot be found is far. */
const distance = (f: Finding) => Math.abs(Math.log(sizeRatio(f) ?? Number.POSITIVE_INFINITY))

/**
 * Where the values are tried out: each point with a detector, on the sizes that are closest to being turned;
 * the point with the closest of all comes first.
 */
export function standsOf(points: Advice['points']): Stand[] {
  const stands = points.flatMap(({ options }, point): Stand[] => {
    const machines = leaders(options)
    const sizes = machines
      .flatMap(({ findings }) => findings.filter((f) => f.expectedMm !== null))
      .sort((a, b) => nearer(distance(a), distance(b)) || a.contaminant - b.contaminant)
    const [first] = sizes
    if (!first) return []
    const contaminants = [...new Set(sizes.map((f) => f.contaminant))].slice(0, MOST_SIZES)
    const equipment = machines.map((o) => o.equipment)
    return [{ point, equipment, contaminants, closest: distance(first) }]
  })
  return stands.sort((a, b) => nearer(a.closest, b.closest))
}

/** Ascending, where both may be infinite. */
const nearer = (a: number, b: number) => (a === b ? 0 : a - b)

/** The brief cut down to a stand; paths of the whole brief are led to the cut one by `pathAt`. */
export function briefAt(brief: Brief, stand: Stand): BriefInput {
  const machine = (id: string) => brief.equipment.find((m) => typeof m !== 'string' && m.id === id) ?? id
  return {
    ...brief.given,
    points: [brief.given.points[stand.point]!],
    contaminants: stand.contaminants.map((c) => brief.given.contaminants[c]!),
    equipment: stand.equipment.map(machine),
    quotes: [],
  }
}

/** A path of the whole brief as it reads at a stand; null where it speaks of something that is not there. */
export function pathAt(stand: Stand, path: string): string | null {
  const [list, row, ...rest] = path.split('.')
  if (list === 'points') return Number(row) === stand.point ? ['points', 0, ...rest].join('.') : null
  if (list !== 'contaminants') return path
  const at = stand.contaminants.indexOf(Number(row))
  return at < 0 ? null : ['contaminants', at, ...rest].join('.')
}
