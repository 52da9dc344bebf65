import type { Context } from 'hono'
import { wantedOf } from '../../../../views/advice/sizes/findings.ts'
import { DifferencePage } from '../../../../views/difference/difference-page.tsx'
import { pieceWords } from '../../../../views/words/contaminant.ts'
import { differenceOf } from '../../../advice/book/difference.ts'
import type { Advisor } from '../../advisor.ts'
import { type AskedBook, otherBook } from '../../asked/asked-book.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { formAnswers } from '../../asked/form-answers.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'

async function answer(c: Context, advisor: Advisor, asked: AskedBook) {
  const { packed, brief } = goodBrief(c)
  const house = advisor.house.book()
  const other = otherBook(advisor.house, asked)
  const advice = await advisor.quick(brief)
  const byOther = other && 'book' in other ? await advisor.under(brief, other.book) : null
  const problem = other && 'problem' in other ? other.problem : ''
  const page = (
    <DifferencePage
      packed={packed}
      title={brief.title}
      thresholds={[...house.thresholds.values()].map(({ id, label, value, unit }) => ({
        id,
        words: `${label}: ${value} ${unit}`.trim(),
      }))}
      rules={house.rules.map(({ id, title }) => ({ id, words: title }))}
      asked={asked}
      problem={problem}
      difference={byOther ? differenceOf(advice, byOther) : null}
      pieces={wantedOf(advice).map((piece) => pieceWords(piece, materialNames))}
    />
  )
  return showPage(c, page, problem ? 422 : 200)
}

/** The brief judged with one threshold moved or one rule taken out, as the address says. */
export const differencePage = (advisor: Advisor) => async (c: Context) => {
  const said = (name: string) => c.req.query(name) ?? ''
  return answer(c, advisor, {
    threshold: said('threshold'),
    value: said('value'),
    without: said('without'),
    pasted: '',
  })
}

/** The brief judged by rules that were sent along; nothing of them is kept. */
export const pastedDifference = (advisor: Advisor) => async (c: Context) => {
  const { pasted = '' } = await formAnswers(c)
  return answer(c, advisor, { threshold: '', value: '', without: '', pasted })
}
