import type { Brief } from '../../contract/index.ts'
import type { Line } from '../stages.ts'

/**
 * The lines of a brief, in the order in which they are first named: points of one line are in series, lines are
 * beside each other. A point that names no line, where others do, is on every one of them (a belt before the
 * lines part). Without any name there is one line.
 */
export function linesOf({ points }: Pick<Brief, 'points'>): Line[] {
  const names = [...new Set(points.map(({ line }) => line).filter((name) => name !== ''))]
  if (names.length === 0) return [{ name: '', points: points.map((_, at) => at) }]
  return names.map((name) => ({
    name,
    points: points.flatMap(({ line }, at) => (line === name || line === '' ? [at] : [])),
  }))
}
