import type { Point, XrayMachine } from '../contract/index.ts'
import { buildOf } from '../xray/beam/exposure.ts'

/**
 * How late an x-ray machine comes where one is taken for its picture: a standing jar or can is known by its shape from
 * the side, and of those machines the one with two views finds something behind its walls.
 */
export function lateFor({ outline }: Pick<Point, 'outline'>, machine: XrayMachine): number {
  if (outline !== 'cylinder') return 0
  const { beam, views } = buildOf(machine)
  return beam === 'down' ? 2 : views > 1 ? 0 : 1
}
