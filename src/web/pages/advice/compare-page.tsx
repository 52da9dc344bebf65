import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { wantedOf } from '../../../../views/advice/sizes/findings.ts'
import { ComparePage } from '../../../../views/compare/compare-page.tsx'
import { pieceWords } from '../../../../views/words/contaminant.ts'
import { falseRejectWords } from '../../../../views/words/false-rejects.ts'
import { compare } from '../../../compare/comparison.ts'
import type { Advisor } from '../../advisor.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'
import { today } from '../../today.ts'

/** Two or three machines or quotes of the brief in the address, side by side. */
export const comparePage = (advisor: Advisor) => async (c: Context) => {
  const { packed, brief } = goodBrief(c)
  const advice = await advisor.quick(brief)
  const pieces = wantedOf(advice).map((piece) => pieceWords(piece, materialNames))
  const comparison = compare(brief, advice, { keys: c.req.queries('x') ?? [], given: c.req.query(), pieces })
  if (comparison === null)
    throw new HTTPException(404, {
      message: 'The advice on this brief has no detector to compare: none of the list fits its points.',
    })
  const { search } = new URL(c.req.url)
  const page = (
    <ComparePage
      comparison={comparison}
      title={brief.title}
      pieces={pieces}
      rejectWords={comparison.sides.map(({ point }, at) => {
        const rate = comparison.asked.own[at]?.falseRejectsPerPack ?? point.falseRejectsPerPack
        return falseRejectWords(rate, point.packsPerMin, point.hoursPerDay)
      })}
      packed={packed}
      query={search.slice(1).replace(/&print=1/g, '')}
      printedOn={c.req.query('print') === '1' ? today() : null}
    />
  )
  return showPage(c, page, comparison.problems.length > 0 ? 422 : 200)
}
