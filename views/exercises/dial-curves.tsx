import { MarkedCurves } from '../../src/charts/marked-curves.tsx'

type Line = readonly (readonly [x: number, y: number])[]

interface Props {
  readonly curve: Line
  readonly hills: { readonly clean: Line; readonly piece: Line; readonly threshold: number }
  readonly pieceMm: number
  readonly chance: number
  /** Said beneath the hills; empty where there is nothing to say. */
  readonly note: string
  readonly present: boolean
}

export const mm = (value: number) => value.toFixed(value < 2 ? 2 : 1)
const percent = (share: number) => `${Math.round(100 * share)} %`

/** A letter beside the curves, per cent of a third of the screen, as a room and as a reader sees them (measured). */
const ROOM_LETTER = 2.2
const PAGE_LETTER = 2.1

/** The curve and the hills of one place of the control. */
export function DialCurves({ curve, hills, pieceMm, chance, note, present }: Props) {
  const plotPx = present ? 80 : 200
  const letter = present ? ROOM_LETTER : PAGE_LETTER
  return (
    <>
      <figure>
        <MarkedCurves
          id="dial-curve"
          title="Chance of finding a piece against its size"
          description={`From ${percent(curve[0]![1])} at ${curve[0]![0].toFixed(2)} mm to ${percent(curve.at(-1)![1])} at ${curve.at(-1)![0].toFixed(2)} mm; ${percent(chance)} at ${pieceMm.toFixed(2)} mm.`}
          x={{ words: 'size', unit: 'mm', bare: false }}
          y={{ words: 'chance of finding', unit: '', bare: false }}
          curves={[{ words: '', points: curve, filled: false }]}
          marks={[{ x: pieceMm, words: `${mm(pieceMm)} mm` }]}
          plotPx={plotPx}
          letter={letter}
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
            { words: 'clean', points: hills.clean, filled: true },
            { words: 'piece', points: hills.piece, filled: true },
          ]}
          marks={[{ x: hills.threshold, words: 'threshold' }]}
          plotPx={plotPx}
          letter={letter}
        />
        {note ? <figcaption>{note}</figcaption> : null}
      </figure>
    </>
  )
}

/** The curve as numbers, folded away. */
export function DialNumbers({ curve }: { curve: Line }) {
  return (
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
            .map(([size, value]) => (
              <tr>
                <td class="n">{size.toFixed(2)}</td>
                <td class="n">{Math.round(100 * value)}</td>
              </tr>
            ))}
        </tbody>
      </table>
    </details>
  )
}
