import type { Entry, EntryHead, EntryPiece } from '../../src/runs/read/entry.ts'
import { Page } from '../page.tsx'

export interface EntryPageProps {
  readonly title: string
  readonly packed: string
  /** Key under which a browser keeps what is typed. */
  readonly kept: string
  readonly pieceWords: string
  readonly entry: Entry
  readonly problems: ReadonlyMap<string, string>
  /** Fields of the clause and the fixed values, carried along. */
  readonly carried: readonly (readonly [name: string, value: string])[]
}

const HEAD: readonly (readonly [
  name: keyof EntryHead,
  label: string,
  hint: string,
  mode: 'text' | 'numeric',
])[] = [
  ['equipment', 'Machine', 'Its number, as on the plate.', 'text'],
  ['setting', 'Setting', 'Recipe number that was locked.', 'text'],
  ['date', 'Day', 'Year-month-day.', 'text'],
  ['shift', 'Shift', '', 'text'],
  ['operator', 'Who runs the pieces', '', 'text'],
  ['cleanPacks', 'Clean packs run', 'Before any piece.', 'numeric'],
  ['cleanRejects', 'Of these rejected', '', 'numeric'],
]

/** A trial entered at the line, one hand: a long form without script, one piece at a time with it. */
export function EntryPage(props: EntryPageProps) {
  const { title, packed, kept, pieceWords, entry, problems, carried } = props
  return (
    <Page title={`${problems.size > 0 ? 'Error: ' : ''}Enter a trial: ${title}`} packed={packed} here="runs">
      {problems.size > 0 ? (
        <div class="summary-of-errors" role="alert" tabindex={-1}>
          <h2>Not sent yet</h2>
          <ul>
            {[...problems].map(([name, message]) => (
              <li>
                <a href={`#${name}`}>{message}</a>
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      <h1>Enter a trial</h1>
      <p class="standfirst">{`${pieceWords}, ${entry.pieces.length} pieces. Found means: its pack lies in the bin.`}</p>
      <form method="post" action="/runs/enter" class="entry" id="entry" data-kept={kept} autocomplete="off">
        <input type="hidden" name="b" value={packed} />
        <input type="hidden" name="kept" value={kept} />
        {carried.map(([name, value]) => (
          <input type="hidden" name={name} value={value} />
        ))}
        <fieldset class="entry-head">
          <legend>
            <h2>The trial</h2>
          </legend>
          {HEAD.map((field) => (
            <HeadField field={field} entry={entry} problems={problems} />
          ))}
        </fieldset>
        {entry.pieces.map((piece) => (
          <PieceField piece={piece} of={entry.pieces.length} wrong={problems.get(`seen-${piece.order}`)} />
        ))}
        <div class="entry-send">
          <p class="entry-state" role="status" />
          <button type="submit">Send all entries</button>
        </div>
      </form>
      <script src="/assets/enter-runs.js" defer></script>
    </Page>
  )
}

function HeadField({
  field: [name, label, hint, mode],
  entry,
  problems,
}: {
  field: (typeof HEAD)[number]
  entry: Entry
  problems: ReadonlyMap<string, string>
}) {
  const wrong = problems.get(name)
  return (
    <div class={`field${wrong ? ' wrong' : ''}`}>
      <label for={name}>{label}</label>
      {hint ? (
        <p class="hint" id={`hint-${name}`}>
          {hint}
        </p>
      ) : null}
      {wrong ? (
        <p class="error" id={`error-${name}`}>
          <span class="unseen">Error: </span>
          {wrong}
        </p>
      ) : null}
      <input
        type="text"
        inputmode={mode}
        id={name}
        name={name}
        value={entry.head[name]}
        {...(wrong ? { 'aria-invalid': 'true' as const, 'aria-describedby': `error-${name}` } : {})}
      />
    </div>
  )
}

const CHOICES = [
  ['found', 'Found: in the bin'],
  ['missed', 'Missed: not in the bin'],
  ['left', 'Not run'],
] as const

function PieceField({ piece, of, wrong }: { piece: EntryPiece; of: number; wrong: string | undefined }) {
  const { order, sizeMm, pack, position, lie, seen } = piece
  return (
    <fieldset class={`entry-piece${wrong ? ' wrong' : ''}`} id={`seen-${order}`} tabindex={-1}>
      <legend>
        <span class="entry-count">{`Piece ${order} of ${of}`}</span>{' '}
        <strong>{`${sizeMm} mm in pack ${pack}`}</strong>
        <span class="entry-place">{` ${lie ? `${position}, ${lie}` : position}`}</span>
      </legend>
      {wrong ? (
        <p class="error">
          <span class="unseen">Error: </span>
          {wrong}
        </p>
      ) : null}
      <input type="hidden" name={`piece-${order}`} value={JSON.stringify([sizeMm, pack, position, lie])} />
      <div class="tiles">
        {CHOICES.map(([value, words]) => (
          <label class={`tile ${value}`}>
            <input type="radio" name={`seen-${order}`} value={value} checked={seen === value} />
            <span>{words}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
