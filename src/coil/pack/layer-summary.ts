import type { Point } from '../../contract/index.ts'
import type { CoilLayer } from '../assessment.ts'
import type { Arrangement } from '../opening/opening.ts'
import { conductingParts } from './packaging.ts'

/** The conducting parts of the pack in plain values; a stream in a pipe or throat has no pack. */
export function layerSummary(point: Pick<Point, 'parts'>, arrangement: Arrangement): readonly CoilLayer[] {
  if (arrangement !== 'tunnel') return []
  return conductingParts(point.parts).map(
    ({ part, kind, conductanceS, mostConductanceS, magnetic, film }) => ({
      material: part.material,
      place: part.place,
      kind,
      conductanceS,
      mostConductanceS,
      magnetic: magnetic !== null,
      film,
    }),
  )
}
