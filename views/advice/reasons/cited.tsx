import { MARK_WORDS } from '../../words/mark.ts'
import type { Citations } from './citations.ts'

/** Numbers in brackets, each leading to its source at the end of the page. */
export function Cited({ ids, citations }: { ids: readonly string[]; citations: Citations }) {
  const cited = ids.flatMap((id) => citations.get(id) ?? [])
  if (cited.length === 0) return null
  return (
    <span class="cited">
      {' ['}
      {cited.map(({ number, anchor }, at) => (
        <>
          {at > 0 ? ', ' : ''}
          <a href={`#${anchor}`}>
            <span class="unseen">source </span>
            {number}
          </a>
        </>
      ))}
      ]
    </span>
  )
}

/** The sources themselves, each with how well it stands; of a part only those it cites. */
export function CitedSources({ citations, of }: { citations: Citations; of?: readonly string[] }) {
  const shown = [...citations].filter(([id]) => !of || of.includes(id)).map(([, citation]) => citation)
  if (shown.length === 0) return null
  if (of)
    return (
      <ul class="source-list small">
        {shown.map(({ number, text, anchor }) => (
          <li id={anchor}>
            [{number}] {text}
          </li>
        ))}
      </ul>
    )
  return (
    <section aria-labelledby="sources">
      <h2 id="sources">Sources</h2>
      <ol class="source-list">
        {shown.map(({ text, mark, anchor }) => (
          <li id={anchor}>
            {text} {mark === '' ? null : <span class="small">({MARK_WORDS[mark] ?? mark})</span>}
          </li>
        ))}
      </ol>
    </section>
  )
}
