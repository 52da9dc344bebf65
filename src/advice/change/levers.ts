import type { Machine, Point } from '../../contract/index.ts'
import type { Lever } from './lever.ts'
import { depthWithSpeed, falseRejects, slower } from './levers-belt.ts'
import { opening, packaging, pipe } from './levers-coil.ts'
import { oneLane, turned, widerBelt } from './levers-fit.ts'

/** What can be acted on at a point for a machine, what bites hardest first; never the food itself. */
export function leversAt(point: Point, index: number, machine: Machine): Lever[] {
  const path = `points.${index}`
  return [
    depthWithSpeed(point, path),
    widerBelt(point, path),
    turned(point, path, machine),
    oneLane(point, path),
    opening(point, path, machine),
    pipe(point, path),
    ...packaging(point, path, machine),
    slower(point, path),
    falseRejects(point, path),
  ].filter((lever) => lever !== null)
}
