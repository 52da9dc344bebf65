import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { wantedOf } from '../../../../views/advice/sizes/findings.ts'
import { RuleBookPage } from '../../../../views/rules/rule-book-page.tsx'
import { RulePage } from '../../../../views/rules/rule-page.tsx'
import { pieceWords } from '../../../../views/words/contaminant.ts'
import type { Advisor } from '../../advisor.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { sameAgain } from '../../same-again.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'
import { ruleCard, ruleLine } from '../../shown/rule-cards.ts'

/** The brief in the address with its advice, where there is one; the book is also read without. */
async function inHand(c: Context, advisor: Advisor) {
  if (c.req.query('b') === undefined) return { packed: null, title: '', advice: null, pieces: [] }
  const { packed, brief } = goodBrief(c)
  const advice = await advisor.quick(brief)
  const pieces = wantedOf(advice).map((piece) => pieceWords(piece, materialNames))
  return { packed, title: brief.title, advice, pieces }
}

/** Every rule, narrowed down by subject, family, evidence and what it did for the brief in hand. */
export const ruleBookPage = (advisor: Advisor) => async (c: Context) => {
  const book = advisor.house.book()
  const { packed, title, advice, pieces } = await inHand(c, advisor)
  const asked = (name: string) => c.req.query(name) ?? ''
  sameAgain(c)
  return showPage(
    c,
    <RuleBookPage
      cards={book.rules.map((rule) => ruleLine(book, rule, advice, pieces))}
      filter={{
        subject: asked('subject'),
        family: asked('family'),
        evidence: asked('evidence'),
        outcome: packed ? asked('outcome') : '',
      }}
      version={book.version}
      changelog={book.changelog}
      packed={packed}
      title={title}
    />,
  )
}

/** One rule at its permanent address. */
export const rulePage = (advisor: Advisor) => async (c: Context) => {
  const book = advisor.house.book()
  const asked = c.req.param('id') ?? ''
  const now = book.renamed.get(asked)
  if (now) return c.redirect(`/rules/${now}${new URL(c.req.url).search}`, 301)
  const rule = book.rules.find(({ id }) => id === asked)
  if (!rule) throw new HTTPException(404, { message: 'The rule book has no rule of that name.' })
  const { packed, advice, pieces } = await inHand(c, advisor)
  return showPage(
    c,
    <RulePage card={ruleCard(book, rule, advice, pieces)} version={book.version} packed={packed} />,
  )
}
