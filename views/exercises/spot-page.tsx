import type { DrawnSheet } from '../../src/card/drawn-sheet.ts'
import type { Tally } from '../../src/exercises/spot/score.ts'
import { COSTS, EARNS } from '../../src/exercises/spot/score.ts'
import type { Level } from '../../src/exercises/spot/spot-round.ts'
import { type Grid, type Square, squareAt, squareName, squaresOf } from '../../src/exercises/spot/squares.ts'
import { SheetPicture } from '../card/sheet-picture.tsx'
import { Page } from '../page.tsx'
import { ChoiceField } from './choice-field.tsx'

export type SpotStep = 'look' | 'marks' | 'food-off'

/** A round and the score so far, as the address carries them. */
export interface SpotState {
  readonly packed: string
  readonly point: number
  readonly machine: string
  readonly level: string
  readonly seed: number
  readonly round: number
  readonly squares: string
  readonly step: SpotStep
  /** Points of the rounds before this one. */
  readonly people: number
  readonly machinePoints: number
  readonly present: boolean
}

interface Props {
  readonly state: SpotState
  readonly rounds: number
  readonly levels: readonly Level[]
  readonly points: readonly { readonly value: string; readonly words: string }[]
  readonly machines: readonly { readonly value: string; readonly words: string }[]
  readonly sheet: DrawnSheet
  readonly pictures: readonly { readonly name: string; readonly kind: string; readonly alt: string }[]
  readonly grid: Grid
  readonly marked: readonly Square[]
  readonly unknown: readonly string[]
  readonly people: Tally
  readonly machine: Tally
  readonly machineLabel: string
}

/** The address of a state, or of the picture of a round. */
export function spotAddress(state: SpotState, change: Partial<SpotState> = {}): string {
  return `/exercises/spot?${spotQuery({ ...state, ...change })}`
}

function spotQuery(s: SpotState): string {
  const parts = new URLSearchParams({
    b: s.packed,
    point: String(s.point),
    machine: s.machine,
    level: s.level,
    seed: String(s.seed),
    round: String(s.round),
  })
  if (s.squares) parts.set('squares', s.squares)
  if (s.step !== 'look') parts.set('step', s.step)
  if (s.people !== 0) parts.set('people', String(s.people))
  if (s.machinePoints !== 0) parts.set('machine-points', String(s.machinePoints))
  if (s.present) parts.set('present', '1')
  return parts.toString()
}

/** An unmarked pack, the class's marks, then the machine's, then the food taken off; both pay for false marks. */
export function SpotPage(props: Props) {
  const { state, rounds, sheet, pictures, machineLabel } = props
  const { step, round } = state
  const picture = pictures[step === 'food-off' ? 1 : 0]!
  return (
    <Page title="Spot the piece" packed={state.packed} here="exercises" present={state.present}>
      <p class="over-title">{`Spot the piece, round ${round} of ${rounds}`}</p>
      <h1>{step === 'look' ? 'Where would you look again?' : heading(sheet)}</h1>
      <div class="spot">
        <figure>
          <div class="spot-picture">
            <SheetPicture
              sheet={sheet}
              href={`/exercises/spot/picture.png?${spotQuery({ ...state, squares: '', step: 'look', people: 0, machinePoints: 0, present: false })}&picture=${encodeURIComponent(picture.name)}`}
              alt={step === 'look' ? 'Simulated radiograph of a pack, unmarked' : picture.alt}
              marks={step !== 'look'}
              over={<SquareGrid {...props} />}
            />
          </div>
          <figcaption>{`${machineLabel}${step === 'food-off' ? `, ${picture.kind}` : ''}. Simulated: nothing was x-rayed.`}</figcaption>
        </figure>
        <div class="spot-side">{step === 'look' ? <Asking {...props} /> : <Told {...props} />}</div>
      </div>
      {step === 'look' ? <Chooser {...props} /> : null}
    </Page>
  )
}

function heading({ pieces }: DrawnSheet): string {
  if (pieces.length === 0) return 'This pack was clean.'
  return pieces.length === 1 ? 'One piece lay in this pack.' : `${pieces.length} pieces lay in this pack.`
}

/** The grid over the picture: while looking every square is a link that marks it or takes its mark away. */
function SquareGrid({ state, grid, marked }: Props) {
  const { frame, sideMm } = grid
  const looking = state.step === 'look'
  const names = new Set(marked.map(({ name }) => name))
  return (
    <g class="squares" font-size={sideMm * 0.45}>
      {squaresOf(grid).map(({ name, column, row }) => {
        const [x, y] = [frame.leftMm + column * sideMm, frame.topMm + row * sideMm]
        const rect = (
          <rect x={x} y={y} width={sideMm} height={sideMm} class={names.has(name) ? 'marked' : 'free'} />
        )
        if (!looking) return names.has(name) ? rect : null
        const next = names.has(name) ? [...names].filter((one) => one !== name) : [...names, name]
        return (
          <a
            href={spotAddress(state, { squares: next.join('.') })}
            tabindex={-1}
            aria-label={`square ${name}`}
          >
            {rect}
          </a>
        )
      })}
      {Array.from({ length: grid.columns }, (_, column) => (
        <text x={frame.leftMm + (column + 0.5) * sideMm} y={frame.topMm + 0.4 * sideMm} text-anchor="middle">
          {squareName(column, 0).slice(0, 1)}
        </text>
      ))}
      {Array.from({ length: grid.rows }, (_, row) => (
        <text x={frame.leftMm + 0.06 * sideMm} y={frame.topMm + (row + 0.65) * sideMm}>
          {row + 1}
        </text>
      ))}
    </g>
  )
}

function Asking({ state, marked, unknown, levels }: Props) {
  const { squares, ...rest } = state
  return (
    <>
      <p>
        {`Click the squares that hold something foreign: none to three pieces. Found earns ${EARNS} points, good food marked costs ${COSTS}.`}
      </p>
      <form method="get" action="/exercises/spot">
        {Object.entries(fieldsOf(rest)).map(([name, value]) => (
          <input type="hidden" name={name} value={value} />
        ))}
        <div class="field">
          <label for="spot-squares">Squares, such as C4, F7</label>
          <input
            id="spot-squares"
            name="squares"
            type="text"
            value={marked.map(({ name }) => name).join(', ')}
            autocomplete="off"
            size={18}
            {...(unknown.length > 0 ? { 'aria-describedby': 'spot-unknown', 'aria-invalid': 'true' } : {})}
          />
          {unknown.length > 0 ? (
            <p id="spot-unknown" class="error">{`No square of this picture: ${unknown.join(', ')}`}</p>
          ) : null}
        </div>
        <p>
          <button type="submit" class="quiet">
            Mark these
          </button>{' '}
          <button type="submit" name="step" value="marks">
            That is our bet: show the machine’s marks
          </button>
        </p>
      </form>
      <p class="small">{`Level: ${levels.find(({ id }) => id === state.level)!.words}.`}</p>
    </>
  )
}

function fieldsOf(state: Omit<SpotState, 'squares'>): Record<string, string> {
  return Object.fromEntries(new URLSearchParams(spotQuery({ ...state, squares: '', step: 'look' })))
}

function Told(props: Props) {
  const { state, sheet, grid, people, machine, rounds } = props
  const [usAll, itAll] = [state.people + people.points, state.machinePoints + machine.points]
  const last = state.round >= rounds
  const next = last
    ? { round: 1, seed: (state.seed + 1) % 100_000, people: 0, machinePoints: 0 }
    : { round: state.round + 1, people: usAll, machinePoints: itAll }
  return (
    <>
      <table class="numbers">
        <caption>Score</caption>
        <thead>
          <tr>
            <th scope="col" />
            <th scope="col" class="n">
              Found
            </th>
            <th scope="col" class="n">
              False marks
            </th>
            <th scope="col" class="n">
              Points (so far)
            </th>
          </tr>
        </thead>
        <tbody>
          <ScoreRow who="People" tally={people} all={usAll} of={sheet.pieces.length} />
          <ScoreRow who="Machine" tally={machine} all={itAll} of={sheet.pieces.length} />
        </tbody>
      </table>
      {sheet.pieces.length > 0 ? (
        <ul class="small">
          {sheet.pieces.map((p) => (
            <li>{`${squareAt(grid, p)}: ${p.words}, ${p.sizeMm} mm; the machine ${p.found ? 'found it' : 'missed it'}${p.strength === null ? '' : `, answer ${p.strength.toFixed(1)} times its threshold`}`}</li>
          ))}
        </ul>
      ) : null}
      {last ? (
        <p>
          <strong>{verdict(usAll, itAll)}</strong>
        </p>
      ) : null}
      <ul class="acts">
        <li>
          <a href={spotAddress(state, { step: state.step === 'marks' ? 'food-off' : 'marks' })}>
            {state.step === 'marks' ? 'Take the food off' : 'Put the food back'}
          </a>
        </li>
        <li>
          <a href={spotAddress(state, { ...next, squares: '', step: 'look' })}>
            {last ? 'Ten new packs' : 'Next pack'}
          </a>
        </li>
      </ul>
    </>
  )
}

function verdict(people: number, machine: number): string {
  if (people === machine) return `A draw, ${people} points each.`
  return people > machine
    ? `People won, ${people} to ${machine}.`
    : `The machine won, ${machine} to ${people}: it looks at every place, every time.`
}

function ScoreRow({ who, tally, all, of }: { who: string; tally: Tally; all: number; of: number }) {
  return (
    <tr>
      <th scope="row">{who}</th>
      <td class="n">{`${tally.found} of ${of}`}</td>
      <td class="n">{tally.falseMarks}</td>
      <td class="n">{`${tally.points} (${all})`}</td>
    </tr>
  )
}

function Chooser({ state, levels, points, machines }: Props) {
  return (
    <details class="fold">
      <summary>Level, machine and packs</summary>
      <form method="get" action="/exercises/spot">
        <input type="hidden" name="b" value={state.packed} />
        {state.present ? <input type="hidden" name="present" value="1" /> : null}
        <div class="fields">
          <ChoiceField
            within="spot"
            name="level"
            label="Level"
            value={state.level}
            choices={levels.map((l) => ({ value: l.id, words: l.words }))}
          />
          <ChoiceField
            within="spot"
            name="point"
            label="Inspection point"
            value={String(state.point)}
            choices={points}
          />
          <ChoiceField
            within="spot"
            name="machine"
            label="Machine"
            value={state.machine}
            choices={machines}
          />
          <div class="field">
            <label for="spot-seed">Seed</label>
            <input
              id="spot-seed"
              name="seed"
              type="text"
              inputmode="numeric"
              value={String(state.seed)}
              size={7}
            />
          </div>
        </div>
        <p>
          <button type="submit">Start with these</button>
        </p>
      </form>
    </details>
  )
}
