import { MARK_WORDS } from '../../words/mark.ts'
import type { Citations } from './citations.ts'

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
