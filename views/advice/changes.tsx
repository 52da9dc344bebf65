import type { Advice } from '../../src/contract/advice.ts'
import { pathWords, unitOf } from '../words/path.ts'
import { valueWords } from '../words/size.ts'

/** The smallest changes of what can be acted on that would alter the answer. */
export function Changes({ advice }: { advice: Advice }) {
  return (
    <section aria-labelledby="changes">
      <h2 id="changes">What would change it</h2>
      {advice.changes.length === 0 ? (
        <p>{advice.changesNote}</p>
      ) : (
        <ul>
          {advice.changes.map((change) => (
            <li>
              {change.inputs
                .map(
                  ({ path, from, to }) =>
                    `${pathWords(path, advice)} from ${valueWords(from)} to ${`${valueWords(to)} ${unitOf(path)}`.trim()}`,
                )
                .join(', with ')}
              : <strong>{change.effect}</strong>
              {change.verified ? '' : ' (not checked through the whole calculation)'}
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}
