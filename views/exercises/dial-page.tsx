import { MarkedCurves } from '../../src/charts/marked-curves.tsx'
import type { DialShown } from '../../src/exercises/dial/dial.ts'
import type { InputId } from '../../src/trade-offs/input.ts'
import { SheetPicture } from '../card/sheet-picture.tsx'
import { Page } from '../page.tsx'
import { capital } from '../words/capital.ts'
import { INPUT_WORDS, inputValueWords } from '../words/trade-offs.ts'
import { ChoiceField, type Choices } from './choice-field.tsx'

/** What the address carries. */
export interface DialState {
  readonly packed: string
  readonly point: number
  readonly machine: string
  readonly contaminant: number
  readonly input: InputId
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
  readonly shown: DialShown | null
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
    <Page title={`Move one thing: ${title}`} packed={state.packed} here="exercises" present={state.present}>
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
          <label for="dial-stop">{`${capital(INPUT_WORDS[state.input].name)}, from least to most`}</label>
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
export function DialPart({ state, shown, stop, pieceWords }: DialProps) {
  if (!shown)
    return (
      <p>At this value the machine does not see the pack: it does not fit, or no radiation gets through.</p>
    )
  const { values, unit, present, sheet, pictures, curve, hills, pieceMm, chance, expectedMm, kV } = shown
  const at = inputValueWords(state.input, unit, values[stop]!)
  return (
    <>
      <p class="dial-said">
        <strong>{`${capital(INPUT_WORDS[state.input].name)} ${at}${stop === present ? ', as in the brief' : ''}.`}</strong>{' '}
        {`${capital(pieceWords)} of ${pieceMm.toFixed(pieceMm < 2 ? 2 : 1)} mm: found ${Math.round(100 * chance)} times in 100 at ${kV} kV; expected size found ${expectedMm === null ? 'none' : `${expectedMm.toFixed(expectedMm < 2 ? 2 : 1)} mm`}.`}
      </p>
      <div class="dial-views">
        <figure class="dial-picture">
          <SheetPicture
            sheet={{ ...sheet, lines: [] }}
            href={`${dialAddress({ ...state, stop, present: false }, '/exercises/dial/picture.png')}&picture=${pictures[0]!.name}`}
            alt={pictures[0]!.alt}
          />
          <figcaption>
            {`Pieces of ${sheet.pieces.map((p) => p.sizeMm).join(', ')} mm; corners: found, ring: missed. Part of a pack, simulated.`}
          </figcaption>
        </figure>
        <figure>
          <MarkedCurves
            id="dial-curve"
            title="Chance of finding a piece against its size"
            description={`From ${percent(curve[0]![1])} at ${curve[0]![0].toFixed(2)} mm to ${percent(curve.at(-1)![1])} at ${curve.at(-1)![0].toFixed(2)} mm; ${percent(chance)} at ${pieceMm.toFixed(2)} mm.`}
            x={{ words: 'size', unit: 'mm', bare: false }}
            y={{ words: 'chance of finding', unit: '', bare: false }}
            curves={[{ words: '', points: curve, filled: false }]}
            marks={[{ x: pieceMm, words: `${pieceMm.toFixed(pieceMm < 2 ? 2 : 1)} mm` }]}
            plotPx={state.present ? 190 : 200}
          />
        </figure>
        <figure>
          <MarkedCurves
            id="dial-hills"
            title="Strongest reading of a clean pack, and the reading of the piece"
            description={`The threshold stands at ${hills.threshold.toFixed(1)} noise widths; the piece is read above it ${percent(chance)} of the time.`}
            x={{ words: 'reading', unit: 'noise widths', bare: false }}
            y={{ words: 'how often', unit: '', bare: true }}
            curves={[
              { words: 'clean packs', points: hills.clean, filled: true },
              { words: 'with the piece', points: hills.piece, filled: true },
            ]}
            marks={[{ x: hills.threshold, words: 'threshold' }]}
            plotPx={state.present ? 190 : 200}
          />
          {hills.beyondNoise ? (
            <figcaption>
              The threshold stands further out than this hill asks: food that lies on food reads like a piece.
            </figcaption>
          ) : null}
        </figure>
      </div>
      <details class="fold">
        <summary>The numbers of the curve</summary>
        <table class="numbers">
          <thead>
            <tr>
              <th scope="col" class="n">
                Size, mm
              </th>
              <th scope="col" class="n">
                Found, %
              </th>
            </tr>
          </thead>
          <tbody>
            {curve
              .filter((_, i) => i % 3 === 0)
              .map(([mm, value]) => (
                <tr>
                  <td class="n">{mm.toFixed(2)}</td>
                  <td class="n">{Math.round(100 * value)}</td>
                </tr>
              ))}
          </tbody>
        </table>
      </details>
    </>
  )
}

const percent = (share: number) => `${Math.round(100 * share)} %`
