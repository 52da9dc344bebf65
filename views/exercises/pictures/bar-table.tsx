import { scaleLinear } from 'd3-scale'
import type { Picture } from '../../../src/exercises/exercise.ts'
import { type Marked, markWords } from './marked.ts'
import { writtenValue } from './written-value.ts'

type BarsPicture = Extract<Picture, { kind: 'bars' }>

interface Props {
  readonly picture: BarsPicture
  readonly id: string
  readonly marked: Marked | null
  readonly room: boolean
}

/** Bars from zero as rows of a table: name, bar, number; its letters grow with the page, and it needs no second table. */
export function BarTable({ picture, id, marked, room }: Props) {
  const { bars, line, unit, title } = picture
  const values = [...bars.flatMap(({ value }) => value ?? []), ...(line ? [line.value] : [])]
  const most = Math.max(...values, 0)
  const scale = scaleLinear([0, most > 0 ? most : 1], [0, 99])
  const percent = (value: number) => `${Number(scale(value).toFixed(2))}%`
  return (
    <table class={`bar-table${bars.length > 6 ? '' : bars.length > 3 ? ' few' : ' fewest'}`}>
      <caption id={`${id}-caption`} class="unseen">
        {title}
      </caption>
      <tbody>
        {line ? (
          <tr class="line-words">
            <th scope="row">{line.words}</th>
            <td class="bar">
              <Strip line={percent(line.value)} bar={null} />
            </td>
            <td class="n">{writtenValue(line.value, unit)}</td>
          </tr>
        ) : null}
        {bars.map(({ words, value, none, choice }) => {
          const mark = markWords(choice, marked, room)
          return (
            <tr class={mark.startsWith('the answer') ? 'is-answer' : mark ? 'is-guess' : ''}>
              <th scope="row">
                {words}
                {mark ? (
                  <>
                    {' '}
                    <span class="tag">{mark}</span>
                  </>
                ) : null}
              </th>
              <td class="bar">
                <Strip
                  line={line ? percent(line.value) : null}
                  bar={value === null ? null : percent(Math.max(value, most * 0.004))}
                />
              </td>
              <td class={value === null ? 'n none' : 'n'}>
                {value === null ? (none ?? 'none') : writtenValue(value, unit)}
              </td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}

function Strip({ bar, line }: { bar: string | null; line: string | null }) {
  return (
    <svg class="strip" width="100%" height="100%" aria-hidden="true">
      {bar === null ? null : <rect x="0" y="18%" width={bar} height="64%" />}
      {line === null ? null : <line x1={line} x2={line} y1="0" y2="100%" />}
    </svg>
  )
}
