import { MarkedCurves } from '../../src/charts/marked-curves.tsx'
import { ValueBars } from '../../src/charts/value-bars.tsx'
import type { Picture } from '../../src/exercises/exercise.ts'
import { chanceNumber, sizeWords } from '../words/size.ts'

interface Props {
  readonly picture: Picture
  readonly id: string
  /** The numbers beneath open, as on paper. */
  readonly open?: boolean
  /** Left out where one thing is shown at a time. */
  readonly withoutNumbers?: boolean
}

const grouped = new Intl.NumberFormat('en-GB', { maximumSignificantDigits: 3 })
const whole = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 })

/** A value with its unit: sizes rounded up, counts whole, the rest to three digits. */
function written(value: number, unit: string): string {
  if (unit === 'mm') return `${sizeWords(value)} mm`
  if (unit === '%') return `${chanceNumber(value)} %`
  const number = value >= 100 ? whole.format(value) : grouped.format(value)
  return unit ? `${number} ${unit}` : number
}

/** What is drawn beside an answer, with its numbers beneath. */
export function PicturePart({ picture, id, open = false, withoutNumbers = false }: Props) {
  return (
    <figure class="exercise-picture">
      <figcaption>{picture.title}</figcaption>
      {picture.kind === 'bars' ? <Bars picture={picture} id={id} /> : <Curves picture={picture} id={id} />}
      {withoutNumbers ? null : (
        <details {...(open ? { open: true } : {})}>
          <summary>Numbers of this picture</summary>
          <Numbers picture={picture} id={id} />
        </details>
      )}
    </figure>
  )
}

type BarsPicture = Extract<Picture, { kind: 'bars' }>
type CurvesPicture = Extract<Picture, { kind: 'curves' }>

function Bars({ picture, id }: { picture: BarsPicture; id: string }) {
  const bars = picture.bars.map(({ words, value, none }) => ({
    words,
    value,
    none: none ?? 'none',
    written: value === null ? '' : written(value, picture.unit),
  }))
  return (
    <ValueBars
      id={id}
      title={picture.title}
      description={bars
        .map((bar) => `${bar.words}: ${bar.value === null ? bar.none : bar.written}`)
        .join('; ')}
      bars={bars}
      line={picture.line ?? null}
    />
  )
}

function Curves({ picture, id }: { picture: CurvesPicture; id: string }) {
  const { x, y, curves, marks } = picture
  const range = (words: string, points: CurvesPicture['curves'][number]['points']) => {
    const values = points.map(([, value]) => value)
    const ends = y.bare
      ? `highest at ${grouped.format(points.reduce((a, b) => (b[1] > a[1] ? b : a))[0])}`
      : `from ${grouped.format(values[0] ?? 0)} to ${grouped.format(values.at(-1) ?? 0)} ${y.unit}`.trim()
    return `${words}: ${ends}`
  }
  return (
    <MarkedCurves
      id={id}
      title={picture.title}
      description={`${y.words} against ${x.words.toLowerCase()}. ${curves.map(({ words, points }) => range(words, points)).join('; ')}.${marks.length > 0 ? ` Marked: ${marks.map((mark) => `${mark.words} at ${grouped.format(mark.x)}`).join('; ')}.` : ''}`}
      x={{ words: x.words, unit: x.unit, bare: x.bare ?? false }}
      y={{ words: y.words, unit: y.unit, bare: y.bare ?? false }}
      curves={curves.map(({ words, points, filled, nameAt }) => ({
        words,
        points,
        filled: filled ?? false,
        ...(nameAt === undefined ? {} : { nameAt }),
      }))}
      marks={marks}
    />
  )
}

/** A place on a curve as a table has it; what is a thousandth of the highest is nothing. */
function placeWords(value: number, points: CurvesPicture['curves'][number]['points']): string {
  const most = Math.max(...points.map(([, one]) => one))
  return value < most / 1000 ? '0' : grouped.format(value)
}

/** At most so many rows of a curve are written out. */
const MOST_ROWS = 13

function Numbers({ picture, id }: { picture: Picture; id: string }) {
  const caption = `${id}-numbers`
  if (picture.kind === 'bars') {
    return (
      <table>
        <caption id={caption} class="unseen">
          {picture.title}
        </caption>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col" class="n">
              {picture.unit ? `Value, ${picture.unit}` : 'Value'}
            </th>
          </tr>
        </thead>
        <tbody>
          {picture.bars.map(({ words, value, none }) => (
            <tr>
              <th scope="row">{words}</th>
              <td class="n">{value === null ? (none ?? 'none') : written(value, picture.unit)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    )
  }
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
                  {grouped.format(at)}
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
          Marked: {marks.map((mark) => `${mark.words} at ${grouped.format(mark.x)}`).join('; ')}.
        </p>
      ) : null}
    </section>
  )
}
