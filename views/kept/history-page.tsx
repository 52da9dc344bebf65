import type { Changed } from '../../src/store/difference.ts'
import type { KeptThing } from '../../src/store/kept.ts'
import { Page } from '../page.tsx'
import type { Names } from '../words/contaminant.ts'
import { ChangedList } from './changed-list.tsx'
import { KIND_WORDS } from './kind-words.ts'
import { RevisionItem, type ShownRevision } from './revision-item.tsx'

export type { ShownRevision }

export interface HistoryPageProps {
  readonly token: string
  readonly mayKeep: boolean
  readonly thing: KeptThing
  readonly names: Names
  /** The brief in hand, for links; null where there is none. */
  readonly packed: string | null
  /** The brief in hand against the latest revision of a kept one. */
  readonly inHand: {
    readonly packed: string
    readonly title: string
    readonly changed: readonly Changed[]
  } | null
  readonly revisions: readonly ShownRevision[]
}

/** A thing that is kept: its revisions, what each changed, and the way back to any. */
export function HistoryPage(props: HistoryPageProps) {
  const { token, mayKeep, thing, names, packed, inHand, revisions } = props
  const latest = revisions[0]
  const isBrief = thing.kind === 'brief'
  return (
    <Page title={thing.title} packed={packed ?? latest?.packed ?? null} here="kept">
      <h1>{thing.title}</h1>
      <p>
        {isBrief && latest?.packed ? (
          <>
            <a href={`/advice?b=${latest.packed}`}>Advice</a> ·{' '}
            <a href={`/brief?b=${latest.packed}`}>Change the brief</a> ·{' '}
          </>
        ) : null}
        {isBrief ? null : `${KIND_WORDS[thing.kind].many} · `}
        <a href="/kept">All that is kept</a>
      </p>
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
      {thing.kind === 'own' && packed ? (
        <p>
          <a href={`/kept/${thing.id}/into?b=${packed}`}>Add them to the brief in hand</a>, on its form.
        </p>
      ) : null}
      {thing.kind === 'own' && !packed ? (
        <p>Open this page from a brief (its link Kept) to add them to it.</p>
      ) : null}
      {mayKeep && thing.kind === 'advice' && latest?.packed ? (
        <form method="post" action={`/kept/${thing.id}`}>
          <input type="hidden" name="b" value={latest.packed} />
          <input type="hidden" name="what" value="advice" />
          <input type="hidden" name="token" value={token} />
          <input type="hidden" name="revision" value={String(thing.revision)} />
          <button type="submit">Advise again and keep what changed</button>
        </form>
      ) : null}
      <h2>Revisions</h2>
      <ol class="revisions" reversed>
        {revisions.map((one) => (
          <RevisionItem one={one} thing={thing} token={token} mayKeep={mayKeep} names={names} />
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
