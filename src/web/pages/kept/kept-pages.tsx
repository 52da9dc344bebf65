import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { ConflictPage } from '../../../../views/kept/conflict-page.tsx'
import { HistoryPage } from '../../../../views/kept/history-page.tsx'
import { KeptPage } from '../../../../views/kept/kept-page.tsx'
import { parseBrief, problemsOf } from '../../../brief/index.ts'
import { MOST_BYTES_OF_RUNS } from '../../../intake/bounds.ts'
import { readJsonText } from '../../../intake/json-text.ts'
import { difference } from '../../../store/difference.ts'
import { exportSchema, type Revision, type Saved } from '../../../store/kept.ts'
import { briefOfTrial } from '../../asked/asked-runs.ts'
import { postedForm } from '../../asked/form-answers.ts'
import { packBrief } from '../../asked/packed-brief.ts'
import { refuse } from '../../asked/refusal.ts'
import { may, type Visitor } from '../../people/visitor.ts'
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
  const things = await store.list(workspace, { most: A_PAGE + 1, behind })
  return showPage(
    c,
    <KeptPage
      who={signedInAs(visitor)}
      mayKeep={may(visitor.role, 'author')}
      packed={packed}
      title={brief?.title ?? null}
      things={things.slice(0, A_PAGE)}
      next={things.length > A_PAGE ? things[A_PAGE - 1]!.id : null}
      imported={c.req.query('imported') ?? null}
    />,
  )
}

async function posted(c: Context) {
  const form = await postedForm(c)
  const said = (name: string) => (typeof form[name] === 'string' ? form[name] : '')
  return { said, file: form.file instanceof File && form.file.size > 0 ? form.file : null }
}

function briefIn(packed: string) {
  const { brief } = briefOfTrial(packed)
  if (!brief) throw new HTTPException(400, { message: 'No brief was sent to be kept.' })
  return brief
}

/** Keeps a brief: as a new one, or as the next revision of one that is kept. */
export const keepBrief: Handler = async (c, store, visitor) => {
  const { name, workspace } = visitor
  const { said } = await posted(c)
  const brief = briefIn(said('b'))
  const keep = { title: brief.title, body: brief.given, by: name }
  const onto = c.req.param('id')
  if (onto === undefined) {
    const { id } = await store.add(workspace, { kind: 'brief', ...keep })
    return c.redirect(`/kept/${id}`, 303)
  }
  const saved = await store.save(workspace, onto, revisionIn(said('revision')), keep)
  return settled(c, visitor, saved, onto, packBrief(brief.given), brief.given)
}

/** Where a save leads; where another was first, to both versions side by side. */
async function settled(
  c: Context,
  { token }: Visitor,
  saved: Saved | null,
  id: string,
  packed: string,
  mine: unknown,
) {
  if (!saved) return notThere()
  if (saved.ok) return c.redirect(`/kept/${id}`, 303)
  const { theirs } = saved
  return showPage(
    c,
    <ConflictPage
      id={id}
      token={token}
      mine={packed}
      theirs={{ ...theirs, packed: theirs.unreadable ? null : packBrief(theirs.body) }}
      changed={difference(theirs.body, mine)}
    />,
    409,
  )
}

const revisionIn = (text: string): number => (/^\d{1,9}$/.test(text) ? Number(text) : 0)

function notThere(): never {
  throw new HTTPException(404, { message: 'Nothing of that name is kept here.' })
}

/** A thing with its revisions, each with what it changed. */
export const historyPage: Handler = async (c, store, { workspace, token, role }) => {
  const thing = await store.get(workspace, c.req.param('id') ?? '')
  if (!thing) return notThere()
  const revisions = await store.revisions(workspace, thing.id)
  const { packed, brief } = briefOfTrial(c.req.query('b') ?? '')
  return showPage(
    c,
    <HistoryPage
      token={token}
      mayKeep={may(role, 'author')}
      thing={thing}
      inHand={
        brief
          ? {
              packed: packed!,
              title: brief.title,
              changed: difference(revisions[0]?.body, brief.given),
            }
          : null
      }
      revisions={revisions.map((one, at) => shown(one, revisions[at + 1]))}
    />,
  )
}

const shown = (one: Revision, before: Revision | undefined) => ({
  ...one,
  packed: one.unreadable || !parseBrief(one.body).ok ? null : packBrief(one.body),
  changed: before && !one.unreadable && !before.unreadable ? difference(before.body, one.body) : null,
})

export const restoreRevision: Handler = async (c, store, visitor) => {
  const { name, workspace } = visitor
  const { said } = await posted(c)
  const id = c.req.param('id') ?? ''
  const old = await store.revision(workspace, id, revisionIn(said('restore')))
  if (!old || old.unreadable) return notThere()
  const saved = await store.restore(workspace, id, old.revision, revisionIn(said('revision')), name)
  return settled(c, visitor, saved, id, packBrief(old.body), old.body)
}

export const takeAway: Handler = async (c, store, visitor) => {
  const { name, workspace } = visitor
  const { said } = await posted(c)
  const id = c.req.param('id') ?? ''
  const saved = await store.takeAway(workspace, id, revisionIn(said('revision')), name)
  if (saved?.ok) return c.redirect('/kept', 303)
  return saved ? settled(c, visitor, saved, id, packBrief(saved.theirs.body), saved.theirs.body) : notThere()
}

/** Everything that is kept, with all revisions, as one file. */
export const exportKept: Handler = async (c, store, { workspace }) => {
  c.header('content-disposition', 'attachment; filename="gritwise-kept.json"')
  return c.json(await store.exportAll(workspace))
}

export const importKept: Handler = async (c, store, { name, workspace }) => {
  const { file } = await posted(c)
  if (!file) return refuse([{ path: 'file', message: 'choose a file that was taken out here before' }])
  // Every revision of everything has no bound of its own but its bytes, which the door counts.
  const json = readJsonText(await file.text(), MOST_BYTES_OF_RUNS, Number.POSITIVE_INFINITY)
  if (!json.ok) return refuse([{ path: 'file', message: `the file: ${json.because}` }])
  const read = exportSchema.safeParse(json.value)
  if (!read.success)
    return refuse(
      problemsOf(read.error.issues, json.value, exportSchema).map((one) => ({
        ...one,
        path: ['file', one.path].filter(Boolean).join('.'),
      })),
    )
  const { added, changed, same } = await store.importAll(workspace, read.data, name)
  return c.redirect(`/kept?imported=${added}-${changed}-${same}`, 303)
}
