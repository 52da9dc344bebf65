import type { Advice } from '../../../src/contract/advice.ts'
import type { Brief } from '../../../src/contract/brief.ts'
import { Page } from '../../page.tsx'
import { packLine } from '../../words/brief.ts'
import type { Names } from '../../words/contaminant.ts'
import { falseRejectWords } from '../../words/false-rejects.ts'
import { linksTo } from '../links.ts'
import { AnswerTable } from '../sheet/answer-table.tsx'
import { assumedLine } from './assumed-line.ts'
import { Rivals } from './rivals.tsx'

export interface PaperProps {
  readonly advice: Advice
  readonly brief: Brief
  readonly title: string
  readonly names: Names
  readonly packed: string
  /** Day of printing, e.g. "27 November 2026". */
  readonly printedOn: string
}

/** Assumptions that fit on the sheet. */
const MOST_ASSUMED = 5
/** Lines of what to ask and test that fit on the sheet. */
const MOST_BEFORE = 4

/** One sheet for whoever decides: the answer, what was compared, what it costs, what to do before ordering. */
export function BossPage({ advice, brief, title, names, packed, printedOn }: PaperProps) {
  const { sentence, parts, ask, test } = advice.answer
  const [first, ...others] = parts
  const { gritwise, rules, reference } = advice.versions
  const used = new Set(advice.combination.uses.map(({ point }) => point))
  const points = brief.points.filter(({ name }) => used.size === 0 || used.has(name))
  return (
    <Page title={`${title}, ${printedOn}, one page`} packed={packed} here="advice" print>
      <article class="boss-page">
        <p class="day">
          Inspection for foreign bodies · {title} · {printedOn}
        </p>
        <h1>{first?.text ?? sentence}</h1>
        <p class="big">{others.map(({ text }) => text).join(' ')}</p>
        <h2>What it finds</h2>
        <AnswerTable advice={advice} names={names} links={linksTo(packed, advice)} plain />
        <Rivals advice={advice} />
        <h2>What it costs in good packs</h2>
        <p>
          {points
            .map(({ name, falseRejectsPerPack, packsPerMin, hoursPerDay }) => {
              const rejected = falseRejectWords(falseRejectsPerPack, packsPerMin, hoursPerDay)
              return `${points.length > 1 ? `${name}: ` : 'Good packs rejected: '}${rejected}.`
            })
            .join(' ')}{' '}
          Every rejected pack is opened by a named person.
        </p>
        <h2>Before ordering</h2>
        <ul>
          {[...ask, ...test].slice(0, MOST_BEFORE).map(({ text }) => (
            <li>{text}</li>
          ))}
        </ul>
        <h2>On what this rests</h2>
        <p class="rests">
          {points.map((point) => `${point.name}: ${packLine(point, names)}.`).join(' ')}{' '}
          {assumedLine(advice, MOST_ASSUMED)} Predicted by computation, not demonstrated; a test on the real
          product decides. Sizes are found 9 times in 10 at the false rejects above. Not an approval: x-rays
          and moving belts need a competent person and the local authority.
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
