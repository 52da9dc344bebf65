import { MarkedCurves } from '../../../src/charts/marked-curves.tsx'
import type { Picture } from '../../../src/exercises/exercise.ts'
import { type Marked, markWords } from './marked.ts'
import { threeDigits } from './written-value.ts'

export type CurvesPicture = Extract<Picture, { kind: 'curves' }>

interface Props {
  readonly picture: CurvesPicture
  readonly id: string
  readonly marked: Marked | null
  readonly room: boolean
}

/** In front of a room the whole figure keeps one height, however many marks stand above the plot. */
const ROOM_PX = 272
const LINE_PX = 16
const AROUND_PX = 64

/** Curves with the answer and the prediction named at their marks. */
export function CurvesPart({ picture, id, marked, room }: Props) {
  const { x, y, curves, marks } = picture
  const range = (words: string, points: CurvesPicture['curves'][number]['points']) => {
    const values = points.map(([, value]) => value)
    const ends = y.bare
      ? `highest at ${threeDigits(points.reduce((a, b) => (b[1] > a[1] ? b : a))[0])}`
      : `from ${threeDigits(values[0] ?? 0)} to ${threeDigits(values.at(-1) ?? 0)} ${y.unit}`.trim()
    return `${words}: ${ends}`
  }
  const named = marks.map((mark) => {
    const words = markWords(mark.choice, marked, room)
    return { x: mark.x, words: words ? `${mark.words}: ${words}` : mark.words, strong: words !== '' }
  })
  return (
    <MarkedCurves
      id={id}
      title={picture.title}
      description={`${y.words} against ${x.words.toLowerCase()}. ${curves.map(({ words, points }) => range(words, points)).join('; ')}.${named.length > 0 ? ` Marked: ${named.map((mark) => `${mark.words} at ${threeDigits(mark.x)}`).join('; ')}.` : ''}`}
      x={{ words: x.words, unit: x.unit, bare: x.bare ?? false }}
      y={{ words: y.words, unit: y.unit, bare: y.bare ?? false }}
      curves={curves.map(({ words, points, filled, nameAt }) => ({
        words,
        points,
        filled: filled ?? false,
        ...(nameAt === undefined ? {} : { nameAt }),
      }))}
      marks={named}
      {...(room ? { plotPx: ROOM_PX - AROUND_PX - LINE_PX * marks.length } : {})}
    />
  )
}

/** A place on a curve as a table has it; what is a thousandth of the highest is nothing. */
function placeWords(value: number, points: CurvesPicture['curves'][number]['points']): string {
  const most = Math.max(...points.map(([, one]) => one))
  return value < most / 1000 ? '0' : threeDigits(value)
}

/** At most so many rows of a curve are written out. */
const MOST_ROWS = 13

/** The numbers of the curves, every few of them. */
export function CurveNumbers({ picture, id }: { picture: CurvesPicture; id: string }) {
  const caption = `${id}-numbers`
  const { x, y, curves, marks } = picture
  const points = curves[0]?.points ?? []
  const step = Math.max(1, Math.ceil(points.length / MOST_ROWS))
  return (
    <section class="scroll" tabindex={0} aria-labelledby={caption}>
      <table>
        <caption id={caption} class="unseen">
          {picture.title}
        </caption>
        <thead>
          <tr>
            <th scope="col" class="n">
              {x.unit ? `${x.words}, ${x.unit}` : x.words}
            </th>
            {curves.map(({ words }) => (
              <th scope="col" class="n">
                {words}
                {y.unit ? `, ${y.unit}` : ''}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {points.map(([at], row) =>
            row % step === 0 ? (
              <tr>
                <th scope="row" class="n">
                  {threeDigits(at)}
                </th>
                {curves.map((curve) => (
                  <td class="n">{placeWords(curve.points[row]?.[1] ?? 0, curve.points)}</td>
                ))}
              </tr>
            ) : null,
          )}
        </tbody>
      </table>
      {marks.length > 0 ? (
        <p class="small">
          Marked: {marks.map((mark) => `${mark.words} at ${threeDigits(mark.x)}`).join('; ')}.
        </p>
      ) : null}
    </section>
  )
}
