import type { Advice, Source } from '../../../src/contract/advice.ts'

/** A source as the page cites it: its number in the list at the end. */
export interface Citation {
  readonly number: number
  readonly text: string
  readonly mark: string
  /** Where the source stands on the page. */
  readonly anchor: string
}

export type Citations = ReadonlyMap<string, Citation>

/** Sources numbered in the order they are met on the page, each once. */
export function numbered(ids: readonly string[], sources: readonly Source[], part = ''): Citations {
  const texts = new Map(sources.map((source) => [source.id, source]))
  return new Map(
    [...new Set(ids)].map((id, at) => [
      id,
      {
        number: at + 1,
        text: texts.get(id)?.text ?? id,
        mark: texts.get(id)?.mark ?? '',
        anchor: `${part ? `${part}-` : ''}source-${at + 1}`,
      },
    ]),
  )
}

/** The sources behind cautions and reasons of an advice; a part that is opened on its own has anchors of its own. */
export function citationsOf(advice: Advice, part = ''): Citations {
  const options = advice.points.flatMap((point) => point.options)
  const removals = advice.points.flatMap((point) => point.removals)
  const ids = [
    ...advice.cautions.flatMap((caution) => caution.sources),
    ...advice.points.flatMap(({ reasons }) => reasons.flatMap(({ sources }) => sources)),
    ...options.flatMap((option) => [
      ...option.reasons.flatMap((reason) => reason.sources),
      ...option.cautions.flatMap((caution) => caution.sources),
    ]),
    ...advice.prevention.flatMap(({ sources }) => sources),
    ...removals.flatMap(({ reasons }) => reasons.flatMap((reason) => reason.sources)),
  ]
  return numbered(ids, advice.trace.sources, part)
}
