import { KeptPage } from '../../../../views/kept/kept-page.tsx'
import { KINDS } from '../../../store/kept.ts'
import { briefOfTrial } from '../../asked/asked-runs.ts'
import { ownOf } from '../../kept-store/own-things.ts'
import { may } from '../../people/visitor.ts'
import type { Handler } from '../../people/within.ts'
import { showPage } from '../../show-page.ts'
import { signedInAs } from '../people/signed-in-as.ts'

const A_PAGE = 50

/** What is kept, and the brief in hand to be kept. */
export const keptPage: Handler = async (c, store, visitor) => {
  const { packed, brief } = briefOfTrial(c.req.query('b') ?? '')
  const { workspace } = visitor
  const after = c.req.query('after')
  const behind = after ? await store.get(workspace, after) : null
  const kind = KINDS.find((one) => one === c.req.query('kind')) ?? null
  const things = await store.list(workspace, { kind, most: A_PAGE + 1, behind })
  const own = brief && ownOf(brief.given)
  return showPage(
    c,
    <KeptPage
      who={signedInAs(visitor)}
      mayKeep={may(visitor.role, 'author')}
      packed={packed}
      title={brief?.title ?? null}
      own={own ? own.equipment.length + own.contaminants.length : 0}
      kind={kind}
      things={things.slice(0, A_PAGE)}
      next={things.length > A_PAGE ? things[A_PAGE - 1]!.id : null}
      imported={c.req.query('imported') ?? null}
    />,
  )
}
