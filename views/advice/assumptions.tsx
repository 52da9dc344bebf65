import type { Advice } from '../../src/contract/advice.ts'
import { unitOf } from '../words/path.ts'
import { valueWords } from '../words/size.ts'
import { assumedRows } from './assumed-rows.ts'
import type { Links } from './links.ts'

/** Everything the brief left open: what was taken, how far it may be off, why. */
export function Assumptions({ advice, links }: { advice: Advice; links: Links }) {
  return (
    <section aria-labelledby="assumed">
      <h2 id="assumed">Assumed</h2>
      {advice.assumed.length === 0 ? (
        <p>Nothing: the brief gives every value that is used.</p>
      ) : (
        <section class="scroll" tabindex={0} aria-labelledby="assumed-table">
          <table>
            <caption id="assumed-table">
              Values the brief leaves open (<a href={`/brief?b=${links.packed}`}>enter your own</a>)
            </caption>
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">Taken as</th>
                <th scope="col">Range</th>
                <th scope="col">Because</th>
              </tr>
            </thead>
            <tbody>
              {assumedRows(advice).map(({ path, words, value, range, because }) => (
                <tr>
                  <th scope="row">{words}</th>
                  <td>{`${valueWords(value)} ${unitOf(path)}`.trim()}</td>
                  <td>
                    {range
                      ? `${valueWords(range[0])} to ${`${valueWords(range[1])} ${unitOf(path)}`.trim()}`
                      : '–'}
                  </td>
                  <td class="prose">{because}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </section>
  )
}
