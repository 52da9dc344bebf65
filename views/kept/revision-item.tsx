import type { Changed } from '../../src/store/difference.ts'
import type { KeptThing, Revision } from '../../src/store/kept.ts'
import type { Names } from '../words/contaminant.ts'
import { ChangedList } from './changed-list.tsx'
import { HiddenFields } from './hidden-fields.tsx'
import { moment } from './kept-page.tsx'
import { Said, type SaidAdvice } from './said.tsx'

export interface ShownRevision extends Omit<Revision, 'body'> {
  readonly readable: boolean
  /** Its brief for a link; null where it has none that can be read. */
  readonly packed: string | null
  readonly advice: SaidAdvice | null
  /** What sends its test runs to be read. */
  readonly runs: Readonly<Record<string, string>> | null
  readonly own: {
    readonly equipment: readonly { readonly id: string; readonly label?: string | undefined }[]
    readonly contaminants: readonly { readonly ownName?: string | undefined }[]
  } | null
  /** Against the revision before; null for the first. */
  readonly changed: readonly Changed[] | null
}

interface RevisionItemProps {
  readonly one: ShownRevision
  readonly thing: KeptThing
  readonly token: string
  readonly mayKeep: boolean
  readonly names: Names
}

/** One revision: when, by whom, what it holds and what it changed. */
export function RevisionItem({ one, thing, token, mayKeep, names }: RevisionItemProps) {
  const isLatest = one.revision === thing.revision
  return (
    <li value={one.revision}>
      <p>
        {moment(one.at)} UTC, {one.done}
        {one.by ? ` by ${one.by}` : ''}
        {one.readable ? null : ' · can no longer be read'}
        {one.packed ? (
          <>
            {' · '}
            <a href={`/advice?b=${one.packed}`}>{openWords(thing, one.revision)}</a>
          </>
        ) : null}
      </p>
      {one.versions ? (
        <p class="small">
          gritwise {one.versions.gritwise}, rule book {one.versions.rules}, reference data{' '}
          {one.versions.reference}
        </p>
      ) : null}
      {one.advice && isLatest ? <Said said={one.advice} names={names} /> : null}
      {one.advice && !isLatest ? (
        <details>
          <summary>What revision {one.revision} said</summary>
          <Said said={one.advice} names={names} />
        </details>
      ) : null}
      {one.own ? (
        <ul>
          {one.own.equipment.map(({ id, label }) => (
            <li>{label ?? id}</li>
          ))}
          {one.own.contaminants.map(({ ownName }) => (
            <li>{ownName ?? 'material without a name'}</li>
          ))}
        </ul>
      ) : null}
      {one.runs ? (
        <form method="post" action="/runs">
          <HiddenFields fields={one.runs} />
          <button type="submit" class="quiet">
            Read the runs of revision {one.revision}
          </button>
        </form>
      ) : null}
      {one.changed ? <ChangedList changed={one.changed} /> : null}
      {mayKeep && one.readable && !isLatest ? (
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
  )
}

const openWords = ({ kind }: KeptThing, revision: number) =>
  kind === 'brief'
    ? `open revision ${revision}`
    : kind === 'advice'
      ? 'the advice on this brief as of today'
      : 'the brief it was run for'
