import type { Child } from 'hono/jsx'
import { PackPlaces } from '../../src/charts/pack-places.tsx'
import { StreamPlace } from '../../src/charts/stream-place.tsx'
import type { CheckPoint } from '../../src/contract/checks.ts'
import { type Ink, Sentences } from '../register/ink.tsx'
import { answerLink } from '../register/questions.tsx'
import { HoldTable, RejectPlan, Workload } from './hold-table.tsx'
import { Items } from './items.tsx'
import { Notices, PiecesTable, pieceWords } from './pieces-table.tsx'

/** Length, width and height of what passes at each inspection point, mm. */
export interface PackSize {
  readonly lengthMm: number
  readonly widthMm: number
  readonly heightMm: number
  readonly outline: string
}

const nameOf = ({ label, point, line }: CheckPoint) => `${label}, ${point}${line === '' ? '' : `, ${line}`}`

export const checkAnchor = ({ pointIndex }: CheckPoint) => `check-${pointIndex}`

/** Places of the pieces drawn on the pack; pieces that share places share a picture. */
export function Places({ check, pack, bare = false }: { check: CheckPoint; pack: PackSize; bare?: boolean }) {
  if (check.stage !== 'packed') return <Stream check={check} bare={bare} />
  const drawn = new Map(check.pieces.map((piece) => [JSON.stringify(piece.positions), piece]))
  return (
    <div class="place-pictures">
      {[...drawn.values()].map((piece, at) => {
        const alike = check.pieces.filter(
          (other) => JSON.stringify(other.positions) === JSON.stringify(piece.positions),
        )
        return (
          <figure>
            <PackPlaces
              id={`places-${check.pointIndex}-${at}`}
              title={`Where the piece lies in the pack: ${alike.map(pieceWords).join('; ')}`}
              {...pack}
              places={piece.positions}
            />
            {bare ? null : (
              <figcaption>
                {alike.length === check.pieces.length ? 'Every piece' : alike.map(pieceWords).join('; ')}:{' '}
                {piece.positions.map(({ name }, n) => `${n + 1} ${name}`).join(', ')}
              </figcaption>
            )}
          </figure>
        )
      })}
    </div>
  )
}

const RUNS: Readonly<Record<string, 'belt' | 'pipe' | 'fall'>> = {
  loose: 'belt',
  pumped: 'pipe',
  'free-fall': 'fall',
}

/** Where the pieces go into a stream of food, and where they are caught. */
function Stream({ check, bare }: { check: CheckPoint; bare: boolean }) {
  const runs = RUNS[check.stage]
  if (runs === undefined || check.pieces.length === 0) return null
  const [place] = check.pieces[0]!.positions
  return (
    <div class="place-pictures">
      <figure>
        <StreamPlace id={`places-${check.pointIndex}`} title={`Every piece: ${place?.name}`} runs={runs} />
        {bare ? null : <figcaption>Every piece: 1 {place?.name}</figcaption>}
      </figure>
    </div>
  )
}

/** The check plan of one machine. */
export function CheckSection({
  check,
  earlier,
  pack,
  ink,
}: {
  check: CheckPoint
  /** Machines whose plan stands before this one: what is word for word the same points there. */
  earlier: readonly CheckPoint[]
  pack: PackSize
  ink: Ink
}) {
  const id = checkAnchor(check)
  const heading = (words: string) => (ink.paper ? <h4>{words}</h4> : <h3>{words}</h3>)
  const sameAt = (part: keyof CheckPoint) => earlierAlike(part, check, earlier)
  const once = (part: keyof CheckPoint, words: string, shown: Child) =>
    sameAt(part) ? null : (
      <>
        {heading(words)}
        {shown}
      </>
    )
  return (
    <section class="check" aria-labelledby={id}>
      {ink.paper ? <h3 id={id}>{nameOf(check)}</h3> : <h2 id={id}>{nameOf(check)}</h2>}
      {ink.paper ? null : (
        <ul class="acts">
          <li>
            <a href={`/checks/drill?b=${ink.packed}&point=${check.pointIndex}`}>Drill sheet for the line</a>
          </li>
          <li>
            <a href={`/checks/record?b=${ink.packed}&point=${check.pointIndex}`}>Record sheet</a>
          </li>
          <li>
            <a href={answerLink(ink, `p${check.pointIndex}.machine`, '/checks')}>
              Another machine stands at {check.point}
            </a>
          </li>
        </ul>
      )}
      {heading('Test pieces')}
      {check.pieces.length === 0 ? (
        <p>No contaminant has a size to find that this machine finds, so there is no piece to check with.</p>
      ) : (
        <>
          <PiecesTable check={check} ink={ink} />
          <Notices check={check} ink={ink} />
        </>
      )}
      <Sentences ink={ink} sentences={check.carrier} />
      <Sentences ink={ink} sentences={newSentences(check, earlier)} />
      <Places check={check} pack={pack} />
      {heading('How often, and what is held')}
      {sameAt('when') ? null : <Items items={check.when} ink={ink} />}
      <HoldTable check={check} ink={ink} />
      {heading(check.stage === 'packed' ? 'Taking the bad pack out' : 'Taking the bad food out')}
      <RejectPlan check={check} ink={ink} />
      {once('proofs', 'One failure and one proof for each link', <Proofs check={check} />)}
      {once('ifFails', 'When a check fails', <Items items={check.ifFails} ink={ink} ordered />)}
      {heading('What becomes of rejects')}
      <Workload check={check} ink={ink} />
      {sameAt('rejects') ? null : <Items items={check.rejects} ink={ink} />}
      {once('keeping', 'Settings, changes, papers', <Items items={check.keeping} ink={ink} />)}
      {[...sharedWith(check, earlier)].map(([point, words]) => (
        <p>{`As at “${point}”: ${words.join(', ')}.`}</p>
      ))}
    </section>
  )
}

/** What a plan may share word for word with an earlier machine's, as a sentence names it. */
const PARTS = [
  ['when', 'when checks are due'],
  ['proofs', 'the proof of each link'],
  ['ifFails', 'what is done when a check fails'],
  ['rejects', 'what becomes of rejects'],
  ['keeping', 'settings, changes and papers'],
] as const

const earlierAlike = (part: keyof CheckPoint, check: CheckPoint, earlier: readonly CheckPoint[]) =>
  earlier.find((other) => JSON.stringify(other[part]) === JSON.stringify(check[part]))

/** By the name of the earlier point, the parts that are the same there. */
function sharedWith(check: CheckPoint, earlier: readonly CheckPoint[]): Map<string, string[]> {
  const shared = new Map<string, string[]>()
  for (const [part, words] of PARTS) {
    const point = earlierAlike(part, check, earlier)?.point
    if (point !== undefined) shared.set(point, [...(shared.get(point) ?? []), words])
  }
  return shared
}

/** Sentences on pieces and places that no earlier machine's plan says. */
function newSentences(check: CheckPoint, earlier: readonly CheckPoint[]) {
  const said = new Set(earlier.flatMap(({ notes }) => notes.map(({ text }) => text)))
  return check.notes.filter(({ text }) => !said.has(text))
}

function Proofs({ check }: { check: CheckPoint }) {
  return (
    <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
      <table class="stacks">
        <thead>
          <tr>
            <th scope="col">Link</th>
            <th scope="col">What can fail</th>
            <th scope="col">How it is proven</th>
          </tr>
        </thead>
        <tbody>
          {check.proofs.map(({ link, failure, proof }) => (
            <tr>
              <th scope="row">{link}</th>
              <td class="prose">{failure}</td>
              <td class="prose">{proof}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
