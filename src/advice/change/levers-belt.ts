import type { Point } from '../../contract/index.ts'
import { down, LEVER_LIMITS, type Lever, up } from './lever.ts'

/** A shallower bed run faster, for food that lies loose. */
export function depthWithSpeed(point: Point, path: string): Lever | null {
  if (point.stage !== 'loose') return null
  const least = Math.max(
    point.heightMm * LEVER_LIMITS.shallowestShare,
    point.product.grainMm,
    (point.heightMm * point.speedMPerMin) / LEVER_LIMITS.fastestMPerMin,
  )
  if (least > point.heightMm * 0.95) return null
  return {
    id: 'depth-with-speed',
    dosed: true,
    at: (share) => {
      const heightMm = Math.max(up(least, 1), down(point.heightMm - share * (point.heightMm - least), 1))
      const speed = up((point.speedMPerMin * point.heightMm) / heightMm, 0.5)
      return [
        { path: `${path}.heightMm`, from: point.heightMm, to: heightMm },
        { path: `${path}.speedMPerMin`, from: point.speedMPerMin, to: speed },
      ]
    },
  }
}

/** A slower belt, where the packs leave room between them. */
export function slower(point: Point, path: string): Lever | null {
  if (point.stage !== 'packed' || point.packsPerMin === null) return null
  const spacingMm = point.lengthMm + LEVER_LIMITS.gapBetweenPacksMm
  const needed = (point.packsPerMin * spacingMm) / 1000 / point.lanes
  const least = Math.max(needed, point.speedMPerMin * LEVER_LIMITS.slowestShare)
  if (least > point.speedMPerMin * 0.95) return null
  return {
    id: 'speed',
    dosed: true,
    at: (share) => [
      {
        path: `${path}.speedMPerMin`,
        from: point.speedMPerMin,
        to: Math.max(up(needed, 0.5), down(point.speedMPerMin - share * (point.speedMPerMin - least), 0.5)),
      },
    ],
  }
}

/** A laxer threshold. */
export function falseRejects(point: Point, path: string): Lever | null {
  const most = LEVER_LIMITS.falseRejectsPerPack
  if (point.falseRejectsPerPack > most / 1.5) return null
  const decades = Math.log(most / point.falseRejectsPerPack)
  return {
    id: 'false-rejects',
    dosed: true,
    at: (share) => [
      {
        path: `${path}.falseRejectsPerPack`,
        from: point.falseRejectsPerPack,
        to: Number(Math.min(most, point.falseRejectsPerPack * Math.exp(share * decades)).toPrecision(2)),
      },
    ],
  }
}
