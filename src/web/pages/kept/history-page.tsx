import { HistoryPage, type ShownRevision } from '../../../../views/kept/history-page.tsx'
import { parseBrief } from '../../../brief/index.ts'
import { difference } from '../../../store/difference.ts'
import type { Kind, Revision } from '../../../store/kept.ts'
import { briefOfTrial } from '../../asked/asked-runs.ts'
import { packBrief } from '../../asked/packed-brief.ts'
import { bodyOf, named } from '../../kept-store/bodies.ts'
import { withOwn } from '../../kept-store/own-things.ts'
import { may } from '../../people/visitor.ts'
import type { Handler } from '../../people/within.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'
import { runsFields } from './in-hand.ts'
import { notThere } from './keep.tsx'

/** A thing with its revisions, each with what it changed. */
export const historyPage: Handler = async (c, store, { workspace, token, role }) => {
  const thing = await store.get(workspace, c.req.param('id') ?? '')
  if (!thing) return notThere()
  const revisions = await store.revisions(workspace, thing.id)
  const { packed, brief } = briefOfTrial(c.req.query('b') ?? '')
  const latest = revisions[0]
  return showPage(
    c,
    <HistoryPage
      token={token}
      mayKeep={may(role, 'author')}
      thing={thing}
      names={materialNames}
      packed={packed}
      inHand={
        brief && thing.kind === 'brief'
          ? {
              packed: packed!,
              title: brief.title,
              changed: difference(
                latest && named('brief', latest),
                named('brief', { body: brief.given, versions: null }),
              ),
            }
          : null
      }
      revisions={revisions.map((one, at) => shown(thing.kind, one, revisions[at + 1]))}
    />,
  )
}

function shown(kind: Kind, one: Revision, before: Revision | undefined): ShownRevision {
  const { body, ...rest } = one
  const advice = kind === 'advice' ? bodyOf('advice', body) : null
  const runs = kind === 'runs' ? bodyOf('runs', body) : null
  const own = kind === 'own' ? bodyOf('own', body) : null
  const brief = kind === 'brief' ? body : (advice ?? runs)?.brief
  const packed = !one.unreadable && brief && parseBrief(brief).ok ? packBrief(brief) : null
  const isChanged = before && !one.unreadable && !before.unreadable
  return {
    ...rest,
    readable: kind === 'brief' ? packed !== null : (advice ?? runs ?? own) !== null,
    packed,
    advice,
    runs: runs && runsFields(packed, runs.typed),
    own,
    changed: isChanged ? difference(named(kind, before), named(kind, one)) : null,
  }
}

/** The brief in hand with machines and materials that are kept; on to its form. */
export const takeIn: Handler = async (c, store, { workspace }) => {
  const id = c.req.param('id') ?? ''
  const { brief } = briefOfTrial(c.req.query('b') ?? '')
  const [latest] = await store.revisions(workspace, id)
  const own = latest && bodyOf('own', latest.body)
  if (!own || !brief) return notThere()
  return c.redirect(`/brief?b=${packBrief(withOwn(brief.given, own))}`, 303)
}
