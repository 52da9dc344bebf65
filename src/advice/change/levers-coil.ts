import { chooseOpening, fittingOpening } from '../../coil/opening/opening.ts'
import type { Machine, Point } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'
import { isFoil } from '../facts/kinds/pack-kind.ts'
import { down, LEVER_LIMITS, type Lever, up } from './lever.ts'

/** Films that take the place of a foil, and their usual thickness, mm (common practice, no source). */
const FILMS = [
  { id: 'metallised-film', material: 'metallised_film', mm: 0.02 },
  { id: 'plain-film', material: 'pp', mm: 0.04 },
] as const

/** A lower opening, where the point sets one and the pack leaves room. */
export function opening(point: Point, path: string, machine: Machine): Lever | null {
  if (machine.family !== 'coil' || machine.apertureHeightMm !== undefined) return null
  const { heightMm: from, origin } = chooseOpening(machine, point, null)
  const least = fittingOpening(point).heightMm
  if (origin !== 'point' || point.apertureHeightMm === null || least > from * 0.95) return null
  return {
    id: 'opening',
    dosed: true,
    at: (share) => [
      { path: `${path}.apertureHeightMm`, from, to: Math.max(least, down(from - share * (from - least), 5)) },
    ],
  }
}

/** A narrower pipe run faster: the same throughput, closer to the coil. */
export function pipe(point: Point, path: string): Lever | null {
  const from = point.pipeDiameterMm
  if (point.stage !== 'pumped' || from === null) return null
  const least = Math.max(
    from * LEVER_LIMITS.narrowestPipeShare,
    LEVER_LIMITS.narrowestPipeMm,
    from * Math.sqrt(point.speedMPerMin / LEVER_LIMITS.fastestMPerMin),
  )
  if (least > from * 0.95) return null
  return {
    id: 'pipe',
    dosed: true,
    at: (share) => {
      const to = Math.max(up(least, 1), down(from - share * (from - least), 1))
      const narrower = (field: 'heightMm' | 'widthMm') =>
        point[field] > to ? [{ path: `${path}.${field}`, from: point[field], to }] : []
      return [
        { path: `${path}.pipeDiameterMm`, from, to },
        {
          path: `${path}.speedMPerMin`,
          from: point.speedMPerMin,
          to: up(point.speedMPerMin * (from / to) ** 2, 0.5),
        },
        ...narrower('heightMm'),
        ...narrower('widthMm'),
      ]
    },
  }
}

/** Another wrapping, where foil stands between a coil and the food. */
export function packaging(point: Point, path: string, machine: Machine): Lever[] {
  if (machine.family !== 'coil') return []
  const foils = point.parts.flatMap((part, at) => (isFoil(part, materials) ? [{ part, at }] : []))
  if (foils.length === 0) return []
  return FILMS.map(({ id, material, mm }): Lever => {
    const moves = foils.flatMap(({ part, at }) => [
      { path: `${path}.parts.${at}.material`, from: part.material, to: material },
      { path: `${path}.parts.${at}.mm`, from: part.mm, to: mm },
    ])
    return { id, dosed: false, at: () => moves }
  })
}
