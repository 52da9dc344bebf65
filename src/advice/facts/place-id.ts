/** A place in a brief; what is left out is not narrowed down to. */
export interface PlaceInBrief {
  readonly line?: number | null
  readonly point?: number | null
  readonly equipment?: string | null
  readonly contaminant?: number | null
}

/**
 * The one spelling of point, machine and contaminant in ids of calculations, facts and rules asked:
 * "p0.xray-dual.c1", "p0", "c1", of a line "l0", "l0.c1"; "brief" for the whole of it.
 */
export function placeId({ line, point, equipment, contaminant }: PlaceInBrief): string {
  const parts = [
    line == null ? '' : `l${line}`,
    point == null ? '' : `p${point}`,
    equipment ?? '',
    contaminant == null ? '' : `c${contaminant}`,
  ].filter(Boolean)
  return parts.length > 0 ? parts.join('.') : 'brief'
}

/** Where a quote stands in the brief. */
export const quoteId = (index: number): string => `quotes.${index}`
