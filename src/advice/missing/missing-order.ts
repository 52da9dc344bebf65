import { labelOf } from '../../brief/form/form-labels.ts'
import type { Advice, Assumption, Brief } from '../../contract/index.ts'
import { placeId } from '../facts/place-id.ts'
import type { Stand } from './missing-trial.ts'

type Known = Pick<Advice['trace'], 'facts'>

/** Share of the noise a value stands for, by its field (0 to 1 as a percentage of the trace). */
const NOISE_OF: Readonly<Record<string, string>> = {
  unevennessMm: 'finding.unevennessPct',
  grainMm: 'finding.grainPct',
  packing: 'finding.grainPct',
}

/** Values only a metal detector feels. */
const OF_THE_COIL = ['temperatureC', 'conductivitySPerM', 'saltPct', 'ironMgPerKg']
/** Values it does not feel. */
const NOT_OF_THE_COIL = ['unevennessMm', 'grainMm', 'densityGPerCm3', 'voidFree']

/** Move expected of a value about whose effect nothing is known beforehand, as a logarithm (judgement). */
const UNKNOWN_MOVE = 0.05
/** A size nearer than this to the size to find counts as this near. */
const NEAREST = 0.05

/** Largest factor between a value and the ends of its range; 1 where it has none. */
function widest({ value, range }: Assumption): number {
  if (typeof value !== 'number' || value <= 0 || !range) return 1
  return Math.max(...range.map((end) => (end > 0 ? Math.max(end / value, value / end) : 1)))
}

/** Noise share of a field on the stand's x-ray machine, the largest over its sizes; null without one. */
function noiseShare(field: string, path: string, stand: Stand, { facts }: Known): number | null {
  const fact = path.includes('.parts.') ? 'finding.packagingPct' : NOISE_OF[field]
  if (!fact) return null
  const scopes = stand.equipment.flatMap((id) =>
    stand.contaminants.map((c) => placeId({ point: stand.point, equipment: id, contaminant: c })),
  )
  const shares = facts.flatMap(({ id, scope, value }) =>
    id === fact && scopes.includes(scope) && typeof value === 'number' ? [value / 100] : [],
  )
  return shares.length === 0 ? 0 : Math.max(...shares)
}

/**
 * How much a value may be worth trying at a stand, before anything is tried: the move of a size that its share
 * of the noise allows (variances add, so a share s grown by a factor k moves the size by ½·ln(1 + s·(k² − 1))),
 * over how far the closest size is from the size to find. Only the order of the trials hangs on it.
 */
export function worthTrying(assumption: Assumption, stand: Stand, closest: number, known: Known): number {
  const field = assumption.path.split('.').at(-1)!
  if (field === 'conductivitySPerM') return Math.log(widest(assumption)) / 3 / Math.max(closest, NEAREST)
  const share = noiseShare(field, assumption.path, stand, known)
  const factor = widest(assumption)
  const move = share === null ? UNKNOWN_MOVE : 0.5 * Math.log1p(share * (factor ** 2 - 1))
  return move / Math.max(closest, NEAREST)
}

/** Conductivity of the food where the brief leaves it to the tables: their value and range, as an assumption. */
export function conductivityOf(brief: Brief, { facts }: Known): Assumption[] {
  const given = [brief.given.product, ...brief.given.points.map(({ product }) => product)]
  if (given.some((product) => product?.conductivitySPerM !== undefined)) return []
  const at = (id: string, scope: string) => facts.find((f) => f.id === id && f.scope === scope)?.value
  const ranges = facts.filter(({ id, value }) => id === 'coil.conductivityRange' && Number(value) > 1)
  return ranges.slice(0, 1).flatMap(({ scope, value: factor }): Assumption[] => {
    const value = at('coil.conductivitySPerM', scope)
    if (typeof value !== 'number' || typeof factor !== 'number') return []
    const path = 'product.conductivitySPerM'
    const half = Math.sqrt(factor)
    const range: [number, number] = [value / half, value * half].map((end) => Number(end.toPrecision(3))) as [
      number,
      number,
    ]
    return [{ path, label: labelOf(path), value, range, because: '' }]
  })
}

/** A stand with those of its machines that feel a value; null where none does. */
export function feeling(path: string, stand: Stand, isCoil: (equipment: string) => boolean): Stand | null {
  const field = path.split('.').at(-1)!
  const feels = (id: string) => (isCoil(id) ? !NOT_OF_THE_COIL.includes(field) : !OF_THE_COIL.includes(field))
  const equipment = stand.equipment.filter(feels)
  return equipment.length === 0 ? null : { ...stand, equipment }
}
