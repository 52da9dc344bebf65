import type { Advice } from '../../src/contract/advice.ts'
import type { Names } from '../words/contaminant.ts'
import { changeWords } from './change-words.ts'

/** The smallest changes of what can be acted on that would alter the answer. */
export function Changes({ advice, names }: { advice: Advice; names: Names }) {
  return (
    <section aria-labelledby="changes">
      <h2 id="changes">What would change it</h2>
      {advice.changes.length === 0 ? (
        <p>{advice.changesNote}</p>
      ) : (
        <ul>
          {advice.changes.map((change) => (
            <li>
              {changeWords(change, advice, names)}: <strong>{change.effect}</strong>
              {change.verified ? '' : ' (not checked through the whole calculation)'}
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}
