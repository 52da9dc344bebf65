import type { Point, XrayMachine } from '../contract/index.ts'
import type { Refusal } from './assessment.ts'
import type { XrayBuild } from './beam/exposure.ts'

/** Widest half angle a fan beam is used at, degrees (common practice, no source: beyond it the edge sees the pack aslant). */
export const FAN_HALF_ANGLE_DEG = 35

/**
 * Whether the pack (all lanes side by side) goes through the machine, and the beam reaches across it.
 * Sides in mm; the fan must reach the edges at source-to-object distance = source-to-detector / magnification.
 */
export function refusalsOf(machine: XrayMachine, build: XrayBuild, point: Point): Refusal[] {
  const refusals: Refusal[] = []
  const widthMm = point.widthMm * point.lanes
  if (machine.maxWidthMm !== undefined && widthMm > machine.maxWidthMm) {
    refusals.push({ id: 'too-wide', given: widthMm, allowed: machine.maxWidthMm, unit: 'mm' })
  }
  if (machine.maxHeightMm !== undefined && point.heightMm > machine.maxHeightMm) {
    refusals.push({ id: 'too-high', given: point.heightMm, allowed: machine.maxHeightMm, unit: 'mm' })
  }
  const half = (build.beam === 'down' ? widthMm : point.heightMm) / 2
  const reach =
    (build.sourceToDetectorMm / build.magnification) * Math.tan((FAN_HALF_ANGLE_DEG * Math.PI) / 180)
  if (half > reach)
    refusals.push({ id: 'fan-too-wide', given: 2 * half, allowed: Math.floor(2 * reach), unit: 'mm' })
  return refusals
}
