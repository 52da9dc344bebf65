import type { Calculation, Source } from '../../contract/index.ts'
import { electricalSources } from '../../reference/electrical.ts'
import { sources as referenceSources } from '../../reference/index.ts'
import { separationSources } from '../../reference/separation.ts'
import type { Rulebook } from '../book/rule-schema.ts'

interface Sourced {
  readonly sources: readonly string[]
}

/** Every source that a calculation or a sentence names, once, by id: the rule book's own text first. */
export function sourcesUsed(
  book: Rulebook,
  calculations: readonly Calculation[],
  said: readonly Sourced[],
): Source[] {
  const ids = new Set([...calculations, ...said].flatMap(({ sources }) => [...sources]))
  return [...ids].sort().flatMap((id): Source[] => {
    const source =
      book.sources.get(id) ??
      referenceSources.get(id) ??
      electricalSources.get(id) ??
      separationSources.get(id)
    return source ? [{ id, text: source.text, mark: source.mark }] : []
  })
}
