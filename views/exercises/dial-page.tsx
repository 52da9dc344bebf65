import { OpeningPicture } from '../../src/charts/opening-picture.tsx'
import { TurnedSketch } from '../../src/charts/turned-sketch.tsx'
import type { DialShown } from '../../src/exercises/dial/dial.ts'
import type { MetalShown } from '../../src/exercises/dial/metal-dial.ts'
import { SheetPicture } from '../card/sheet-picture.tsx'
import { Page } from '../page.tsx'
import { capital } from '../words/capital.ts'
import { ChoiceField, type Choices } from './choice-field.tsx'
import { DialCurves, DialNumbers, mm } from './dial-curves.tsx'
import { type Moved, movedTo, movedWords } from './dial-words.ts'

/** What the address carries. */
export interface DialState {
  readonly packed: string
  readonly point: number
  readonly machine: string
  readonly contaminant: number
  readonly input: Moved
  /** Place of the control; null: the brief's own value. */
  readonly stop: number | null
  readonly present: boolean
}

export interface DialProps {
  readonly state: DialState
  readonly title: string
  readonly points: Choices
  readonly machines: Choices
  readonly contaminants: Choices
  readonly inputs: Choices
  readonly stop: number
  readonly stops: number
  /** Null where the machine sees nothing of this pack. */
  readonly shown: DialShown | MetalShown | null
  readonly pieceWords: string
}

export function dialAddress(state: DialState, path = '/exercises/dial'): string {
  const parts = new URLSearchParams({
    b: state.packed,
    point: String(state.point),
    machine: state.machine,
    contaminant: String(state.contaminant),
    input: state.input,
  })
  if (state.stop !== null) parts.set('stop', String(state.stop))
  if (state.present) parts.set('present', '1')
  return `${path}?${parts}`
}

/** One thing is moved; picture, curve and hills follow. */
export function DialPage(props: DialProps) {
  const { state, title } = props
  return (
    <Page
      title={`Move one thing: ${title}`}
      packed={state.packed}
      here="exercises"
      present={state.present}
      live
    >
      <p class="over-title">Move one thing</p>
      <h1>{title}</h1>
      <form method="get" action="/exercises/dial" class="dial-form" id="dial-form">
        <input type="hidden" name="b" value={state.packed} />
        {state.present ? <input type="hidden" name="present" value="1" /> : null}
        {state.present ? (
          <details class="fold">
            <summary>Another piece, machine or thing to move</summary>
            <Fields {...props} />
          </details>
        ) : (
          <Fields {...props} />
        )}
        <div class="dial-control">
          <label for="dial-stop">{`${capital(movedWords(state.input))}, from least to most`}</label>
          <input
            id="dial-stop"
            type="range"
            name="stop"
            min="0"
            max={String(props.stops - 1)}
            step="1"
            value={String(props.stop)}
            hx-get="/exercises/dial/part"
            hx-include="#dial-form"
            hx-trigger="input delay:40ms"
            hx-target="#dial"
            hx-sync="this:replace"
          />
          <button type="submit">Show</button>
          <output id="dial-ready" class="small" for="dial-stop"></output>
        </div>
      </form>
      <div id="dial" aria-live="polite">
        <DialPart {...props} />
      </div>
    </Page>
  )
}

/** What is moved, for which piece, by which machine. */
function Fields(props: DialProps) {
  const { state } = props
  return (
    <div class="fields">
      <ChoiceField within="dial" name="input" label="Move" value={state.input} choices={props.inputs} />
      <ChoiceField
        within="dial"
        name="contaminant"
        label="Piece"
        value={String(state.contaminant)}
        choices={props.contaminants}
      />
      <ChoiceField
        within="dial"
        name="machine"
        label="Machine"
        value={state.machine}
        choices={props.machines}
      />
      <ChoiceField
        within="dial"
        name="point"
        label="Inspection point"
        value={String(state.point)}
        choices={props.points}
      />
    </div>
  )
}

/** What changes with the control. */
export function DialPart(props: DialProps) {
  const { state, shown, stop } = props
  if (!shown)
    return (
      <p>At this value the machine does not see the pack: it does not fit, or nothing gets through to it.</p>
    )
  const { values, unit, present } = shown
  return (
    <>
      <p class="dial-said">
        <strong>{`${movedTo(state.input, unit, values[stop]!)}${stop === present ? ', as in the brief' : ''}.`}</strong>{' '}
        {`${pieceOf(props, shown)}${foundWords(shown)}`}
      </p>
      <div class="dial-views">
        {shown.kind === 'metal' ? (
          <Passing shown={shown} />
        ) : (
          <Radiograph state={state} stop={stop} shown={shown} />
        )}
        <DialCurves {...shown} note={noteOf(shown)} present={state.present} />
      </div>
      <DialNumbers curve={shown.curve} />
      {shown.kind === 'x-ray' && shown.draft ? <Whole state={{ ...state, stop }} /> : null}
    </>
  )
}

/** Fetches the whole answer in the place of a draft, unless the control has been moved on. */
const Whole = ({ state }: { state: DialState }) => (
  <div
    hx-get={dialAddress(state, '/exercises/dial/part')}
    hx-trigger="load"
    hx-target="#dial"
    hx-sync="#dial-stop:replace"
  />
)

const SETTLED = {
  sinks: 'At the bottom, where it sinks to,',
  floats: 'At the top, where it floats to,',
} as const

/** How often the piece is found, and the size that is: where it settles, a place of its own is named beside the middle. */
function foundWords(shown: DialShown | MetalShown): string {
  const { chance, expectedMm } = shown
  const often = `found ${Math.round(100 * chance)} times in 100 ${settingOf(shown)}`
  const size = expectedMm === null ? 'none' : `${mm(expectedMm)} mm`
  return shown.kind === 'metal' || shown.settles === 'stays'
    ? `: ${often}; expected size found ${size}.`
    : ` in the middle of the pack: ${often}. ${SETTLED[shown.settles]} the expected size found is ${size}; picture and curves are of the middle.`
}

const settingOf = (shown: DialShown | MetalShown) =>
  shown.kind === 'metal'
    ? `at ${shown.frequenciesKHz.map((kHz) => Number(kHz.toPrecision(3))).join(' and ')} kHz`
    : `at ${shown.kV} kV`

function pieceOf({ pieceWords }: DialProps, shown: DialShown | MetalShown): string {
  return shown.kind === 'metal' && shown.asWireMm !== null
    ? `${capital(pieceWords.replace(/, sphere$/, ''))}, as a wire ${shown.asWireMm} mm long and ${mm(shown.pieceMm)} mm thick`
    : `${capital(pieceWords)} of ${mm(shown.pieceMm)} mm`
}

function noteOf(shown: DialShown | MetalShown): string {
  if (shown.kind === 'metal')
    return 'The hill of the piece is wide because its answer spreads from pack to pack.'
  return shown.hills.beyondNoise
    ? 'The threshold stands further out than this hill asks: food that lies on food reads like a piece.'
    : ''
}

/** A part of the pack as the x-ray machine sees it. */
function Radiograph({ state, stop, shown }: { state: DialState; stop: number; shown: DialShown }) {
  const { sheet, pictures, sizesMm } = shown
  return (
    <figure class="dial-picture">
      <SheetPicture
        sheet={{ ...sheet, lines: [] }}
        href={`${dialAddress({ ...state, stop, present: false }, '/exercises/dial/picture.png')}&picture=${pictures[0]!.name}${shown.draft ? '&draft=1' : ''}`}
        alt={pictures[0]!.alt}
        letters={24}
      />
      <figcaption>
        {`Pieces of ${sizesMm.map((size) => Number(size.toPrecision(2))).join(', ')} mm; `}
        {shown.draft ? (
          <>
            <strong>picture: a draft, not read yet</strong>, its grains still lie in one another. The numbers
            and curves are final.
          </>
        ) : (
          'corners: found, ring: missed. Part of a pack, simulated.'
        )}
      </figcaption>
    </figure>
  )
}

/** Where and how the piece passes a metal detector. */
function Passing({ shown }: { shown: MetalShown }) {
  const { opening, food, at, gain, angleDeg } = shown
  const times = gain === 1 ? '' : `; heard ${gain.toFixed(1)} times as strongly as in the middle`
  return (
    <figure class="dial-picture">
      <OpeningPicture
        id="dial-opening"
        title="The opening, seen along the travel"
        description={`The piece passes ${Math.round(200 * Math.max(at.across, at.up))} % of the way from the middle to the wall${times}.`}
        widthMm={opening.widthMm}
        heightMm={opening.heightMm}
        food={food}
        places={[]}
        piece={at}
      />
      {angleDeg === null ? null : (
        <TurnedSketch
          id="dial-turned"
          angleDeg={angleDeg}
          words={`Seen from above, ${angleDeg}° to the travel`}
        />
      )}
      <figcaption>
        {`Opening ${Math.round(opening.heightMm)} × ${Math.round(opening.widthMm)} mm, seen along the travel; broken line: the food; dot: the piece${times}.`}
        {angleDeg === null ? '' : ' Beneath it the piece between the coils, seen from above.'}
      </figcaption>
    </figure>
  )
}
