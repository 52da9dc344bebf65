import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { ComparePage } from '../../../../views/compare/compare-page.tsx'
import { pieceShort, pieceWords } from '../../../../views/words/contaminant.ts'
import { falseRejectWords } from '../../../../views/words/false-rejects.ts'
import { type Comparison, compare } from '../../../compare/comparison.ts'
import { atRate, readRate } from '../../../compare/false-rejects.ts'
import type { Advisor } from '../../advisor.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { askedOtherPack } from '../../asked/asked-other-pack.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'
import { sheetOf } from '../../shown/sheet.ts'
import { today } from '../../today.ts'

/** Machines of the brief in the address side by side, or those of two packs. */
export const comparePage = (advisor: Advisor) => async (c: Context) => {
  const { packed, brief } = goodBrief(c)
  const other = askedOtherPack(c, brief)
  const typed = c.req.query('rejects') ?? ''
  const { rate, problem } = readRate(typed)
  const adviceOn = async (one: typeof brief, mark: string) => {
    const at = atRate(one, rate)
    return { mark, brief: at, advice: await advisor.quick(at) }
  }
  const asked = {
    keys: c.req.queries('x') ?? [],
    given: c.req.query(),
    wordsOf: (piece: Comparison['wanted'][number]['piece']) => pieceShort(piece, materialNames),
    ofMaterial: (id: string) => materialNames.get(id) ?? id,
  }
  const comparison = other.brief
    ? compare([await adviceOn(brief, 'A'), await adviceOn(other.brief, 'B')], asked)
    : compare([await adviceOn(brief, '')], asked)
  if (comparison === null)
    throw new HTTPException(404, {
      message: 'The advice on this brief has no detector to compare: none of the list fits its points.',
    })
  const problems = problem === null ? comparison.problems : [problem, ...comparison.problems]
  const common = comparison.falseRejectsPerPack
  const page = (
    <ComparePage
      comparison={{ ...comparison, problems }}
      title={brief.title}
      pieces={comparison.wanted.map(({ piece }) => pieceWords(piece, materialNames))}
      piecesShort={comparison.wanted.map(({ piece }) => pieceShort(piece, materialNames))}
      rejectWords={comparison.sides.map(({ point }) =>
        falseRejectWords(point.falseRejectsPerPack, point.packsPerMin, point.hoursPerDay),
      )}
      rejectsTyped={typed === '' && common !== null ? oneIn(common) : typed}
      packed={packed}
      packedOther={other.packed}
      otherPack={{
        sheet: sheetOf(other.answers, other.checked, other.problems),
        pasted: c.req.query('with') ?? '',
        problems: other.problems,
      }}
      names={materialNames}
      query={queryOf(c, packed, other.packed)}
      printedOn={c.req.query('print') === '1' ? today() : null}
    />
  )
  return showPage(c, page, problems.length + other.problems.length > 0 ? 422 : 200)
}

/** "1 in 1000": read back as the same share where it is one of a whole number. */
const oneIn = (rate: number) => {
  const per = Math.round(1 / rate)
  return Math.abs(per * rate - 1) < 1e-9 ? `1 in ${per}` : String(rate)
}

/** The page's address without its print sign; what was typed of a second pack stands in its brief. */
function queryOf(c: Context, packed: string, packedOther: string | null): string {
  const rest = new URLSearchParams(new URL(c.req.url).search)
  for (const name of [...rest.keys()])
    if (['b', 'print', 'with'].includes(name) || /^(points|product)\./.test(name)) rest.delete(name)
  return [
    `b=${packed}`,
    ...(packedOther ? [`with=${packedOther}`] : []),
    ...(rest.size > 0 ? [rest] : []),
  ].join('&')
}
