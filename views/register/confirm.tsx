import type { Register } from '../../src/contract/register.ts'
import { Fold } from './fold.tsx'
import type { Ink } from './ink.tsx'
import { answerLink } from './questions.tsx'

/** Assumptions nobody confirmed: confirm them as they stand, or change them with a reason. */
export function Confirm({ register, ink }: { register: Register; ink: Ink }) {
  const { confirm } = register
  if (confirm.length === 0) return null
  return (
    <section aria-labelledby="confirm">
      <h2 id="confirm">Assumptions to be confirmed by a person</h2>
      <Fold ink={ink} summary={`${confirm.length} assumptions nobody has confirmed`}>
        <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
          <table>
            <thead>
              <tr>
                <th scope="col">Assumption</th>
                <th scope="col">Taken as</th>
              </tr>
            </thead>
            <tbody>
              {(ink.paper ? byHazard(confirm) : confirm).map(({ id, text, value }) => (
                <tr>
                  <th scope="row">{text}</th>
                  <td>
                    {value}
                    {ink.paper ? null : (
                      <>
                        {' '}
                        <a class="why" href={answerLink(ink, id)}>
                          change<span class="unseen">: {text}</span>
                        </a>
                      </>
                    )}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
        {ink.paper ? null : (
          <form method="post" action="/register/confirm" class="answer-form">
            <input type="hidden" name="b" value={ink.packed} />
            <div class="field">
              <label for="what">Confirm as it stands</label>
              <select id="what" name="what">
                {confirm.map(({ id, text }) => (
                  <option value={id}>{text}</option>
                ))}
              </select>
            </div>
            <div class="field">
              <label for="by">Who confirms it</label>
              <input type="text" id="by" name="by" required autocomplete="off" />
            </div>
            <div class="field">
              <label for="date">On which date</label>
              <input type="text" id="date" name="date" required autocomplete="off" />
            </div>
            <button type="submit">Confirm it</button>
          </form>
        )}
      </Fold>
    </section>
  )
}

/** The assumptions about one contaminant in one row: "stone" – "median longest length 4 mm; spread, as a factor 2". */
function byHazard(confirm: Register['confirm']): Register['confirm'] {
  const rows = new Map<string, Register['confirm'][number]>()
  for (const one of confirm) {
    const [, contaminant] = /^(c\d+)\./.exec(one.id) ?? []
    const [, name, what] = /^(.*): (.*)$/.exec(one.text) ?? []
    if (contaminant === undefined || name === undefined) {
      rows.set(one.id, one)
      continue
    }
    const before = rows.get(contaminant)
    const value = `${what} ${one.value}`
    rows.set(contaminant, {
      id: contaminant,
      text: name,
      value: before ? `${before.value}; ${value}` : value,
    })
  }
  return [...rows.values()]
}
