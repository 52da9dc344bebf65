import type { Advice } from '../../../src/contract/advice.ts'
import type { Names } from '../../words/contaminant.ts'
import type { Links } from '../links.ts'
import { AnswerTable } from './answer-table.tsx'
import { Margin } from './margin.tsx'

interface Props {
  readonly advice: Advice
  readonly title: string
  readonly names: Names
  readonly links: Links
}

const count = (n: number, one: string) => `${n} ${one}${n === 1 ? '' : 's'}`

/** The answer: one sentence, one table, what to do before ordering. Nothing else is on the first screen. */
export function FirstScreen({ advice, title, names, links }: Props) {
  const { points, contaminants } = advice.brief
  return (
    <section class="first-screen" aria-labelledby="advice-title">
      <h1 class="over" id="advice-title">
        {title}{' '}
        <span class="over-facts">
          {count(points.length, 'inspection point')}, {count(contaminants.length, 'contaminant')} ·{' '}
          <a href={`/brief?b=${links.packed}`}>change the brief</a>
        </span>
      </h1>
      <p class="answer">{advice.answer.sentence}</p>
      <div class="answer-and-margin">
        <div>
          <section class="scroll" tabindex={0} aria-label="The answer, contaminant by contaminant">
            <AnswerTable advice={advice} names={names} links={links} />
          </section>
          <p class="small bar-key">
            <b aria-hidden="true">▏</b> expected · <b aria-hidden="true">▬</b> up to safe to promise, hatched
            where nothing can be promised · <b aria-hidden="true">┆</b> asked. A findable size (the trade says
            sensitivity) is predicted for this brief: found 9 times in 10 in the body of the pack.
          </p>
        </div>
        <Margin advice={advice} links={links} />
      </div>
    </section>
  )
}
