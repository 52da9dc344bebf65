export interface DrawnAnswer {
  readonly words: string
  /** Length along the axes: loss to the right, in step upwards. */
  readonly resistive: number
  readonly reactive: number
}

interface Props {
  readonly id: string
  readonly title: string
  readonly description: string
  /** Drawn at one length each: directions are what is compared. */
  readonly answers: readonly DrawnAnswer[]
}

const WIDE = 560
const HIGH = 330
const REACH = 130
const CENTRE = { x: 190, y: 165 }
const NAMES_AT = 350

/** Directions of answers to a coil as arrows of one length, told apart by name and dash. */
export function AnswerArrows({ id, title, description, answers }: Props) {
  const ends = answers.map(({ resistive, reactive }) => {
    const length = Math.hypot(resistive, reactive) || 1
    return { x: CENTRE.x + (REACH * resistive) / length, y: CENTRE.y - (REACH * reactive) / length }
  })
  const order = ends.map((_, at) => at).sort((a, b) => ends[a]!.y - ends[b]!.y)
  const gap = 42
  const top = CENTRE.y - (gap * (answers.length - 1)) / 2
  return (
    <svg
      class="plane arrows"
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
      viewBox={`0 0 ${WIDE} ${HIGH}`}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{description}</desc>
      <g class="axes">
        <line x1={CENTRE.x - 40} x2={CENTRE.x + REACH + 14} y1={CENTRE.y} y2={CENTRE.y} />
        <line x1={CENTRE.x} x2={CENTRE.x} y1={CENTRE.y - REACH - 8} y2={CENTRE.y + REACH + 8} />
        <text x={CENTRE.x - 8} y="16" text-anchor="end">
          like iron
        </text>
        <text x={CENTRE.x - 8} y={CENTRE.y + 28} text-anchor="end">
          like a loss
        </text>
        <text x={CENTRE.x - 8} y={HIGH - 6} text-anchor="end">
          pushes the field out
        </text>
      </g>
      {order.map((at, row) => {
        const end = ends[at]!
        const y = top + row * gap
        return (
          <g>
            <line
              class={`curve dash-${at}`}
              x1={CENTRE.x}
              y1={CENTRE.y}
              x2={end.x.toFixed(1)}
              y2={end.y.toFixed(1)}
            />
            <path
              class="thin curve"
              d={`M${end.x.toFixed(1)} ${end.y.toFixed(1)}L${NAMES_AT - 12} ${y}`}
              fill="none"
            />
            <circle class="tip" cx={end.x.toFixed(1)} cy={end.y.toFixed(1)} r="5" />
            <text x={NAMES_AT} y={y + 6}>
              {answers[at]!.words}
            </text>
          </g>
        )
      })}
    </svg>
  )
}
