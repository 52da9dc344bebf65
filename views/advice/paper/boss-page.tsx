import type { Advice } from '../../../src/contract/advice.ts'
import { Page } from '../../page.tsx'
import type { Names } from '../../words/contaminant.ts'
import { shortName } from '../../words/machine.ts'
import { unitOf } from '../../words/path.ts'
import { valueWords } from '../../words/size.ts'
import { VERDICT_WORDS } from '../../words/verdict.ts'
import { assumedRows } from '../assumed-rows.ts'
import { linksTo } from '../links.ts'
import { AnswerTable } from '../sheet/answer-table.tsx'
import { metCounts } from '../sheet/machines.tsx'

export interface PaperProps {
  readonly advice: Advice
  readonly title: string
  readonly names: Names
  readonly packed: string
  /** Size, speed and false rejects of each point, in words. */
  readonly pointLines: readonly string[]
  /** Day of printing, e.g. "27 November 2026". */
  readonly printedOn: string
}

const MOST_RIVALS = 4
const MOST_ASSUMED = 5

/** One sheet for whoever decides: the answer, what was compared, what it costs, what to do before ordering. */
export function BossPage({ advice, title, names, packed, pointLines, printedOn }: PaperProps) {
  const { sentence, parts, ask, test } = advice.answer
  const [first, ...others] = parts
  const links = linksTo(packed, advice)
  const { gritwise, rules, reference } = advice.versions
  return (
    <Page title={`${title}, ${printedOn}, one page`} packed={packed} here="advice" print>
      <article class="boss-page">
        <p class="day">
          Inspection for foreign bodies · {title} · {printedOn}
        </p>
        <h1>{first?.text ?? sentence}</h1>
        <p class="big">{others.map(({ text }) => text).join(' ')}</p>
        <h2>What it finds</h2>
        <AnswerTable advice={advice} names={names} links={links} plain />
        <Rivals advice={advice} />
        <h2>What it costs in good packs</h2>
        {pointLines.map((line, at) => (
          <p>
            {pointLines.length > 1 ? `${advice.points[at]?.name}: ` : ''}
            {line}
          </p>
        ))}
        <h2>Before ordering</h2>
        <ul>
          {ask.slice(0, 3).map(({ text }) => (
            <li>
              <strong>Ask</strong> {text}
            </li>
          ))}
          {test.slice(0, 3).map(({ text }) => (
            <li>
              <strong>Test</strong> {text}
            </li>
          ))}
        </ul>
        <h2>On what this rests</h2>
        <p class="rests">
          {restsOn(advice)} Predicted by computation, not demonstrated; a test on the real product decides.
          Sizes are found 9 times in 10 at the false rejects above. Not an approval: x-rays and moving belts
          need a competent person and the local authority.
        </p>
        <div class="signatures">
          <div>Prepared by, date</div>
          <div>Agreed by, date</div>
          <div>Next review</div>
        </div>
        <p class="versions">
          gritwise {gritwise}, rule book {rules}, reference data {reference}. Reasons and sources: the print
          of everything. Detector: metal detector (balanced coil).
        </p>
      </article>
    </Page>
  )
}

function restsOn(advice: Advice): string {
  const rows = assumedRows(advice).slice(0, MOST_ASSUMED)
  if (rows.length === 0) return 'Nothing is assumed: the brief gives every value used.'
  const each = rows.map(({ path, words, value, range }) => {
    const unit = unitOf(path)
    const span = range ? ` (${valueWords(range[0])} to ${valueWords(range[1])})` : ''
    return `${words} ${valueWords(value)}${unit ? ` ${unit}` : ''}${span}`
  })
  const more = advice.assumed.length - rows.length
  return `Assumed: ${each.join('; ')}${more > 0 ? `; and ${more} more` : ''}.`
}

function Rivals({ advice }: { advice: Advice }) {
  const used = new Set(advice.combination.uses.map(({ point, equipment }) => `${point} ${equipment}`))
  const others = advice.points
    .flatMap(({ name, options }) => options.map((option) => ({ name, option })))
    .filter(({ name, option }) => option.rank !== null && !used.has(`${name} ${option.equipment}`))
    .slice(0, MOST_RIVALS)
  if (others.length === 0) return null
  return (
    <>
      <h2>What else was compared</h2>
      <table>
        <tbody>
          {others.map(({ name, option }) => (
            <tr>
              <th scope="row">
                {shortName(option)}
                {advice.points.length > 1 ? `, ${name}` : ''}
              </th>
              <td>{VERDICT_WORDS[option.verdict].words}</td>
              <td>{metCounts(option)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  )
}
