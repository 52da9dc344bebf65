import type { Register, RegisterQuestion } from '../../src/contract/register.ts'
import { ByRule, type Ink } from './ink.tsx'
import { SHORT } from './questions.tsx'
import { answerWords, fromWords } from './words.ts'

interface Group {
  readonly answer: RegisterQuestion
  readonly of: string[]
}

/** The answers to one question, each distinct one once, with the pairs of hazard and control it is given for. */
function groupsOf({ hazards }: Register, at: number): Group[] {
  const groups = new Map<string, Group>()
  for (const { label, line, controls } of hazards)
    for (const { point, questions } of controls) {
      const answer = questions[at]
      if (!answer) continue
      const key = JSON.stringify([answer.answer, answer.because, answer.rule, answer.from])
      const group = groups.get(key) ?? { answer, of: [] }
      group.of.push(
        [label, ...(line === '' ? [] : [line]), ...(controls.length > 1 ? [point] : [])].join(', '),
      )
      groups.set(key, group)
    }
  return [...groups.values()]
}

/** Names of the pairs; in two words where they are all that are asked, or all of a line. */
function ofWords(of: readonly string[], all: readonly string[], { hazards }: Register): string {
  if (of.length > 1 && of.length === all.length) return 'every hazard'
  const lines = [...new Set(hazards.map(({ line }) => line))]
  const words = lines.flatMap((line) => {
    const ofLine = (one: string) => line !== '' && one.includes(`, ${line}`)
    const whole = all.filter(ofLine)
    const mine = of.filter(ofLine)
    return whole.length > 1 && mine.length === whole.length ? [{ words: `every hazard, ${line}`, mine }] : []
  })
  const said = new Set(words.flatMap(({ mine }) => mine))
  return [...words.map((one) => one.words), ...of.filter((one) => !said.has(one))].join('; ')
}

/** On paper: question by question, every answer and reason once, however many hazards share it. */
export function AnswersAtOnce({ register, ink }: { register: Register; ink: Ink }) {
  const asked = SHORT.map((short, at) => {
    const groups = groupsOf(register, at)
    return { short, groups, all: groups.flatMap(({ of }) => of) }
  }).filter(({ groups }) => groups.length > 0)
  if (asked.length === 0) return null
  return (
    <section>
      <h3>The answers behind the classes</h3>
      <p class="leads">A question is left out for a hazard whose class was settled before it.</p>
      {asked.map(({ short, groups, all }, at) => (
        <table class="questions">
          <caption>
            {at + 1}. {short}
          </caption>
          <thead class="unseen">
            <tr>
              <th scope="col">Hazards</th>
              <th scope="col">Answer and reason</th>
            </tr>
          </thead>
          <tbody>
            {groups.map(({ answer, of }) => (
              <tr>
                <th scope="row">{ofWords(of, all, register)}</th>
                <td class="prose">
                  <strong>{answerWords(answer.answer)}.</strong> {answer.because}
                  <ByRule ink={ink} rule={answer.rule} />
                  {answer.from === 'computed' ? null : <span class="small"> ({fromWords(answer.from)})</span>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ))}
    </section>
  )
}
