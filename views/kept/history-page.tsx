import type { Changed } from '../../src/store/difference.ts'
import type { KeptThing, Revision } from '../../src/store/kept.ts'
import { Page } from '../page.tsx'
import { ChangedList } from './changed-list.tsx'
import { moment } from './kept-page.tsx'

export interface ShownRevision extends Omit<Revision, 'body'> {
  /** The brief for a link; null where it can no longer be read. */
  readonly packed: string | null
  /** Against the revision before; null for the first. */
  readonly changed: readonly Changed[] | null
}

export interface HistoryPageProps {
  readonly token: string
  readonly mayKeep: boolean
  readonly thing: KeptThing
  readonly inHand: {
    readonly packed: string
    readonly title: string
    readonly changed: readonly Changed[]
  } | null
  readonly revisions: readonly ShownRevision[]
}

/** A brief that is kept: its revisions, what each changed, and the way back to any. */
export function HistoryPage({ token, mayKeep, thing, inHand, revisions }: HistoryPageProps) {
  const latest = revisions[0]
  return (
    <Page title={thing.title} packed={inHand?.packed ?? latest?.packed ?? null} here="kept">
      <h1>{thing.title}</h1>
      {latest?.packed ? (
        <p>
          <a href={`/advice?b=${latest.packed}`}>Advice</a> ·{' '}
          <a href={`/brief?b=${latest.packed}`}>Change the brief</a> · <a href="/kept">All kept briefs</a>
        </p>
      ) : null}
      {inHand ? (
        <>
          <h2>From revision {thing.revision} to the brief in hand</h2>
          <ChangedList changed={inHand.changed} />
        </>
      ) : null}
      {mayKeep && inHand && inHand.changed.length > 0 ? (
        <form method="post" action={`/kept/${thing.id}`}>
          <input type="hidden" name="b" value={inHand.packed} />
          <input type="hidden" name="token" value={token} />
          <input type="hidden" name="revision" value={String(thing.revision)} />
          <button type="submit">Keep “{inHand.title}” as the next revision</button>
        </form>
      ) : null}
      <h2>Revisions</h2>
      <ol class="revisions" reversed>
        {revisions.map((one) => (
          <li value={one.revision}>
            <p>
              {moment(one.at)} UTC, {one.done}
              {one.by ? ` by ${one.by}` : ''}
              {one.packed ? (
                <>
                  {' · '}
                  <a href={`/advice?b=${one.packed}`}>open revision {one.revision}</a>
                </>
              ) : (
                ' · can no longer be read'
              )}
            </p>
            {one.changed ? <ChangedList changed={one.changed} /> : null}
            {mayKeep && one.packed && one.revision !== thing.revision ? (
              <form method="post" action={`/kept/${thing.id}/restore`}>
                <input type="hidden" name="token" value={token} />
                <input type="hidden" name="revision" value={String(thing.revision)} />
                <input type="hidden" name="restore" value={String(one.revision)} />
                <button type="submit" class="quiet">
                  Restore revision {one.revision}
                </button>
              </form>
            ) : null}
          </li>
        ))}
      </ol>
      {mayKeep ? (
        <form method="post" action={`/kept/${thing.id}/away`}>
          <input type="hidden" name="token" value={token} />
          <input type="hidden" name="revision" value={String(thing.revision)} />
          <button type="submit" class="quiet">
            Take it out of the list
          </button>
        </form>
      ) : null}
    </Page>
  )
}
