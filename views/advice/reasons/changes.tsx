import type { Advice } from '../../../src/contract/advice.ts'
import type { Names } from '../../words/contaminant.ts'
import { changeWords } from './change-words.ts'
import { ByRule } from './why-links.tsx'

/** The smallest changes of what can be acted on that would alter the answer. */
export function Changes({
  advice,
  names,
  hrefs = [],
  packed = null,
}: {
  advice: Advice
  names: Names
  /** Where each change leads: the advice with it, or the reasons at the other point. */
  hrefs?: readonly string[]
  /** The brief in the links to the rules that say it; null on paper. */
  packed?: string | null
}) {
  return (
    <section aria-labelledby="changes">
      <h2 id="changes">What would change it</h2>
      {advice.changes.length === 0 ? (
        <p>
          <ByRule text={advice.changesNote} grounds={advice.changesGrounds} packed={packed} />
        </p>
      ) : (
        <ul>
          {advice.changes.map((change, at) => (
            <li>
              {changeWords(change, advice, names)}:{' '}
              <strong>
                <ByRule text={change.effect} grounds={change.grounds} packed={packed} />
              </strong>
              {change.verified ? '' : ' (not checked through the whole calculation)'}
              {hrefs[at] ? (
                <>
                  {' '}
                  <a class="target" href={hrefs[at]}>
                    {hrefs[at]?.startsWith('#') ? 'Reasons' : 'See it'}
                    <span class="unseen">: {change.effect}</span>
                  </a>
                </>
              ) : null}
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}
