import type { Advice } from '../../../src/contract/advice.ts'
import { type Names, pieceShort } from '../../words/contaminant.ts'
import { listed } from '../../words/listed.ts'
import type { Citations } from '../reasons/citations.ts'
import { Cited } from '../reasons/cited.tsx'
import { wantedOf } from '../sizes/findings.ts'

/** How what no machine here finds, or not at the size asked, is kept out before. */
export function Prevent({
  advice,
  names,
  citations,
}: {
  advice: Advice
  names: Names
  citations: Citations
}) {
  if (advice.prevention.length === 0) return null
  const wanted = wantedOf(advice)
  return (
    <section aria-labelledby="prevent">
      <h2 id="prevent">Kept out before, because no machine here does it</h2>
      <ul>
        {advice.prevention.map(({ contaminant, lines, text, sources }) => (
          <li>
            <strong>
              {pieceShort(wanted[contaminant]!, names)}
              {lines.length > 0 && lines[0] !== '' ? ` (${listed(lines)})` : ''}.
            </strong>{' '}
            {text}
            <Cited ids={sources} citations={citations} />
          </li>
        ))}
      </ul>
    </section>
  )
}
