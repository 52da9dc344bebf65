import type { Source } from '../../src/contract/advice.ts'

/** How well a source stands, in words. */
export const MARK_WORDS: Readonly<Record<string, string>> = {
  V: 'read in the source',
  V2: 'quoted by a third party',
  C: 'computed',
  M: 'from memory',
  A: 'assumption',
}

/** The texts behind source ids, each with how well it stands. */
export function SourceList({ ids, sources }: { ids: readonly string[]; sources: readonly Source[] }) {
  if (ids.length === 0) return null
  const said = ids.map((id) => {
    const source = sources.find((one) => one.id === id)
    return source ? `${source.text} (${MARK_WORDS[source.mark] ?? source.mark})` : id
  })
  return (
    <span class="sources">
      {ids.length > 1 ? 'Sources' : 'Source'}: {said.join('; ')}
    </span>
  )
}
