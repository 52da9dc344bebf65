import { scaleLinear } from 'd3-scale'

export interface ValueBar {
  readonly words: string
  /** null: no bar; `none` stands in its place. */
  readonly value: number | null
  readonly none: string
  /** The value as written beside the bar. */
  readonly written: string
}

interface Props {
  readonly id: string
  readonly title: string
  readonly description: string
  readonly bars: readonly ValueBar[]
  /** A level all bars are held against. */
  readonly line: { readonly value: number; readonly words: string } | null
}

const ROW = 44
const HEAD = 26
const FOOT = 6
/** The longest bar leaves room for its number, percent of the width. */
const LONGEST = 76

/** Bars from zero, each under its name with its number at its end; lengths in percent, so it takes any width. */
export function ValueBars({ id, title, description, bars, line }: Props) {
  const values = [
    ...bars.flatMap(({ value }) => (value === null ? [] : [value])),
    ...(line ? [line.value] : []),
  ]
  const most = Math.max(...values, 0)
  const scale = scaleLinear([0, most > 0 ? most : 1], [0, LONGEST])
  const percent = (value: number) => Number(scale(value).toFixed(2))
  const top = line ? HEAD : 0
  const height = top + bars.length * ROW + FOOT
  return (
    <svg
      class="value-bars"
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
      width="100%"
      height={String(height)}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{description}</desc>
      {bars.map(({ words, value, none, written }, at) => {
        const y = top + at * ROW
        return (
          <g>
            <text class="name" x="0" y={y + 15}>
              {words}
            </text>
            {value === null ? (
              <text class="none" x="0" y={y + 33}>
                {none}
              </text>
            ) : (
              <>
                <rect x="0" width={`${Math.max(0.3, percent(value))}%`} y={y + 21} height="14" />
                <text class="written" x={`${percent(value)}%`} dx="8" y={y + 33}>
                  {written}
                </text>
              </>
            )}
          </g>
        )
      })}
      {line ? (
        <g class="must-find">
          <line
            x1={`${percent(line.value)}%`}
            x2={`${percent(line.value)}%`}
            y1={HEAD - 8}
            y2={height - FOOT}
          />
          <text
            x={`${percent(line.value)}%`}
            y={HEAD - 12}
            text-anchor={percent(line.value) > 55 ? 'end' : percent(line.value) < 20 ? 'start' : 'middle'}
          >
            {line.words}
          </text>
        </g>
      ) : null}
    </svg>
  )
}
