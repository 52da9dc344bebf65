import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { ConflictPage, type ConflictPageProps } from '../../../../views/kept/conflict-page.tsx'
import { KeepRunsPage } from '../../../../views/kept/keep-runs-page.tsx'
import { difference } from '../../../store/difference.ts'
import type { Saved } from '../../../store/kept.ts'
import { packBrief } from '../../asked/packed-brief.ts'
import { refuse } from '../../asked/refusal.ts'
import { named } from '../../kept-store/bodies.ts'
import type { Visitor } from '../../people/visitor.ts'
import type { Handler } from '../../people/within.ts'
import type { Answers } from '../../serving/door.ts'
import { showPage } from '../../show-page.ts'
import { type InHand, inHand, sent } from './in-hand.ts'

/** Keeps what was sent: as something new, or as the next revision of what is kept. */
export const keep =
  (pages: Answers): Handler =>
  async (c, store, visitor) => {
    const { name, workspace } = visitor
    const said = await sent(c)
    const given = await inHand(c, pages)
    const { kind, title, body, versions } = given
    const [chosen, ofRevision] = said('onto').split(':')
    const onto = c.req.param('id') ?? (chosen || null)
    if (onto === null) {
      const { id } = await store.add(workspace, { kind, title, body, versions, by: name })
      return c.redirect(`/kept/${id}`, 303)
    }
    const thing = await store.get(workspace, onto)
    if (!thing) return notThere()
    if (thing.kind !== kind)
      return refuse([{ path: 'what', message: `what is kept here is ${thing.kind}; ${kind} was sent` }])
    const revision = revisionIn(ofRevision ?? said('revision'))
    const saved = await store.save(workspace, onto, revision, { title, body, versions, by: name })
    return settled(c, visitor, saved, onto, given, {
      action: `/kept/${onto}`,
      fields: given.fields,
      words: 'Keep yours as the next revision',
    })
  }

/** Test runs on their way to be kept: as new ones, or as the next revision of others. */
export const keepRunsPage =
  (pages: Answers): Handler =>
  async (c, store, { workspace, token }) => {
    const { title, fields, kind } = await inHand(c, pages)
    if (kind !== 'runs') return refuse([{ path: 'what', message: 'only test runs are kept from here' }])
    const others = await store.list(workspace, { kind, most: 50 })
    return showPage(c, <KeepRunsPage title={title} token={token} fields={fields} others={others} />)
  }

export const restoreRevision: Handler = async (c, store, visitor) => {
  const { name, workspace } = visitor
  const said = await sent(c)
  const id = c.req.param('id') ?? ''
  const thing = await store.get(workspace, id)
  const old = thing && (await store.revision(workspace, id, revisionIn(said('restore'))))
  if (!old || old.unreadable) return notThere()
  const saved = await store.restore(workspace, id, old.revision, revisionIn(said('revision')), name)
  return settled(
    c,
    visitor,
    saved,
    id,
    { ...old, kind: thing.kind },
    {
      action: `/kept/${id}/restore`,
      fields: { restore: String(old.revision) },
      words: 'Restore it all the same',
    },
  )
}

export const takeAway: Handler = async (c, store, visitor) => {
  const { name, workspace } = visitor
  const said = await sent(c)
  const id = c.req.param('id') ?? ''
  const thing = await store.get(workspace, id)
  const saved = thing && (await store.takeAway(workspace, id, revisionIn(said('revision')), name))
  if (saved?.ok) return c.redirect('/kept', 303)
  if (!saved) return notThere()
  const again = { action: `/kept/${id}/away`, fields: {}, words: 'Take it away all the same' }
  return settled(c, visitor, saved, id, { ...saved.theirs, kind: thing!.kind }, again)
}

/** Where a save leads; where another was first, to both versions side by side. */
async function settled(
  c: Context,
  { token }: Visitor,
  saved: Saved | null,
  id: string,
  mine: Pick<InHand, 'kind' | 'title' | 'body' | 'versions'>,
  again: ConflictPageProps['again'],
) {
  if (!saved) return notThere()
  if (saved.ok) return c.redirect(`/kept/${id}`, 303)
  const { theirs } = saved
  const isBrief = mine.kind === 'brief'
  return showPage(
    c,
    <ConflictPage
      id={id}
      token={token}
      again={again}
      mine={isBrief ? packBrief(mine.body) : null}
      theirs={{ ...theirs, packed: isBrief && !theirs.unreadable ? packBrief(theirs.body) : null }}
      changed={difference(named(mine.kind, theirs), named(mine.kind, mine))}
    />,
    409,
  )
}

const revisionIn = (text: string): number => (/^\d{1,9}$/.test(text) ? Number(text) : 0)

export function notThere(): never {
  throw new HTTPException(404, { message: 'Nothing of that name is kept here.' })
}
