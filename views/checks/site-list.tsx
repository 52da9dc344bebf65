import type { Checks } from '../../src/contract/checks.ts'
import { ByRule, type Ink } from '../register/ink.tsx'
import { answerLink } from '../register/questions.tsx'

/** What is asked and seen on site: only what these stages need, with the answers so far. */
export function SiteList({ list, ink }: { list: Checks['siteList']; ink: Ink }) {
  if (list.length === 0) return null
  return (
    <section aria-labelledby="site-list">
      <h2 id="site-list">To ask and to see on site</h2>
      <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
        <table class="stacks site-list">
          <thead>
            <tr>
              <th scope="col">Question on site</th>
              <th scope="col">Answer on site</th>
            </tr>
          </thead>
          <tbody>
            {list.map(({ id, question, answer, because, rule }) => (
              <tr>
                <th scope="row">
                  {question}
                  <ByRule ink={ink} rule={rule} />
                </th>
                <td class="prose">
                  {answer === ''
                    ? ink.paper
                      ? '........................'
                      : 'open'
                    : `${answer} (${because})`}
                  {ink.paper ? null : (
                    <>
                      {' '}
                      <a class="why" href={answerLink(ink, id, '/checks')}>
                        {answer === '' ? 'answer' : 'change'}
                        <span class="unseen">: {question}</span>
                      </a>
                    </>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  )
}
