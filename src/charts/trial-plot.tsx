import { line } from 'd3-shape'
import type { MmAxis } from './mm-axis.ts'

/** A size as run: the share found, and how far it may lie off (exact, 95 % both ways). */
export interface TrialDot {
  readonly sizeMm: number
  readonly share: number
  readonly low: number
  readonly high: number
}

export interface TrialCurve {
  readonly words: string
  readonly points: readonly (readonly [sizeMm: number, chance: number])[]
  readonly dashed: boolean
}

interface Props {
  readonly id: string
  readonly title: string
  readonly description: string
  readonly axis: MmAxis
  readonly dots: readonly TrialDot[]
  readonly curves: readonly TrialCurve[]
  /** Uprights with their words, each on its own line above the plot. */
  readonly marks: readonly { readonly mm: number; readonly words: string }[]
}

const PLOT = 240
const MARK_LINE = 18
const FOOT = 42
const STRETCH = 1000
const LEVELS = [0, 0.25, 0.5, 0.75, 1]

/** Shares found against size on a log axis in mm, with the curves through or beside them. */
export function TrialPlot({ id, title, description, axis, dots, curves, marks }: Props) {
  const top = 44 + marks.length * MARK_LINE
  const down = (chance: number) => Number((top + (1 - chance) * PLOT).toFixed(1))
  return (
    <svg
      class="trial-plot"
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
      width="100%"
      height={String(top + PLOT + FOOT)}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{description}</desc>
      <g class="axis-titles">
        <text x="0" y="13">
          share found, %
        </text>
        <text x="100%" y={top + PLOT + 36} text-anchor="end">
          size, mm, log scale
        </text>
      </g>
      <g class="grid">
        {LEVELS.map((level) => (
          <>
            <line x1="0%" x2="100%" y1={down(level)} y2={down(level)} />
            <text x="0" y={down(level) - 4}>
              {String(level * 100)}
            </text>
          </>
        ))}
        {axis.ticksMm.map((mm) => (
          <text x={`${axis.percent(mm)}%`} y={top + PLOT + 18} text-anchor="middle">
            {mm}
          </text>
        ))}
      </g>
      <svg
        x="0"
        y={String(top)}
        width="100%"
        height={String(PLOT)}
        viewBox={`0 0 ${STRETCH} ${PLOT}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        {curves.map((curve) => (
          <path
            class={`curve${curve.dashed ? ' dash-1' : ''}`}
            d={pathOf(curve, axis)}
            fill="none"
            vector-effect="non-scaling-stroke"
          />
        ))}
      </svg>
      <g class="dots">
        {dots.map(({ sizeMm, share, low, high }) => (
          <>
            <line
              x1={`${axis.percent(sizeMm)}%`}
              x2={`${axis.percent(sizeMm)}%`}
              y1={down(high)}
              y2={down(low)}
            />
            <circle cx={`${axis.percent(sizeMm)}%`} cy={down(share)} r="4.5" />
          </>
        ))}
      </g>
      <g class="uprights">
        {marks.map(({ mm, words }, at) => {
          const left = axis.percent(mm)
          const before = left > 60 || marks.some((other) => other.mm > mm)
          return (
            <>
              <line x1={`${left}%`} x2={`${left}%`} y1={30 + at * MARK_LINE} y2={top + PLOT} />
              <text
                x={`${left}%`}
                dx={before ? '-5' : '5'}
                y={40 + at * MARK_LINE}
                text-anchor={before ? 'end' : 'start'}
              >
                {words}
              </text>
            </>
          )
        })}
      </g>
    </svg>
  )
}

function pathOf({ points }: TrialCurve, axis: MmAxis): string {
  const inside = points.filter(([mm]) => mm >= axis.fromMm && mm <= axis.toMm)
  const path = line<readonly [number, number]>()
    .x(([mm]) => (axis.percent(mm) / 100) * STRETCH)
    .y(([, chance]) => (1 - chance) * PLOT)
    .digits(1)
  return path([...inside]) ?? ''
}
