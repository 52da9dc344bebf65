import type { Citations } from './citations.ts'

/** How well a source stands, in words. */
const MARK_WORDS: Readonly<Record<string, string>> = {
  V: 'read in the source',
  V2: 'quoted by a third party',
  C: 'computed',
  M: 'from memory',
  A: 'assumption',
}

/** Numbers in brackets, each leading to its source at the end of the page. */
export function Cited({ ids, citations }: { ids: readonly string[]; citations: Citations }) {
  const cited = ids.flatMap((id) => citations.get(id) ?? [])
  if (cited.length === 0) return null
  return (
    <span class="cited">
      {' ['}
      {cited.map(({ number }, at) => (
        <>
          {at > 0 ? ', ' : ''}
          <a href={`#source-${number}`}>
            <span class="unseen">source </span>
            {number}
          </a>
        </>
      ))}
      ]
    </span>
  )
}

/** The sources themselves, each with how well it stands. */
export function CitedSources({ citations }: { citations: Citations }) {
  if (citations.size === 0) return null
  return (
    <section aria-labelledby="sources">
      <h2 id="sources">Sources</h2>
      <ol class="source-list">
        {[...citations.values()].map(({ number, text, mark }) => (
          <li id={`source-${number}`}>
            {text} {mark === '' ? null : <span class="small">({MARK_WORDS[mark] ?? mark})</span>}
          </li>
        ))}
      </ol>
    </section>
  )
}
