import type { Brief, Contaminant } from '../../contract/index.ts'
import { assessRemovals } from './assess-machine.ts'
import { lineUp } from './line-up.ts'

/**
 * Share of pieces that a sieve, magnet, sorter or separator at a point takes out in one run, worst and best, at each
 * of the sizes asked; a wire or flake keeps its proportions. Null where it has no use for that contaminant there.
 */
export function removedBySize(brief: Brief) {
  return (
    pointIndex: number,
    equipment: string,
    contaminant: number,
    sizesMm: readonly number[],
  ): (readonly [number, number])[] | null => {
    const given = brief.contaminants[contaminant]!
    const alone = lineUp(brief, brief.points[pointIndex]!).filter(({ machine }) => machine.id === equipment)
    const [assessed] = assessRemovals(
      { ...brief, contaminants: sizesMm.map((sizeMm) => scaled(given, sizeMm)) },
      pointIndex,
      alone,
    )
    if (!assessed || assessed.findings.some(({ applicable }) => !applicable)) return null
    return assessed.findings.map(({ shareRemoved }) => shareRemoved)
  }
}

function scaled(given: Contaminant, sizeMm: number): Contaminant {
  const by = given.mustFindMm === null ? 1 : sizeMm / given.mustFindMm
  return {
    ...given,
    mustFindMm: sizeMm,
    lengthMm: given.lengthMm === null ? null : Math.max(sizeMm, given.lengthMm * by),
    faceMm2: given.faceMm2 === null ? null : Math.max(sizeMm ** 2, given.faceMm2 * by * by),
  }
}
