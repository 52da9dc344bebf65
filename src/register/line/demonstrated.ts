import type { Brief } from '../../contract/index.ts'

/** What a trial on the product showed, as the brief keeps it. */
interface Shown {
  readonly point: string
  readonly equipment: string
  readonly contaminant: number
  readonly sizeMm: number
  readonly date?: string
}

/** The size demonstrated for a contaminant by a machine at a point; null until a trial. */
export function demonstratedMm(
  brief: Brief,
  point: string,
  equipment: string,
  contaminant: number,
): number | null {
  const { demonstrated = [] } = brief.given as { readonly demonstrated?: readonly Shown[] }
  const shown = demonstrated.find(
    (one) => one.point === point && one.equipment === equipment && one.contaminant === contaminant,
  )
  return shown?.sizeMm ?? null
}
